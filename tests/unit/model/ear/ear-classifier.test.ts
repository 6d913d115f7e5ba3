import { describe, expect, it } from 'vitest';
import { MODES } from '../../../../src/core/index.js';
import type { HeardBlock } from '../../../../src/features/index.js';
import {
  classifierFor,
  type EarModel,
  earOf,
  HeardSums,
  RunVector,
  WindowOpinions,
} from '../../../../src/model/index.js';
import { parseModel } from '../../../../src/model/parse/index.js';
import { codeOf } from '../../../support/code-of.js';
import { tinyEar } from '../../../support/tiny-ear.js';
import { TINY_SET } from '../../../support/tiny-model.js';

/** Blocks that differ, of the width that the network needs. */
function blocks(model: EarModel, count: number, arc = 0.9): HeardBlock[] {
  const width = earOf(model).network.layers.find(({ spec }) => spec.kind === 'arc')!.spec.inputs;
  const figures = (k: number) => Float32Array.from({ length: width }, (_, c) => ((k + c) % 5) / 5);
  return Array.from({ length: count }, (_, index) => ({
    index,
    mean: figures(index),
    square: figures(index).map((x) => x * x + 0.01),
    top: figures(index).map((x) => x + 0.1),
    arc,
    weight: arc,
  }));
}

function sums(model: EarModel, count = 8) {
  const heard = new HeardSums();
  for (const block of blocks(model, count)) heard.add(block);
  return { vector: new RunVector(2), opinions: new WindowOpinions(2), heard };
}

const run = (model: EarModel, count = 8) => classifierFor(model).run(sums(model, count));

describe('EarClassifier', () => {
  it('gives probabilities of the modes that add up to one', () => {
    const { probabilities, dropsHeard } = run(tinyEar());
    expect(probabilities.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
    expect(dropsHeard).toBeGreaterThan(0);
    expect(dropsHeard).toBeLessThan(1);
  });

  it('takes the calibration of the length that was heard', () => {
    // Slope 0 leaves the offsets alone: e to their power over the sum (hand calculation).
    const model = tinyEar();
    model.calibration.modesByS = [{ toS: 0.6, slope: 1e-9, offset: [Math.log(3), 0, 0, 0] }];
    // Four blocks are 0.512 s, eight are 1.024 s.
    expect(run(model, 4).probabilities[0]).toBeCloseTo(3 / 6, 6);
    expect(run(model, 8).probabilities[0]).toBeCloseTo(run(tinyEar(), 8).probabilities[0]!, 9);
  });

  it('finds its outputs by name, whatever their order, and passes over what it does not know', () => {
    // The same weights with other names: what was the first output is now the third mode.
    const swapped = tinyEar();
    swapped.outputs = ['spray', 'globular', 'short-circuit', 'pulsed-spray', 'arc', 'other'];
    const plain = run(tinyEar());
    const other = run(swapped);
    expect(other.probabilities[MODES.indexOf('spray')]).toBeCloseTo(plain.probabilities[0]!, 12);
    expect(other.dropsHeard).toBeNull();
  });

  it('shares drops of untold size between the modes in which drops fly free', () => {
    const model = tinyEar();
    model.outputs = ['short-circuit', 'globular', 'spray', 'pulsed-spray', 'arc', 'free-flight'];
    model.calibration.modes = { slope: 1e-9, offset: [0, Math.log(2), 0, 0, Math.log(3)] };
    const { probabilities, dropsHeard } = run(model);
    // Weights 1, 2, 1, 1 and 3 of 8: the three are shared two to one (hand calculation).
    expect([...probabilities].map((p) => Number(p.toFixed(6)))).toEqual([0.125, 0.5, 0.25, 0.125]);
    expect(dropsHeard).toBeCloseTo(5 / 8, 6);
  });

  it('adds the prior of an arc as log-odds', () => {
    const model = tinyEar();
    const classifier = classifierFor(model);
    const question = { ...sums(model), startDb: 0, stopDb: 0 };
    const even = classifier.arcIntervalScore(question, 0.5);
    expect(classifier.arcIntervalScore(question, 0.8) - even).toBeCloseTo(Math.log(4), 9);
  });

  it('hears a run as the sum of its intervals', () => {
    const model = tinyEar();
    const whole = new HeardSums();
    const [one, two] = [new HeardSums(), new HeardSums()];
    for (const block of blocks(model, 9)) {
      whole.add(block);
      (block.index < 4 ? one : two).add(block);
    }
    one.merge(two);
    const pooled = whole.pooled(1e-4);
    one.pooled(1e-4).forEach((value, k) => {
      expect(value).toBeCloseTo(pooled[k]!, 12);
    });
  });
});

describe('a document of a network', () => {
  it('comes through the checker and answers as before', () => {
    const model = parseModel(JSON.parse(JSON.stringify(tinyEar())), TINY_SET) as EarModel;
    expect(run(model).probabilities).toEqual(run(tinyEar()).probabilities);
  });

  it.each<[string, (model: EarModel) => void]>([
    ['a mode without an output', (m) => m.outputs.splice(0, 1, 'other')],
    ['one mode twice', (m) => m.outputs.splice(0, 2, 'spray', 'spray')],
    ['no output for an arc', (m) => m.outputs.splice(4, 1, 'other')],
    ['an output too many', (m) => m.outputs.push('other')],
    ['an offset too few', (m) => m.calibration.modes.offset.pop()],
    ['a slope that turns answers round', (m) => Object.assign(m.calibration.arc, { slope: -1 })],
    ['weights cut short', (m) => Object.assign(m, { weights: m.weights.slice(0, 400) })],
    ['weights that are no base64', (m) => Object.assign(m, { weights: `%${m.weights}` })],
    ['a layer without an end', (m) => Object.assign(m.network.layers[0]!, { inputs: 1e9 })],
    [
      'novelty of another width',
      (m) =>
        Object.assign(m, {
          novelty: { mean: [0], deviation: [1], centres: [[0]], factor: [1], limit: 1 },
        }),
    ],
  ])('is refused: %s', (_, spoil) => {
    const model = tinyEar();
    spoil(model);
    expect(['bad-model', 'bad-network']).toContain(
      codeOf(() => parseModel(JSON.parse(JSON.stringify(model)), TINY_SET)),
    );
  });
});
