import { createRandom, MODES, type Random } from '../../../core/index.js';
import { createElectricalExtractor, createSoundExtractor } from '../../../features/index.js';
import {
  type ArcRun,
  type ArcScenario,
  degradeSound,
  drawAcoustics,
  drawChain,
  drawScenario,
  type SoundChain,
  simulateArc,
  simulateSound,
} from '../../simulate/index.js';
import { type LabelledRun, labelWindows, windowsOf } from './labelled-run.js';
import type { RenderingPlan, TrainingRecipe } from './recipe.js';

/** What one drawn arc teaches: its traces by kind of channel, and its sound in several renderings. */
export type TrainingSets = Record<
  'sound' | 'voltage' | 'voltage-current' | 'current',
  LabelledRun[]
>;

export function emptySets(): TrainingSets {
  return { sound: [], voltage: [], 'voltage-current': [], current: [] };
}

/** Numbers the drawn arcs of a recipe, for sharing the work out. */
export function arcCount(recipe: TrainingRecipe): number {
  return recipe.families.length * MODES.length * recipe.runsPerMode;
}

/** The labelled runs of drawn arc number `index`; the same on every machine and in any order. */
export function makeArc(recipe: TrainingRecipe, index: number): TrainingSets {
  const family = recipe.families[index % recipe.families.length]!;
  const mode = MODES[Math.floor(index / recipe.families.length) % MODES.length]!;
  const id = `${recipe.seed}/${family}/${mode}/${index}`;
  const random = createRandom(id);
  const arcS = random.uniform(...recipe.arcS);
  const scenario = drawScenario(random, { mode, family, arcS });
  const conditions = consumables(scenario);
  const run = simulateArc(scenario);
  const sets = emptySets();
  const common = { family, mode: run.truth.mode, unambiguous: run.truth.unambiguous };
  for (const [set, hasVoltage, hasCurrent] of TRACES) {
    const extractor = createElectricalExtractor({
      sampleRateHz: run.electricalRateHz,
      hasVoltage,
      hasCurrent,
    });
    const channels = [...(hasVoltage ? [run.voltageV] : []), ...(hasCurrent ? [run.currentA] : [])];
    const windows = labelWindows(windowsOf(extractor, channels), run.truth);
    sets[set].push({
      id,
      ...common,
      conditions: [...conditions, `rate ${run.electricalRateHz} Hz`],
      windows,
    });
  }
  for (const [i, plan] of recipe.renderings.entries())
    sets.sound.push({
      id: `${id}/${i}`,
      ...common,
      ...render(run, plan, random.fork(`sound ${i}`), conditions),
    });
  return sets;
}

const TRACES = [
  ['voltage', true, false],
  ['voltage-current', true, true],
  ['current', false, true],
] as const;

function render(
  run: ArcRun,
  { acousticFamilies, chainFamilies, ...noises }: RenderingPlan,
  random: Random,
  conditions: readonly string[],
) {
  const acoustics = drawAcoustics(random, { family: random.pick(acousticFamilies) });
  const chain = drawChain(random, { family: random.pick(chainFamilies), ...noises });
  const { samples, rateHz } = degradeSound(
    simulateSound(run, acoustics),
    acoustics.rateHz,
    chain,
    run.truth,
  );
  return {
    conditions: [...conditions, `acoustics ${acoustics.family}`, ...soundConditions(chain)],
    windows: labelWindows(windowsOf(createSoundExtractor(rateHz), [samples]), run.truth),
  };
}

function consumables({ wire, gas }: ArcScenario): string[] {
  return [`wire ${wire.material}`, `wire ${wire.diameterMm} mm`, `gas ${gas.group}`];
}

function soundConditions(chain: SoundChain): string[] {
  const { snrDb } = chain;
  const noise =
    snrDb === null || snrDb >= 20 ? '20 dB or more' : snrDb >= 5 ? '5 to 20 dB' : 'under 5 dB';
  return [
    `chain ${chain.family}`,
    `signal-to-noise ${noise}`,
    ...(chain.gainControl && chain.clip ? ['gain control and clipping'] : []),
  ];
}
