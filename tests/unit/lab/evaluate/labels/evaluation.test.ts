import { describe, expect, it } from 'vitest';
import type { Result } from '../../../../../src/analysis/result/index.js';
import { evaluationPage } from '../../../../../src/apps/cli/evaluate/page.js';
import { evaluationText } from '../../../../../src/apps/cli/evaluate/text.js';
import { NO_PAINT } from '../../../../../src/apps/view/index.js';
import {
  type Evaluation,
  evaluateRuns,
  readLabelRows,
  truthRuns,
} from '../../../../../src/lab/evaluate/labels/index.js';
import { sampleResult } from '../../../../support/sample-result.js';

/** A run of ten seconds of arc that was answered with `mode` and these probabilities. */
function answered(mode: Result['mode'], p: number[], changes: Partial<Result> = {}): Result {
  const [dip, globular, spray, pulsed] = p as [number, number, number, number];
  return sampleResult({
    mode,
    status: mode === null ? 'unsure' : 'ok',
    confidence: mode === null ? null : Math.max(...p),
    probabilities: { 'short-circuit': dip, globular, spray, 'pulsed-spray': pulsed },
    arcStretches: [{ startS: 0, endS: 10, openStart: true, openEnd: true }],
    segments: [{ startS: 0, endS: 10, mode: mode === 'mixed' ? null : mode, confidence: 0.9 }],
    features: { eventRateHz: 100 },
    ...changes,
  });
}

const failed = (): Result =>
  sampleResult({
    status: 'failed',
    mode: null,
    confidence: null,
    probabilities: null,
    arcStretches: [],
    segments: [],
    features: {},
    error: { code: 'x', message: 'It is <b>broken</b>.', expected: '', todo: '' },
  });

function evaluate(lines: string[], results: Result[]): Evaluation {
  const [heading, ...rest] = lines.map((line) => line.split(','));
  const named = rest.map((cells, i) => ({ line: i + 2, cells }));
  const { rows } = readLabelRows({ name: 't', heading: heading!, lines: named });
  return evaluateRuns(truthRuns(rows), results, 0.75);
}

const RUNS = [
  'file,mode,event_rate_hz,group',
  'a,spray,100,one',
  'b,spray,125,one',
  'c,globular,,two',
  'd,short-circuit,,two',
  'e,ambiguous,,two',
  'f,globular/spray,,two',
];
const RESULTS = [
  answered('spray', [0.1, 0.1, 0.8, 0]),
  answered(null, [0.2, 0.3, 0.5, 0]),
  answered('spray', [0, 0.4, 0.6, 0]),
  failed(),
  answered('spray', [0, 0.2, 0.8, 0]),
  answered('globular', [0, 0.7, 0.3, 0]),
];

