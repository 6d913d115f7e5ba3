import { describe, expect, it } from 'vitest';
import { comparisonText } from '../../../../../src/apps/cli/evaluate/comparison-text.js';
import { createRandom, MODES, type Mode } from '../../../../../src/core/index.js';
import { readLabelRows, truthRuns } from '../../../../../src/lab/evaluate/labels/index.js';
import type { LabelledRun } from '../../../../../src/lab/train/data/labelled-run.js';
import { BOOST_DEFAULTS } from '../../../../../src/lab/train/fit/boost.js';
import { checkEnough, fitOwn, foldsOf, ownRuns } from '../../../../../src/lab/train/index.js';
import {
  classifierFor,
  HeardSums,
  RunVector,
  WindowOpinions,
} from '../../../../../src/model/index.js';
import { parseModel } from '../../../../../src/model/parse/index.js';
import { codeOf } from '../../../../support/code-of.js';
import { TINY_SET, tinyModel } from '../../../../support/tiny-model.js';

const FAST = { ...BOOST_DEFAULTS, rounds: 25, depth: 2, leastHessian: 1 };
const OPTIONS = { window: FAST, run: FAST };

/** Recordings of eight windows near a place in the plane of the two tiny features. */
function recordings(
  count: number,
  modeAt: (i: number) => Mode,
  placeOf: (mode: Mode, i: number) => readonly [number, number],
): LabelledRun[] {
  const random = createRandom('recordings');
  return Array.from({ length: count }, (_, i) => {
    const mode = modeAt(i);
    const [lean, lift] = placeOf(mode, i);
    const windows = Array.from({ length: 8 }, (_, w) => ({
      window: {
        startS: w,
        endS: w + 1,
        values: Float64Array.of(lean + random.normal(0, 0.3), lift + random.normal(0, 0.3)),
      },
      mode,
      arc: 'on' as const,
    }));
    return {
      id: `run ${i}`,
      family: `day ${i % 3}`,
      conditions: ['own'],
      mode,
      unambiguous: true,
      windows,
    };
  });
}

const two = (i: number): Mode => (i % 2 === 0 ? 'short-circuit' : 'globular');

describe('fitOwn', () => {
  // The tiny model takes a lean of +1 for short-circuit. In this invented lab it is the other way round.
  const turned = recordings(60, two, (mode) => [mode === 'globular' ? 1 : -1, 0]);
  const fitted = fitOwn(TINY_SET, turned, tinyModel(), 'my model', OPTIONS);

  it('beats a shipped model that is wrong about these recordings, and says so', () => {
    const { comparison } = fitted;
    expect([comparison.answer, comparison.worse]).toEqual(['better', []]);
    expect(comparison.better).toContain('accuracy');
    expect(comparison.accuracy.own).toBeGreaterThan(0.95);
    expect(comparison.accuracy.shipped).toBeLessThan(0.05);
    expect(comparison.logLoss.difference.high).toBeLessThan(0);
    expect(comparison.parts.map((one) => [one.part, one.runs])).toEqual([
      ['group day 0', 20],
      ['group day 1', 20],
      ['group day 2', 20],
      ['mode globular', 30],
      ['mode short-circuit', 30],
    ]);
    expect(comparisonText(comparison)).toMatch(/better than the shipped one.*60 recordings/);
  });

  it('makes a document that is taken again and answers as the people did', () => {
    const model = parseModel(JSON.parse(JSON.stringify(fitted.model)), TINY_SET);
    const classifier = classifierFor(model);
    const vector = new RunVector(2);
    const opinions = new WindowOpinions(2);
    for (const { window } of turned[1]!.windows) {
      vector.add(window.values);
      opinions.add(classifier.judge(window, 0.5).scores);
    }
    const p = classifier.run({ vector, opinions, heard: new HeardSums() }).probabilities;
    expect(p[MODES.indexOf('globular')]).toBeGreaterThan(0.8);
  });

  it('gives the same document from the same recordings', () => {
    const again = fitOwn(TINY_SET, turned, tinyModel(), 'my model', OPTIONS);
    expect(JSON.stringify(again.model)).toBe(JSON.stringify(fitted.model));
  });

  it('does not claim to beat a shipped model that is right', () => {
    // Here the tiny model names every run. The new one is a little surer, as it knows two modes only:
    // rejects an answer by the sign of the difference alone.
    const right = recordings(60, two, (mode) => [mode === 'globular' ? -1.2 : 1.2, 0]);
    const { comparison } = fitOwn(TINY_SET, right, tinyModel(), 'my model', OPTIONS);
    expect(comparison.accuracy.shipped).toBe(1);
    expect(comparison.logLoss.difference.high).toBeLessThan(0);
    expect([comparison.answer, comparison.better]).toEqual(['cannot-tell', []]);
  });

  it('judges each group by what was learnt on the others', () => {
    // On day 2 the two modes are the other way round: a model that had seen that day would be right
    // there, one that had not is wrong.
    const strange = recordings(60, two, (mode, i) => {
      const side = mode === 'globular' ? 1 : -1;
      return [i % 3 === 2 ? -side : side, 0];
    });
    const { comparison } = fitOwn(TINY_SET, strange, tinyModel(), 'my model', OPTIONS);
    const day = comparison.parts.find((one) => one.part === 'group day 2');
    expect(day?.own).toBeLessThan(0.2);
  });

  it('keeps the shipped gate for sound and notes it', () => {
    const gate = {
      scorer: tinyModel().modeScorer,
      stretch: tinyModel().runScorer,
      calibration: { slope: 1, offset: [0], method: '', runs: 0 },
      acceptScore: 3,
      rejectScore: -1,
    };
    const { model } = fitOwn(TINY_SET, turned, tinyModel({ gate }), 'my model', OPTIONS);
    expect(model.gate).toEqual(gate);
    expect(model.training['notes']).toContainEqual(
      expect.stringMatching(/shipped model unchanged/),
    );
    expect(fitted.model.training['notes']).toEqual([
      expect.stringMatching(/^Never seen in fitting: spray, pulsed-spray/),
    ]);
    expect(fitted.model.gate).toBeNull();
  });
});

