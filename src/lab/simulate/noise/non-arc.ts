import { ArcError, type Random } from '../../../core/index.js';
import { makeNoise, NOISE_KINDS, type NoiseKind } from './noise.js';
import { addTo, drift } from './noise-tools.js';

/** What a logger shows when no arc burns; levels are common practice, no source. */
export const DEAD_TRACE_KINDS = [
  'zeros',
  'open-circuit',
  'dead-short',
  'hum-trace',
  'drifting-sensor',
  'noise-trace',
] as const;
export type DeadTraceKind = (typeof DEAD_TRACE_KINDS)[number];

/** Sounds that are not arcs; `neighbour` is left out, since it is one. */
export const NON_ARC_SOUNDS = NOISE_KINDS.filter((kind) => kind !== 'neighbour');

export type NonArc =
  | { type: 'sound'; samples: Float64Array }
  | { type: 'electrical'; voltageV: Float64Array; currentA: Float64Array };

/** A recording without an arc in it: a sound (full scale 1) or a pair of traces. */
export function simulateNonArc(
  kind: string,
  random: Random,
  rateHz: number,
  seconds: number,
): NonArc {
  const count = Math.floor(seconds * rateHz);
  if ((DEAD_TRACE_KINDS as readonly string[]).includes(kind)) {
    return { type: 'electrical', ...deadTrace(kind as DeadTraceKind, random, rateHz, count) };
  }
  if (!(NON_ARC_SOUNDS as string[]).includes(kind)) {
    throw new ArcError({
      code: 'unknown-kind',
      what: `There is no recording of the kind "${kind}".`,
      expected: `one of ${[...NON_ARC_SOUNDS, ...DEAD_TRACE_KINDS].join(', ')}`,
      todo: 'Choose one of these.',
    });
  }
  const samples = makeNoise(kind as NoiseKind, random, rateHz, count);
  const level = 10 ** (random.uniform(-45, -12) / 20);
  const floor = makeNoise('room-noise', random, rateHz, count);
  const quiet = random.next() < 0.2 ? 0 : level * random.logUniform(0.003, 0.1);
  for (let i = 0; i < count; i++) samples[i]! *= level;
  addTo(samples, floor, quiet);
  for (let i = 0; i < count; i++) samples[i] = Math.max(-1, Math.min(1, samples[i]!));
  return { type: 'sound', samples };
}

function deadTrace(
  kind: DeadTraceKind,
  random: Random,
  rateHz: number,
  count: number,
): { voltageV: Float64Array; currentA: Float64Array } {
  const voltageV = new Float64Array(count);
  const currentA = new Float64Array(count);
  if (kind === 'zeros') return { voltageV, currentA };
  const slow = drift(random, rateHz, count, 0.3);
  const mains = 2 * Math.PI * random.pick([50, 60]);
  const noiseV = random.logUniform(0.02, 1);
  const noiseA = random.logUniform(0.1, 5);
  const level = {
    'open-circuit': [random.uniform(50, 100), 0],
    'dead-short': [random.uniform(0.2, 4), random.uniform(80, 500)],
  };
  const [meanV, meanA] = (level as Record<string, number[]>)[kind] ?? [0, 0];
  const humV =
    kind === 'hum-trace'
      ? random.uniform(1, 30)
      : kind === 'open-circuit'
        ? random.uniform(0, 1)
        : 0;
  const driftV = kind === 'drifting-sensor' ? random.uniform(1, 15) : 0.01;
  for (let i = 0; i < count; i++) {
    const turn = Math.sin((mains * i) / rateHz);
    voltageV[i] = meanV! + humV * turn + driftV * slow[i]! + noiseV * random.normal();
    currentA[i] = meanA! + 0.2 * humV * turn + 2 * driftV * slow[i]! + noiseA * random.normal();
  }
  return { voltageV, currentA };
}
