import { describe, expect, it } from 'vitest';
import { MODES } from '../../../../src/core/index.js';
import { SOUND_FEATURES } from '../../../../src/features/index.js';
import { MEASURED_SIGNS, plainRefusal, RunEvidence } from '../../../../src/judge/index.js';
import { signReasons } from '../../../../src/judge/signs/index.js';
import { USUAL_SIGNS } from '../../../../src/judge/signs/usual-signs.js';

/** A run whose windows all show these features at this level; what is not given is absent. */
function evidence(features: Record<string, number>, levelDb = -30): RunEvidence {
  const run = new RunEvidence(SOUND_FEATURES.features.length);
  const values = Float64Array.from(SOUND_FEATURES.features, ({ id }) => features[id] ?? NaN);
  const none = { lineHz: NaN, lineProminence: NaN, onsetHz: NaN, onsetStrength: NaN };
  const levels = new Float64Array(16).fill(10 ** (levelDb / 10));
  const judgement = {
    startS: 0,
    endS: 1,
    scores: new Float64Array(4),
    parts: [],
    probabilities: new Float64Array(4),
    arcScore: 0,
    novelty: 0,
  };
  for (let i = 0; i < 4; i++)
    run.add(
      { startS: i, endS: i + 1, values, sound: { ...none, levels, clippedShare: 0 } },
      judgement,
    );
  return run;
}

describe('signReasons', () => {
  it('says what is usual for the answer first, with value, range and what it is not usual for', () => {
    // 40 cracks a second, unevenly spaced: in the middle of drawn short circuits.
    const run = evidence({ strongOnsetRate: Math.log2(40), onsetIntervalCv: 0.7 });
    const reasons = signReasons(run, SOUND_FEATURES, 'short-circuit');
    const cracks = reasons.find(({ feature }) => feature === 'crackRateHz')!;
    expect(cracks.weight).toBeGreaterThan(0);
    expect(cracks.text).toMatch(
      /^40 sharp cracks a second, unevenly spaced: usual for short-circuit \(/,
    );
    expect(cracks.text).toMatch(/not for .*spray/);
  });

  it('says what is not usual for the answer last, and that the answer stands all the same', () => {
    const run = evidence({ strongOnsetRate: Math.log2(40), onsetIntervalCv: 0.7 });
    const reasons = signReasons(run, SOUND_FEATURES, 'spray');
    const cracks = reasons.find(({ feature }) => feature === 'crackRateHz')!;
    expect(cracks.weight).toBeLessThan(0);
    expect(cracks.text).toMatch(/not usual for spray .* the whole decides/);
    const signs = reasons.map(({ weight }) => Math.sign(weight));
    expect(signs).toEqual([...signs].sort((a, b) => b - a));
  });

  it('keeps quiet about what the recording does not show', () => {
    expect(signReasons(evidence({}), SOUND_FEATURES, 'spray')).toEqual([]);
  });

  it('knows a range for each sign and mode', () => {
    for (const { id } of MEASURED_SIGNS)
      for (const mode of MODES) {
        const { low, middle, high } = USUAL_SIGNS[id][mode];
        expect(low <= middle && middle <= high, `${id} ${mode}`).toBe(true);
      }
  });
});

describe('plainRefusal', () => {
  it.each([
    ['nothing-recorded', { flatness: 0.98 }, -95],
    ['tone', { flatness: 0.05, spectralCrest: 1.2 }, -20],
    ['hum', { flatness: 0.2, spectralCrest: 0.7, steadyLineProminence: 6 }, -30],
    [null, { flatness: 0.8, spectralCrest: 0.4, steadyLineProminence: 2.5 }, -30],
    // A pulsed arc beats clearly, and hisses between the harmonics of its beat.
    [null, { flatness: 0.8, spectralCrest: 0.4, steadyLineProminence: 4.5 }, -30],
  ] as const)('%s', (what, features, levelDb) => {
    expect(plainRefusal(evidence(features, levelDb), SOUND_FEATURES)).toBe(what);
  });
});