describe('checkEnough', () => {
  const some = (count: number, modeAt: (i: number) => Mode, groups = 3) =>
    recordings(count, modeAt, () => [0, 0]).map((run, i) => ({ ...run, family: `g${i % groups}` }));

  it('takes twenty of each of two modes in two groups', () => {
    expect(codeOf(() => checkEnough(some(40, two, 3)))).toBe('taken');
  });

  it('refuses less, with the counts', () => {
    expect(() => checkEnough(some(39, two))).toThrow(/short-circuit 20 .*globular 19/);
    expect(codeOf(() => checkEnough(some(40, () => 'spray')))).toBe('too-few-runs');
    expect(codeOf(() => checkEnough(some(40, two, 1)))).toBe('too-few-runs');
    expect(codeOf(() => checkEnough([]))).toBe('too-few-runs');
  });

  it('refuses groups that each hold one mode only', () => {
    // With two groups by turns each mode lies in one: the day would be learnt, not the mode.
    expect(codeOf(() => checkEnough(some(60, two, 2)))).toBe('too-few-runs');
  });
});

function truths(...lines: string[]) {
  const heading = 'file,mode,start_s,end_s,labeller,group'.split(',');
  const named = lines.map((line, i) => ({ line: i + 2, cells: line.split(',') }));
  return truthRuns(readLabelRows({ name: 't', heading, lines: named }).rows);
}

describe('ownRuns', () => {
  const recorded = {
    featureSet: TINY_SET,
    windows: Array.from({ length: 10 }, (_, i) => ({
      startS: i,
      endS: i + 1,
      values: Float64Array.of(i, 0),
    })),
    arcs: [{ startS: 1.7, endS: 7.3, openStart: false, openEnd: false }],
  };
  const taught = (...lines: string[]) =>
    ownRuns(truths(...lines)[0]!, recorded, 'g').map((run) => [
      run.mode,
      run.windows.map(({ window }) => window.startS),
    ]);

  it('takes the steady part of the arc for a label of the whole', () => {
    // The arc is 1.7 to 7.3 s, less 0.3 s at either end: windows 2 to 6 lie wholly in [2, 7).
    expect(taught('a,spray,,,,')).toEqual([['spray', [2, 3, 4, 5, 6]]]);
  });

  it('takes all of a part that a person marked, whatever the tool sees there', () => {
    expect(taught('a,spray,0,3,,', 'a,globular,7.5,10,,')).toEqual([
      ['spray', [0, 1, 2]],
      ['globular', [8, 9]],
    ]);
  });

  it('learns nothing where people differ or could not tell', () => {
    expect(taught('a,spray,,,Ann,', 'a,globular,,,Ben,')).toEqual([]);
    expect(taught('a,globular/spray,,,,')).toEqual([]);
    expect(taught('a,no-arc,,,,')).toEqual([]);
    expect(taught('a,mixed,,,,')).toEqual([]);
  });
});

describe('foldsOf', () => {
  it('keeps stated groups', () => {
    expect([...foldsOf(truths('a,spray,,,,x', 'b,spray,,,,y')).values()]).toEqual(['x', 'y']);
  });

  it('spreads each mode over five parts, each recording in one', () => {
    // Modes by turns: counting files alone would put every mode into some parts only.
    const lines = Array.from({ length: 20 }, (_, i) => `f${i},${two(i)},,,,`);
    const folds = foldsOf(truths(...lines));
    const dips = [...folds].filter((_, i) => i % 2 === 0).map(([, fold]) => fold);
    expect(new Set(dips).size).toBe(5);
    expect(folds.get('f0')).toBe(folds.get('f1'));
  });

  it('refuses groups for some only', () => {
    expect(codeOf(() => foldsOf(truths('a,spray,,,,x', 'b,spray,,,,')))).toBe('group-missing');
  });
});
