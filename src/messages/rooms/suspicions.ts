/** Usual mistakes of a log that its figures give away; named, never repaired. */
export interface SuspicionParams {
  'swapped-channels': { meanVoltageV: number; meanCurrentA: number };
  /** Beyond the limit for more than glitches: no mode is named then. */
  'implausible-voltage': { limitV: number; shareOfTime: number };
  'implausible-current':
    | { how: 'beyond'; limitA: number; shareOfTime: number }
    | { how: 'too-little'; peakA: number };
  'voltage-too-high': { peakV: number; looksLike: 'millivolts' | 'no-welding-source' };
  'voltage-too-low': { peakV: number; looksLike: 'kilovolts' | 'divider-missing' };
  'negative-voltage': { meanVoltageV: number };
  'current-too-high': { peakA: number };
  'current-too-low': { peakA: number };
  'negative-current': { meanCurrentA: number };
}
