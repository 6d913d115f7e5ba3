import { describe, expect, it } from 'vitest';
import type { Mode, Segment } from '../../../src/core/index.js';
import { decide, type JudgedIntervals, RunEvidence } from '../../../src/judge/index.js';
import { classifierFor, type FittedModel } from '../../../src/model/index.js';
import { TINY_SET, tinyModel } from '../../support/tiny-model.js';

const SETTINGS = { ignitionMaskS: 0, craterMaskS: 0, answerThreshold: 0.6, mixedShare: 0.75 };

/** Ten seconds of arc with segments, and ten windows that all show the same features. */
function judged(
  parts: readonly [endS: number, mode: Mode | null][],
  values: readonly number[],
  novelty = 1,
  scores: readonly number[] = [0, 0, 0, 0],
): JudgedIntervals {
  const evidence = new RunEvidence(2);
  const judgement = {
    startS: 0,
    endS: 1,
    scores: Float64Array.from(scores),
    parts: scores.map((one) => Float64Array.of(one, 0)),
    probabilities: new Float64Array(4),
    arcScore: 0,
    novelty,
  };
  for (let i = 0; i < 10; i++)
    evidence.add({ startS: i, endS: i + 1, values: Float64Array.from(values) }, judgement);
  const segments: Segment[] = parts.map(([endS, mode], i) => ({
    startS: i === 0 ? 0 : parts[i - 1]![0],
    endS,
    mode,
    confidence: 0.8,
  }));
  const arcInterval = { startS: 0, endS: 10, openStart: false, openEnd: false };
  return { arcIntervals: [arcInterval], segments, evidence, bestScore: 5 };
}

const nothing = (): JudgedIntervals => ({
  arcIntervals: [],
  segments: [],
  evidence: new RunEvidence(2),
  bestScore: -Infinity,
});

function verdictOf(
  accepted: JudgedIntervals,
  doubtful = nothing(),
  model: FittedModel = tinyModel(),
) {
  return decide(accepted, doubtful, classifierFor(model), TINY_SET, SETTINGS);
}

describe('decide', () => {
  it('names the mode that holds the time and that the run looks like, with its probability', () => {
    // Lean 2 gives scores 4, −4, 0, 0: probability e⁴/(e⁴ + e⁻⁴ + 2) = 0.9643 (hand calculation).
    const verdict = verdictOf(judged([[10, 'short-circuit']], [2, 0]));
    expect(verdict.status).toBe('ok');
    expect(verdict.mode).toBe('short-circuit');
    const p = Math.exp(4) / (Math.exp(4) + Math.exp(-4) + 2);
    expect(verdict.confidence).toBeCloseTo(p, 10);
    expect(verdict.shareOfArcTime?.['short-circuit']).toBe(1);
  });

  it('is unsure below the threshold and still gives the probabilities', () => {
    // Lean 0.5: e / (e + e⁻¹ + 2) = 0.5344, under 0.6. Rejects naming the likeliest all the same.
    const verdict = verdictOf(judged([[10, 'short-circuit']], [0.5, 0]));
    expect([verdict.status, verdict.mode, verdict.confidence]).toEqual(['unsure', null, null]);
    expect(verdict.probabilities?.['short-circuit']).toBeCloseTo(
      Math.E / (Math.E + 1 / Math.E + 2),
      10,
    );
  });

  it('adds what the windows say one by one, by their mean', () => {
    // Lean 0.5 gives 1, −1, 0, 0; windows of 0.8, 0, 0, 0 make it 1.8, −1, 0, 0 (hand calculation).
    // Rejects leaving the windows out (0.534), and their sum in place of their mean (0.999).
    const windows = judged([[10, 'short-circuit']], [0.5, 0], 1, [0.8, 0, 0, 0]);
    const { confidence, reasons } = verdictOf(windows);
    const p = Math.exp(1.8) / (Math.exp(1.8) + Math.exp(-1) + 2);
    expect(confidence).toBeCloseTo(p, 10);
    // 1.8 less the average of 1.8, −1, 0 and 0.
    expect(reasons[0]?.weight).toBeCloseTo(1.6, 10);
  });

  it('weighs stretches by their windows when they are joined', () => {
    // Ten windows of 0.9 and ten of −0.3 average 0.3; thirty more of 0.3 change nothing.
    // Rejects the mean of the last arc interval alone.
    const joined = new RunEvidence(2);
    for (const first of [0.9, -0.3, 0.3, 0.3, 0.3])
      joined.merge(judged([], [0.5, 0], 1, [first, 0, 0, 0]).evidence);
    expect(joined.opinions.scores()[0]).toBeCloseTo(0.3, 12);
    expect(joined.opinions.parts(0)[0]).toBeCloseTo(0.3, 12);
  });

  it('is unsure where the run as a whole contradicts its moments', () => {
    const verdict = verdictOf(judged([[10, 'globular']], [2, 0]));
    expect([verdict.status, verdict.mode]).toEqual(['unsure', null]);
    expect(verdict.statusReason).toMatch(/short-circuit.*globular/);
  });

  it('calls two modes that share the time mixed, below the share and not at it', () => {
    // 7 s and 3 s are under 75 %; 8 s and 2 s are over. Rejects a majority vote over windows.
    const mixed = verdictOf(
      judged(
        [
          [7, 'short-circuit'],
          [10, 'spray'],
        ],
        [2, 0],
      ),
    );
    expect([mixed.status, mixed.mode]).toEqual(['ok', 'mixed']);
    expect(mixed.confidence).toBeCloseTo(0.8, 12);
    const one = verdictOf(
      judged(
        [
          [8, 'short-circuit'],
          [10, 'spray'],
        ],
        [2, 0],
      ),
    );
    expect(one.mode).toBe('short-circuit');
  });

  it('calls no run mixed for time that nobody could name', () => {
    const verdict = verdictOf(
      judged(
        [
          [6, 'short-circuit'],
          [10, null],
        ],
        [2, 0],
      ),
    );
    expect(verdict.mode).not.toBe('mixed');
  });

  it('names nothing that is unlike everything fitted', () => {
    // Mean novelty 3.1 against a limit of 3; at 2.9 it answers. Rejects leaving novelty out.
    expect(verdictOf(judged([[10, 'short-circuit']], [2, 0], 3.1)).status).toBe('unsure');
    expect(verdictOf(judged([[10, 'short-circuit']], [2, 0], 2.9)).status).toBe('ok');
  });

  it('tells no arc from a doubtful one', () => {
    const gate = {
      scorer: tinyModel().modeScorer,
      stretch: tinyModel().modeScorer,
      calibration: { slope: 1, offset: [0], method: '', runs: 0 },
      acceptScore: 3,
      rejectScore: -1,
    };
    expect(verdictOf(nothing()).status).toBe('no-arc');
    const doubtful = { ...judged([[10, 'spray']], [0, 2]), bestScore: 0.5 };
    const verdict = verdictOf(nothing(), doubtful, tinyModel({ gate }));
    expect([verdict.status, verdict.mode]).toEqual(['unsure', null]);
    expect(verdict.probabilities).not.toBeNull();
    expect(verdict.arcStretches).toHaveLength(1);
  });

  it('says why by the features that moved the scores', () => {
    // Lean is 2 and speaks for the first mode by 4 above the average of the modes (0); lift is 0 and says
    // nothing. Rejects reasons for features that did not matter.
    const { reasons } = verdictOf(judged([[10, 'short-circuit']], [2, 0]));
    expect(reasons).toHaveLength(1);
    expect(reasons[0]).toMatchObject({ feature: 'lean', speaksFor: 'short-circuit', weight: 4 });
  });
});
