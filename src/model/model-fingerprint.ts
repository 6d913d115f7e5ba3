import { fingerprint } from '../core/index.js';
import type { Model } from './model-document.js';

/** A model is hundreds of kilobytes of JSON, and every result names it. */
const known = new WeakMap<Model, string>();

/** The {@link fingerprint} of a model, worked out once. The model must not change afterwards. */
export function modelFingerprint(model: Model): string {
  const name = known.get(model) ?? fingerprint(model);
  known.set(model, name);
  return name;
}
