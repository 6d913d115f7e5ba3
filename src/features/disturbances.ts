/** What can go wrong with an arc that has a beginning and an end. */
export const DISTURBANCE_KINDS = [
  'long-short',
  'arc-out',
  'burn-back',
  'long-arc',
  'current-dip',
] as const;
export type DisturbanceKind = (typeof DISTURBANCE_KINDS)[number];

/** One disturbance, seconds from the first sample, `[startS, endS)`. */
export interface Disturbance {
  kind: DisturbanceKind;
  startS: number;
  endS: number;
}

/** What a trace shows of disturbances. */
export interface DisturbanceReport {
  /** In order of time; the first 500 of each kind. */
  marks: Disturbance[];
  /** How many there were and how long they lasted together, s. */
  totals: Record<DisturbanceKind, { count: number; totalS: number; longestS: number }>;
  /** Arc time in which long arcs, dips and slow swings were looked for, s. */
  judgedS: number;
  /** Kinds that the channels at hand cannot show. */
  notShown: DisturbanceKind[];
}
