import type { Pooling } from '../../../analysis/fusion/index.js';
import { type FittedModel, modelFingerprint } from '../../../model/index.js';
import { fitPooling } from '../pooling/fit-pooling.js';
import { type Opinion, pairOpinions } from '../pooling/opinions.js';
import type { TrainingSets } from './make-runs.js';
import type { TrainingRecipe } from './recipe.js';

/** A fitted model as it is written, and what its held-out scorers said of each drawn arc. */
export interface ShippedFit {
  model: FittedModel;
  opinions: Opinion[];
}

/** The weights of sound against trace that go with the models of one fit. */
export function poolShipped(
  fits: Record<keyof TrainingSets, ShippedFit>,
  recipe: TrainingRecipe,
): Pooling {
  const pairs = (set: keyof TrainingSets) => pairOpinions(fits.sound.opinions, fits[set].opinions);
  return fitPooling(
    {
      voltage: pairs('voltage'),
      'voltage-current': pairs('voltage-current'),
      current: pairs('current'),
    },
    Object.fromEntries(
      Object.entries(fits).map(([set, { model }]) => [set, modelFingerprint(model)]),
    ),
    {
      evidence:
        'Simulated arcs only; every opinion is of scorers that had not seen the family of the arc.',
      recipe,
    },
  );
}
