import { NOISE_GROUPS, POWER_FAMILIES } from '../../simulate/index.js';

/** How the runs that a model learns from are drawn. Everything follows from it and the seed. */
export interface TrainingRecipe {
  seed: string;
  /** Electrical scenario families; also the folds of the cross-fitting. */
  families: readonly string[];
  /** Runs for each family and mode aimed at. */
  runsPerMode: number;
  /** Arc time of a run, s: drawn between the two. */
  arcS: readonly [number, number];
  /** Renderings of the sound of each run, each with its own acoustics, room, noise and microphone. */
  renderings: readonly RenderingPlan[];
  /** Recordings for each kind of sound without an arc, and the chains they go through. */
  nonArcPerKind: number;
  nonArcChains: readonly string[];
}

/** What one rendering is drawn from: evenly, so that a family named more often is met more often. */
export interface RenderingPlan {
  acousticFamilies: readonly string[];
  chainFamilies: readonly string[];
  /** Groups of noises that may be mixed in; the simulator's common ones when left out. */
  noiseGroups?: readonly string[];
}

const PLAIN: RenderingPlan = {
  acousticFamilies: POWER_FAMILIES,
  chainFamilies: ['studio', 'studio', 'studio', 'shop', 'shop', 'phone', 'phone', 'call'],
};

/** Events that sound of themselves, lossy files, tools and talk beside the arc. */
const HARDER: RenderingPlan = {
  acousticFamilies: ['voiced', 'textured', 'unbalanced'],
  chainFamilies: ['studio', 'shop', 'shop', 'phone', 'call', 'coded', 'coded', 'coded'],
  noiseGroups: Object.keys(NOISE_GROUPS),
};

export const SHIPPED_RECIPE: TrainingRecipe = {
  seed: 'arc-transfer 1',
  families: ['capillary', 'necking', 'empirical', 'dynamic'],
  runsPerMode: 360,
  arcS: [2.5, 5],
  renderings: [PLAIN, HARDER, PLAIN, HARDER],
  nonArcPerKind: 144,
  nonArcChains: [...PLAIN.chainFamilies, ...HARDER.chainFamilies],
};

/** The same in small, for tests of the way from simulation to model; its models are poor. */
export const SMALL_RECIPE: TrainingRecipe = {
  ...SHIPPED_RECIPE,
  seed: 'arc-transfer small',
  runsPerMode: 2,
  arcS: [1.5, 2],
  renderings: [PLAIN],
  nonArcPerKind: 1,
  nonArcChains: PLAIN.chainFamilies,
};
