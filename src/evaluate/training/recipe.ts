/** How the runs that a model learns from are drawn. Everything follows from it and the seed. */
export interface TrainingRecipe {
  seed: string;
  /** Electrical scenario families; also the folds of the cross-fitting. */
  families: readonly string[];
  /** Runs for each family and mode aimed at. */
  runsPerMode: number;
  /** Arc time of a run, s: drawn between the two. */
  arcS: readonly [number, number];
  /** Renderings of the sound of one run, each with its own acoustics, room, noise and microphone. */
  renderings: number;
  acousticFamilies: readonly string[];
  /** Drawn evenly; a family named more often is met more often. */
  chainFamilies: readonly string[];
  /** Recordings for each kind of sound without an arc. */
  nonArcPerKind: number;
}

export const SHIPPED_RECIPE: TrainingRecipe = {
  seed: 'arc-transfer 1',
  families: ['capillary', 'necking', 'empirical', 'dynamic'],
  runsPerMode: 360,
  arcS: [2.5, 5],
  renderings: 4,
  acousticFamilies: ['monopole', 'absorbing', 'resonant'],
  chainFamilies: ['studio', 'studio', 'studio', 'shop', 'shop', 'phone', 'phone', 'call'],
  nonArcPerKind: 144,
};

/** The same in small, for tests of the way from simulation to model; its models are poor. */
export const SMALL_RECIPE: TrainingRecipe = {
  ...SHIPPED_RECIPE,
  seed: 'arc-transfer small',
  runsPerMode: 2,
  arcS: [1.5, 2],
  renderings: 1,
  nonArcPerKind: 1,
};
