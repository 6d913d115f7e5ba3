import { loadShippedModel } from '#shipped-models';
import type { FeatureSet } from '../features/index.js';
import { checkFit, type Model } from '../model/index.js';

/** Gives the model document for a feature set (`sound`, `voltage`, `voltage-current`, `current`). */
export type LoadModel = (featureSet: string) => Promise<unknown>;

/**
 * The model to judge by. Documents from elsewhere are checked field by field; of those that come with the
 * package only that they belong to these features, so that the checker is loaded when it is needed.
 *
 * @throws ArcError `bad-model`, `model-mismatch`
 */
export async function modelFor(featureSet: FeatureSet, loadModel?: LoadModel): Promise<Model> {
  if (loadModel) {
    const { parseModel } = await import('../model/parse/index.js');
    return parseModel(await loadModel(featureSet.id), featureSet);
  }
  const model = (await loadShippedModel(featureSet.id)) as Model;
  checkFit(model, featureSet);
  return model;
}
