import { readFileSync } from 'node:fs';
import { SOUND_FEATURES } from '../../../src/features/index.js';
import { loadShippedModel } from '../../../src/files/shipped-models.js';
import {
  arcCount,
  emptySets,
  fitShipped,
  makeArc,
  makeNonArcs,
  NON_ARC_SOUNDS,
  SHIPPED_RECIPE,
  unpackReference,
} from '../../../src/lab/train/index.js';

/** Model documents by feature set. */
export type Models = (featureSet: string) => Promise<unknown>;

export const shippedModels: Models = loadShippedModel;

/** Fitted on `runs` arcs for each mode aimed at and each family but those of `held`. */
export function heldOutModels(held: readonly string[], runs: number): Models {
  const recipe = {
    ...SHIPPED_RECIPE,
    seed: `held ${held.join()}`,
    families: SHIPPED_RECIPE.families.filter((family) => !held.includes(family)),
    runsPerMode: runs,
    renderings: SHIPPED_RECIPE.renderings.slice(0, 2),
    nonArcPerKind: 6,
  };
  const sets = emptySets();
  for (let i = 0; i < arcCount(recipe); i++) {
    const arc = makeArc(recipe, i);
    for (const set of ['sound', 'voltage-current'] as const) sets[set].push(...arc[set]);
  }
  const others = NON_ARC_SOUNDS.flatMap((kind) => makeNonArcs(recipe, kind));
  const reference = JSON.parse(readFileSync('fixtures/training/sounds-without-arc.json', 'utf8'));
  others.push(...unpackReference(reference, SOUND_FEATURES));
  const fits = new Map<string, unknown>();
  for (const set of ['sound', 'voltage-current'] as const)
    fits.set(set, fitShipped(set, sets[set], others, recipe).model);
  return async (featureSet) => fits.get(featureSet);
}