describe('evaluateRuns', () => {
  const found = evaluate(RUNS, RESULTS);

  it('counts answers by truth, unsure and failed too', () => {
    const cell = (truth: string, answer: string) =>
      found.confusion.counts[found.confusion.truths.indexOf(truth)]![
        found.confusion.answers.indexOf(answer)
      ];
    expect(cell('spray', 'spray')).toBe(1);
    expect(cell('spray', 'unsure')).toBe(1);
    expect(cell('globular', 'spray')).toBe(1);
    expect(cell('short-circuit', 'failed')).toBe(1);
    expect(found.confusion.counts.flat().reduce((sum, one) => sum + one, 0)).toBe(4);
  });

  it('gives the figures worked by hand', () => {
    // 1 of 4 right, 2 of 4 answered, 1 of those 2 right. Recalls 1/2, 0, 0: macro 1/6. F1 of spray with
    // precision 1/2 (ambiguous runs are no part of it): 1/2, others 0: macro 1/6.
    const value = (name: string) => found.answers[name]?.value;
    expect(value('accuracy')).toBe(0.25);
    expect(value('coverage')).toBe(0.5);
    expect(value('accuracyOfAnswered')).toBe(0.5);
    expect(value('macroRecall')).toBeCloseTo(1 / 6, 12);
    expect(value('macroF1')).toBeCloseTo(1 / 6, 12);
    expect(value('precision spray')).toBe(0.5);
  });

  it('scores probabilities, with no opinion where none were given', () => {
    // Brier: a 0.01 + 0.01 + 0.04 = 0.06; b 0.04 + 0.09 + 0.25 = 0.38; c 0.36 + 0.36 = 0.72; d even
    // quarters: 0.75. Mean 1.91/4. Rejects leaving the failed run out (1.16/3).
    expect(found.probabilities).toMatchObject({ runs: 4, withoutOpinion: 1 });
    expect(found.probabilities.brier?.value).toBeCloseTo(1.91 / 4, 12);
    const loss = -(Math.log(0.8) + Math.log(0.5) + Math.log(0.4) + Math.log(0.25)) / 4;
    expect(found.probabilities.logLoss?.value).toBeCloseTo(loss, 12);
    expect(found.probabilities.calibrationError).toBeNull();
    expect(found.probabilities.reliability.map((bin) => bin.count)).toEqual([
      0, 0, 0, 0, 0, 1, 1, 0, 1, 0,
    ]);
  });

  it('keeps runs that people could not decide apart', () => {
    expect(found.runs).toMatchObject({ labelled: 6, scored: 4, undecided: 2, failed: 1 });
    expect(found.undecided).toEqual({
      ambiguous: 1,
      ambiguousNamed: 1,
      either: 1,
      eitherNamed: 1,
      eitherOneOfTwo: 1,
    });
  });

  it('compares rates as parts of the stated one', () => {
    // Found 100 against 100 and 125: errors 0 and 0.2, median 0.1, one of two within 2 and 10 %.
    expect(found.rates).toMatchObject({ stated: 2, found: 2, within2: 0.5, within10: 0.5 });
    expect(found.rates?.medianError).toBeCloseTo(0.1, 12);
  });

  it('gives each group its row', () => {
    expect(found.groups).toEqual([
      {
        group: 'one',
        runs: 2,
        accuracy: 0.5,
        coverage: 0.5,
        accuracyOfAnswered: 1,
        macroRecall: 0.5,
      },
      { group: 'two', runs: 2, accuracy: 0, coverage: 0.5, accuracyOfAnswered: 0, macroRecall: 0 },
    ]);
  });

  it('is the same every time, intervals too', () => {
    expect(evaluate(RUNS, RESULTS)).toEqual(found);
    expect(found.answers['accuracy']!.low).toBeLessThan(0.25);
    expect(found.answers['accuracy']!.high).toBeGreaterThan(0.25);
  });

  it('takes parts for the whole only where they cover the arc', () => {
    // 9.5 of 10 s stand for the run; 3 of 10 s do not, and count in the segments only.
    const heading = 'file,mode,start_s,end_s';
    const result = [answered('spray', [0, 0, 1, 0])];
    expect(evaluate([heading, 'a,spray,0,9.5'], result).runs).toMatchObject({
      scored: 1,
      inPart: 0,
    });
    const part = evaluate([heading, 'a,globular,1,4'], result);
    expect(part.runs).toMatchObject({ scored: 0, inPart: 1 });
    expect(part.spans?.figures['timeRight']?.value).toBe(0);
    expect(part.spans?.labelledS).toBe(3);
  });

  it('compares people with each other, and the tool with most of them', () => {
    const lines = ['file,mode,labeller', 'a,spray,Ann', 'a,spray,Ben', 'a,globular,Cy'];
    lines.push('b,globular,Ann', 'b,spray,Ben', 'b,globular,Cy');
    const both = evaluate(lines, [RESULTS[0]!, RESULTS[0]!]);
    expect(both.answers['accuracy']?.value).toBe(0.5);
    // Ann and Cy differ on a and agree on b; by hand: observed 1/2; Ann 1/2 each, Cy all globular:
    // expected 1/2; kappa 0.
    const pair = both.agreement?.pairs.find((one) => one.first === 'Ann' && one.second === 'Cy');
    expect(pair?.cohen).toEqual({ kappa: 0, observed: 0.5, units: 2 });
    expect(both.agreement?.labellers).toEqual(['Ann', 'Ben', 'Cy']);
    expect(evaluate(RUNS, RESULTS).agreement).toBeNull();
  });
});

describe('what is shown', () => {
  const hostile = evaluate(
    ['file,mode,group', '<img src=x onerror=alert(1)>.wav,spray,<script>alert(1)</script>'],
    [failed()],
  );

  it('lets no name or message act on the page', () => {
    const page = evaluationPage(hostile, '"><script>alert(2)</script>');
    expect(page).not.toMatch(/<script|<img|<b>/);
    expect(page).toContain('&lt;script&gt;');
    expect(page).toMatch(/Content-Security-Policy" content="default-src 'none'; script-src 'none'/);
    expect(page).not.toMatch(/https?:\/\//);
  });

  it('says counts and figures in the terminal, and every wrong answer by its file', () => {
    const text = evaluationText(evaluate(RUNS, RESULTS), { width: 80, paint: NO_PAINT });
    expect(text).toContain('6 recordings: 4 scored, 2 that people did not decide');
    expect(text).toMatch(/^c +globular +spray +60 %/m);
    expect(text).toMatch(/^spray +2 +50 %/m);
  });

  it('holds no NaN, which JSON cannot say', () => {
    const document = JSON.parse(JSON.stringify(hostile)) as unknown;
    expect(document).toEqual(hostile);
  });
});
