import type { ArcRun } from '../run.js';

/** Where a pulsed current rises through the middle between base and peak, s. */
export function pulseRises({ scenario: { source }, arcCurrentA, powerRateHz }: ArcRun): number[] {
  if (source.kind !== 'pulsed') return [];
  const middleA = (source.baseA + source.peakA) / 2;
  const times: number[] = [];
  for (let i = 1; i < arcCurrentA.length; i++)
    if (arcCurrentA[i - 1]! < middleA && arcCurrentA[i]! >= middleA) times.push(i / powerRateHz);
  return times;
}
