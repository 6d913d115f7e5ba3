import { createRandom, MODES, type Mode } from '../../src/core/index.js';
import {
  degradeSound,
  drawAcoustics,
  drawChain,
  drawScenario,
  simulateArc,
  simulateSound,
} from '../../src/lab/simulate/index.js';
import type { TrainingRecipe } from '../../src/lab/train/index.js';
import { judge } from './judge.js';

/** The traces and the sound of one drawn arc. */
export function drawPair(recipe: TrainingRecipe, index: number) {
  const family = recipe.families[index % recipe.families.length]!;
  const mode = MODES[Math.floor(index / recipe.families.length) % MODES.length]!;
  const random = createRandom(`${recipe.seed}/pair/${family}/${mode}/${index}`);
  const arcS = random.uniform(...recipe.arcS);
  const run = simulateArc(drawScenario(random, { mode, family, arcS }));
  const { acousticFamilies, chainFamilies } = recipe.renderings[0]!;
  const acoustics = drawAcoustics(random, { family: random.pick(acousticFamilies) });
  const chain = drawChain(random, { family: random.pick(chainFamilies) });
  const heard = degradeSound(simulateSound(run, acoustics), acoustics.rateHz, chain, run.truth);
  return { run, chain, delayS: acoustics.distanceM / 343, ...heard };
}

/** What the feature extractor of sound and the feature extractor of voltage and current say of it; null where one finds no arc. */
export function judgePair({ run, samples, rateHz }: ReturnType<typeof drawPair>) {
  const truth = MODES.indexOf(run.truth.mode as Mode);
  const sound = opinion('sound', rateHz, [samples]);
  const traces = [run.voltageV, run.currentA];
  const trace = opinion('voltage-current', run.electricalRateHz, traces);
  return truth >= 0 && sound && trace ? { truth, sound, trace } : null;
}

function opinion(...args: Parameters<typeof judge>): number[] | null {
  const { pipeline, verdict } = judge(...args);
  const { probabilities } = verdict;
  if (pipeline.accepted.evidence.windows === 0 || !probabilities) return null;
  return MODES.map((mode) => probabilities[mode]);
}
