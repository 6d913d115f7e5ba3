import { COMMON_NOISE_GROUPS, POWER_FAMILIES } from '../../simulate/index.js';

/** How the runs that a model learns from are drawn. Everything follows from it and the seed. */
export interface TrainingRecipe {
  seed: string;
  /** Electrical scenario families; also the folds of the cross-fitting. */
  families: readonly string[];
  /** Runs for each family and mode aimed at. */
  runsPerMode: number;
  /** Arc time of a run, s: drawn between the two. */
  arcS: readonly [number, number];
  /**
   * Renderings of the sound of one run, plan after plan. Modes are learned from all; "arc or not" from the
   * first plan alone, for with the others it let more foreign sounds pass where as many arcs did.
   */
  renderings: readonly [RenderingPlan, ...RenderingPlan[]];
  /** Recordings for each kind of sound without an arc; they go through the chains of the first plan. */
  nonArcPerKind: number;
}

/** So many renderings, each with its own acoustics, room, noise and microphone, drawn evenly from these. */
export interface RenderingPlan {
  count: number;
  acousticFamilies: readonly string[];
  /** A family named more often is met more often. */
  chainFamilies: readonly string[];
  /** Groups of noises that are mixed in. */
  noiseGroups: readonly string[];
}

const MANY_NOISES = ['machines', 'weather', 'people', 'arcs', 'tools', 'tools', 'traffic', 'talk'];
const PLAIN_CHAINS = ['studio', 'studio', 'studio', 'shop', 'shop', 'phone', 'phone', 'call'];

export const SHIPPED_RECIPE: TrainingRecipe = {
  seed: 'arc-transfer 1',
  families: ['capillary', 'necking', 'empirical', 'dynamic'],
  runsPerMode: 360,
  arcS: [2.5, 5],
  renderings: [
    {
      count: 2,
      acousticFamilies: POWER_FAMILIES,
      chainFamilies: PLAIN_CHAINS,
      noiseGroups: COMMON_NOISE_GROUPS,
    },
    {
      count: 2,
      acousticFamilies: ['voiced', 'voiced', 'voiced', ...POWER_FAMILIES],
      chainFamilies: ['studio', 'studio', 'shop', 'shop', 'phone', 'coded', 'coded', 'coded'],
      noiseGroups: MANY_NOISES,
    },
    {
      count: 1,
      acousticFamilies: ['unbalanced'],
      chainFamilies: ['studio', 'studio', 'shop', 'phone', 'coded', 'coded'],
      noiseGroups: MANY_NOISES,
    },
  ],
  nonArcPerKind: 144,
};

/** Whether a rendering (its number stands last in its id) is one that the gate learns from. */
export function teachesGate({ renderings }: TrainingRecipe, { id }: { id: string }): boolean {
  return Number(id.slice(id.lastIndexOf('/') + 1)) < renderings[0].count;
}

/** The same plans, one rendering of each. */
export function onceEach([
  first,
  ...rest
]: TrainingRecipe['renderings']): TrainingRecipe['renderings'] {
  return [{ ...first, count: 1 }, ...rest.map((plan) => ({ ...plan, count: 1 }))];
}

/** The same in small, for tests of the way from simulation to model; its models are poor. */
export const SMALL_RECIPE: TrainingRecipe = {
  ...SHIPPED_RECIPE,
  seed: 'arc-transfer small',
  runsPerMode: 2,
  arcS: [1.5, 2],
  renderings: onceEach(SHIPPED_RECIPE.renderings),
  nonArcPerKind: 1,
};
