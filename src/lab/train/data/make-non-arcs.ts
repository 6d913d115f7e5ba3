import { createRandom, type Random } from '../../../core/index.js';
import { createSoundExtractor } from '../../../features/index.js';
import {
  atRate,
  COMMON_NOISE_GROUPS,
  degradeSound,
  drawChain,
  NON_ARC_SOUNDS,
  simulateNonArc,
} from '../../simulate/index.js';
import { type LabelledRun, REAL, RERECORDED, windowsOf } from './labelled-run.js';
import type { TrainingRecipe } from './recipe.js';

/** Recordings without an arc of one kind, through the same chains as arcs. */
export function makeNonArcs(recipe: TrainingRecipe, kind: string): LabelledRun[] {
  return Array.from({ length: recipe.nonArcPerKind }, (_, i) => {
    const id = `${recipe.seed}/no arc/${kind}/${i}`;
    const random = createRandom(id);
    const seconds = random.uniform(3, 6);
    const sound = simulateNonArc(kind, random, RENDER_RATE_HZ, seconds);
    if (sound.type !== 'sound') throw new RangeError(`${kind} is no sound`);
    return { id, family: kind, ...recorded(sound.samples, random, recipe) };
  });
}

/** A real recording without an arc. */
export interface RealSound {
  id: string;
  kind: string;
  samples: Float64Array;
  rateHz: number;
}

/** The recording itself as a run. */
export function asRecorded({ id, kind, samples, rateHz }: RealSound): LabelledRun {
  return { id, family: kind, conditions: [REAL], ...withoutArc(samples, rateHz) };
}

/**
 * The same sound as others would have recorded it: up to a third faster or slower, switched or not, with
 * other noise, in another room, by another device.
 */
export function rerecord(sound: RealSound, count: number, recipe: TrainingRecipe): LabelledRun[] {
  return Array.from({ length: count }, (_, i) => {
    const id = `${sound.id}#${i}`;
    const random = createRandom(`${recipe.seed}/${id}`);
    const speed = random.logUniform(3 / 4, 4 / 3);
    const samples = atRate(sound.samples, sound.rateHz * speed, RENDER_RATE_HZ);
    const { conditions, ...rest } = recorded(Float64Array.from(samples), random, recipe);
    return { id, family: sound.kind, ...rest, conditions: [...conditions, RERECORDED] };
  });
}

/** Perhaps switched on and off, then through a drawn chain. */
function recorded(samples: Float64Array, random: Random, recipe: TrainingRecipe) {
  if (random.next() < 0.4) switchOnAndOff(samples, random.fork('switch'));
  const chain = drawChain(random, {
    family: random.pick(recipe.nonArcChains),
    noiseGroups: GROUPS_WITHOUT_ARC,
  });
  const degraded = degradeSound(samples, RENDER_RATE_HZ, chain, { arcOn: [] });
  return {
    conditions: [`chain ${chain.family}`],
    ...withoutArc(degraded.samples, degraded.rateHz),
  };
}

function withoutArc(samples: Float64Array, rateHz: number) {
  const windows = windowsOf(createSoundExtractor(rateHz), [samples]);
  return {
    mode: null,
    unambiguous: true,
    windows: windows.map((window) => ({ window, mode: null, arc: 'off' as const })),
  };
}

/** Tools and showers start and stop as well, a valve within a millisecond: a leap alone must not make an arc. */
function switchOnAndOff(samples: Float64Array, random: Random): void {
  const n = samples.length;
  const on = n * random.uniform(0.05, 0.4);
  const off = n * random.uniform(0.6, 0.97);
  const rise = RENDER_RATE_HZ * random.logUniform(0.001, 2);
  const fall = RENDER_RATE_HZ * random.logUniform(0.001, 2);
  const rest = 10 ** (random.uniform(-45, -12) / 20);
  for (let i = 0; i < n; i++) {
    const open = Math.max(0, Math.min(1, (i - on) / rise, (off - i) / fall));
    samples[i] = samples[i]! * (rest + (1 - rest) * open);
  }
}

export { NON_ARC_SOUNDS };

const RENDER_RATE_HZ = 44_100;
/** A neighbour's arc must not teach what an arc is not. */
const GROUPS_WITHOUT_ARC = COMMON_NOISE_GROUPS.filter((group) => group !== 'arcs');
