import { fingerprint } from '../core/index.js';
import type { Model } from './model-document.js';

/** A model is hundreds of kilobytes of JSON, and every result names it. */
const known = new WeakMap<Model, string>();

/**
 * The {@link fingerprint} of a model, worked out once. The model must not change afterwards. Models that come with
 * the package state theirs, since working it out takes a third of a short run; no other document can, because what
 * reads models from elsewhere leaves out what it does not know.
 */
export function modelFingerprint(model: Model): string {
  const name = known.get(model) ?? stated(model) ?? fingerprint(model);
  known.set(model, name);
  return name;
}

function stated(model: Model): string | undefined {
  const { fingerprint: name } = model as Model & { fingerprint?: unknown };
  return typeof name === 'string' && /^[0-9a-f]{16}$/.test(name) ? name : undefined;
}
