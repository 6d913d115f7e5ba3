import { MODES, type Mode } from '../../core/index.js';
import type { Result } from '../result/index.js';
import type { Machine, SweepStep } from './machine-document.js';

/**
 * How unevenly a mode ran, as one number: for short-circuit the spreads of short time and arc time over their means,
 * added; for pulsed spray that of the pulse intervals; else that of the arc voltage. Own choice. Null where not shown.
 */
export function regularityOf(mode: Mode, { features }: Pick<Result, 'features'>): number | null {
  if (mode === 'short-circuit') return features.stabilityIndex ?? null;
  if (mode === 'pulsed-spray') return features.pulseClockCv ?? null;
  const { arcVoltageSdV, arcVoltageV } = features;
  return arcVoltageSdV && arcVoltageV ? arcVoltageSdV / arcVoltageV : null;
}

/** The most even step of each mode that was named with at least this confidence; own choice. */
const SURE = 0.75;

export function mostRegular(steps: readonly SweepStep[]): Partial<Record<Mode, SweepStep>> {
  const best: Partial<Record<Mode, SweepStep>> = {};
  for (const mode of MODES) {
    const of = steps.filter(
      (one) =>
        one.status === 'ok' &&
        one.mode === mode &&
        (one.confidence ?? 0) >= SURE &&
        one.regularity !== null,
    );
    const first = of.toSorted((a, b) => a.regularity! - b.regularity!)[0];
    if (first) best[mode] = first;
  }
  return best;
}

/** A point by what is known of it; null for what is not. */
export interface SweepPoint {
  voltageV: number | null;
  currentA: number | null;
  setVoltageV: number | null;
  wireFeedMPerMin: number | null;
}

/** Within these a step stands for a point; own choice. */
export const NEAR = { volts: 1, share: 0.07 } as const;

/**
 * The measured step that stands for a point, by measured volts and amperes where both are known, else by dial and
 * feed; null where none lies near enough. `distance` is 1 at the edge of what counts as near.
 */
export function nearestStep(
  { steps }: Pick<Machine, 'steps'>,
  point: SweepPoint,
): { step: SweepStep; by: 'measured' | 'dial'; distance: number } | null {
  const byMeasured = nearest(steps, point.voltageV, point.currentA, (one) => [
    one.meanVoltageV,
    one.meanCurrentA,
  ]);
  if (byMeasured) return { ...byMeasured, by: 'measured' };
  const byDial = nearest(steps, point.setVoltageV, point.wireFeedMPerMin, (one) => [
    one.setVoltageV,
    one.wireFeedMPerMin,
  ]);
  return byDial ? { ...byDial, by: 'dial' } : null;
}

function nearest(
  steps: readonly SweepStep[],
  volts: number | null,
  other: number | null,
  of: (step: SweepStep) => [number | null, number | null],
): { step: SweepStep; distance: number } | null {
  if (volts === null || other === null) return null;
  let best: { step: SweepStep; distance: number } | null = null;
  for (const step of steps) {
    const [stepV, stepOther] = of(step);
    if (stepV === null || stepOther === null || step.status === 'failed') continue;
    const distance = Math.hypot(
      (stepV - volts) / NEAR.volts,
      (stepOther - other) / (NEAR.share * Math.abs(other)),
    );
    if (distance <= 1 && (best === null || distance < best.distance)) best = { step, distance };
  }
  return best;
}
