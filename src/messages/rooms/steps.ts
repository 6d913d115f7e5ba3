/** What was done, in order. */
export interface StepParams {
  'step-read': { quantities: ('sound' | 'voltage' | 'current')[]; sampleRateHz: number };
  'step-features': { featureSet: string; version: number; of: 'sound' | 'trace' };
  'step-arc': { arcIntervals: number };
  'step-classify': { windows: number; model: string; version: string };
  /** `delayS`: sound after trace, null where not found. `nextBest`: next best peak as a share of the best. */
  'step-align': { delayS: number | null; peakOverRms: number; nextBest: number };
  'step-pool': { soundWeight: number; traceWeight: number; featureSet: string };
}
