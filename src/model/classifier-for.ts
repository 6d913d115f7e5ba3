import type { Classifier } from './classifier.js';
import { EarClassifier } from './ear/ear-classifier.js';
import { FittedClassifier } from './fitted-classifier.js';
import type { Model } from './model-document.js';

/** The judge that a model document asks for. */
export function classifierFor(model: Model): Classifier {
  return model.kind === 'arc-transfer-ear' ? new EarClassifier(model) : new FittedClassifier(model);
}
