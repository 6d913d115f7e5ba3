import { describe, expect, it } from 'vitest';
import { fingerprint } from '../../../src/core/index.js';
import { type FittedModel, modelFingerprint } from '../../../src/model/index.js';
import { parseModel } from '../../../src/model/parse/index.js';
import { codeOf } from '../../support/code-of.js';
import { TINY_SET, tinyModel } from '../../support/tiny-model.js';

type Loose = Record<string, unknown>;

/** The tiny model after a change, as it would come out of a file. */
function changed(change: (model: Loose & FittedModel) => void): unknown {
  const model = JSON.parse(JSON.stringify(tinyModel())) as Loose & FittedModel;
  change(model);
  return model;
}

const tree = (changes: Loose = {}) => ({
  feature: [0, -1, -1],
  threshold: [1, 0, 0],
  left: [1, -1, -1],
  right: [2, -1, -1],
  absentLeft: [true, true, true],
  value: [0, -1, 1],
  ...changes,
});
const forest = (one: unknown) => ({
  kind: 'trees',
  bias: [0, 0, 0, 0],
  trees: [[one], [], [], []],
});

/** Documents that must not get through, by what is wrong with them. */
const HOSTILE: Record<string, unknown> = {
  'no object': 'a model',
  null: null,
  'another kind of document': changed((m) => Object.assign(m, { kind: 'other' })),
  'a future format': changed((m) => Object.assign(m, { schemaVersion: '2' })),
  'a list in place of a scorer': changed((m) => Object.assign(m, { modeScorer: [] })),
  'code in place of a scorer': changed((m) =>
    Object.assign(m, { modeScorer: { kind: 'function', body: 'return 1' } }),
  ),
  'modes in another order': changed((m) => m.modes.reverse()),
  'one mode twice': changed((m) => m.modes.fill('spray')),
  'a number that JSON cannot say': changed((m) => Object.assign(m.novelty, { limit: Infinity })),
  'NaN, which JSON writes as null': changed((m) => Object.assign(m.novelty.factor, { 0: NaN })),
  'null in a list': JSON.parse(JSON.stringify(changed((m) => m.novelty.factor.fill(NaN)))),
  'a slope that turns all answers round': changed((m) => {
    m.runCalibration.slope = -1;
  }),
  'a width of zero': changed((m) => {
    m.novelty.deviation[0] = 0;
  }),
  'more scores than modes': changed((m) => m.runCalibration.offset.push(0)),
  'too few weights': changed((m) => {
    if (m.modeScorer.kind === 'linear') m.modeScorer.weight[0]!.pop();
  }),
  'a run scorer as wide as a window': changed((m) => {
    m.runScorer = m.modeScorer;
  }),
  'a factor of the wrong size': changed((m) => m.novelty.factor.push(1)),
  'a centre of the wrong size': changed((m) => m.novelty.centres[0]!.push(1)),
  'no centre': changed((m) => m.novelty.centres.pop()),
  'a factor without end': changed((m) => {
    m.novelty.factor = new Array<number>(500_001).fill(0);
  }),
  'two thousand features': changed((m) => {
    m.featureSet.features = new Array<string>(2000).fill('lean');
  }),
  'more trees than a model may hold': changed((m) => {
    const many = new Array<unknown>(2001).fill(tree());
    Object.assign(m, { modeScorer: { ...forest(tree()), trees: [many, [], [], []] } });
  }),
  'a tree that leads back to its root': changed((m) =>
    Object.assign(m, { modeScorer: forest(tree({ left: [0, -1, -1] })) }),
  ),
  'a tree that leads out of itself': changed((m) =>
    Object.assign(m, { modeScorer: forest(tree({ right: [3, -1, -1] })) }),
  ),
  'a tree that asks for a feature beyond the last': changed((m) =>
    Object.assign(m, { modeScorer: forest(tree({ feature: [2, -1, -1] })) }),
  ),
  'a tree with lists of unlike length': changed((m) =>
    Object.assign(m, { modeScorer: forest(tree({ value: [0] })) }),
  ),
  'a tree with a child between two nodes': changed((m) =>
    Object.assign(m, { modeScorer: forest(tree({ left: [1.5, -1, -1] })) }),
  ),
};

const codeOfModel = (document: unknown): string => codeOf(() => parseModel(document, TINY_SET));

describe('parseModel', () => {
  it('takes a sound document and trees that end', () => {
    // Without this the refusals below could come from a check that refuses everything.
    expect(parseModel(tinyModel(), TINY_SET).id).toBe('tiny model');
    const trees = changed((m) => Object.assign(m, { modeScorer: forest(tree()) }));
    expect(codeOfModel(trees)).toBe('taken');
  });

  it.each(Object.keys(HOSTILE))('refuses %s', (name) => {
    expect(codeOfModel(HOSTILE[name])).toBe('bad-model');
  });

  it('refuses a model of other features, and says which', () => {
    const other = { ...TINY_SET, features: [...TINY_SET.features].reverse() };
    expect(() => parseModel(tinyModel(), other)).toThrow(
      /"tiny model" was fitted on features "tiny"/,
    );
  });

  // Rejects a memory of checked documents that forgets what they were checked for.
  it('refuses it also when it was accepted for its own features before', () => {
    const document = tinyModel();
    const accepted = parseModel(document, TINY_SET);
    expect(parseModel(document, TINY_SET)).toBe(accepted);
    const other = { ...TINY_SET, features: [...TINY_SET.features].reverse() };
    expect(codeOf(() => parseModel(document, other))).toBe('model-mismatch');
  });

  it('lets no key of a document reach the prototype of objects', () => {
    // JSON.parse makes `__proto__` a plain key; copying it by assignment would set the prototype.
    const text = JSON.stringify(tinyModel()).replace(
      '"training":{}',
      '"training":{"__proto__":{"spoilt":true},"constructor":{"prototype":{"spoilt":true}}},"__proto__":{"spoilt":true}',
    );
    const model = parseModel(JSON.parse(text), TINY_SET) as FittedModel & { spoilt?: boolean };
    expect(({} as { spoilt?: boolean }).spoilt).toBeUndefined();
    expect(model.spoilt).toBeUndefined();
    expect((model.training as { spoilt?: boolean }).spoilt).toBeUndefined();
  });

  it('keeps nothing that the format does not know', () => {
    const extra = changed((m) => Object.assign(m, { run: 'rm -rf' }));
    expect(parseModel(extra, TINY_SET)).not.toHaveProperty('run');
  });
});

// Rejects a memory that gives one model the name of another.
describe('modelFingerprint', () => {
  it('is that of the content, for each model its own, at every call', () => {
    const one = parseModel(tinyModel(), TINY_SET);
    const two = parseModel(
      changed((m) => Object.assign(m, { version: 'two' })),
      TINY_SET,
    );
    for (const model of [one, two, one, two])
      expect(modelFingerprint(model)).toBe(fingerprint(model));
    expect(modelFingerprint(one)).not.toBe(modelFingerprint(two));
  });
});
