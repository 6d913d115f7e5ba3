import { describe, expect, it } from 'vitest';
import type { Result } from '../../../../src/analysis/result/index.js';
import {
  ENGLISH,
  GERMAN,
  terminalText,
  viewAnswer,
  viewStrip,
  wordsFor,
} from '../../../../src/apps/view/index.js';
import { NO_PAINT } from '../../../../src/apps/view/layout.js';
import { message } from '../../../../src/messages/index.js';
import { sampleResult } from '../../../support/sample-result.js';
import { judge } from '../../setup/check/situation.js';
import { SITUATIONS } from '../../setup/check/situations.js';

const look = { width: 80, paint: NO_PAINT };

/** A reason by a feature of a trace, as a document holds it. */
function sign(
  feature: string,
  value: number,
  speaksFor: NonNullable<Result['mode']>,
  weight: number,
): Result['reasons'][number] {
  const made = message('sign', {
    feature: { code: 'trace-feature', params: { feature } },
    value,
    unit: '1',
  });
  return { feature, value, unit: '1', speaksFor: speaksFor as 'spray', weight, ...made };
}

describe('the strip', () => {
  // Rejects a strip with holes or overlaps, and one that drops what was left out.
  it('tiles the recording from start to end', () => {
    const strip = viewStrip(
      sampleResult({
        segments: [
          { startS: 1.3, endS: 3, mode: 'short-circuit', confidence: 0.9 },
          { startS: 3, endS: 5, mode: 'short-circuit', confidence: 0.9 },
          { startS: 5, endS: 8.7, mode: null, confidence: 0.4 },
        ],
      }),
      ENGLISH,
    )!;
    expect(strip.parts.map(({ kind, startS, endS }) => [kind, startS, endS])).toEqual([
      ['no-arc', 0, 1],
      ['left-out', 1, 1.3],
      ['short-circuit', 1.3, 5],
      ['not-clear', 5, 8.7],
      ['left-out', 8.7, 9],
      ['no-arc', 9, 10],
    ]);
  });

  it('says what came first and what then, and no letter without its word', () => {
    const strip = viewStrip(sampleResult(), ENGLISH)!;
    expect(strip.said).toBe('short-circuit at first, globular from 7 s');
    for (const { name } of strip.parts) expect(name).toMatch(/[a-z]{3}/);
    const one = [{ startS: 1, endS: 9, mode: 'spray' as const, confidence: 1 }];
    expect(viewStrip(sampleResult({ segments: one }), GERMAN)!.said).toBe(
      'durchgehend Sprühlichtbogen',
    );
  });

  it('is absent where the length is not known', () => {
    const { source } = sampleResult();
    expect(viewStrip(sampleResult({ source: { ...source, durationS: null } }), ENGLISH)).toBeNull();
  });
});

describe('reasons in a welder’s words', () => {
  const result = sampleResult({
    mode: 'spray',
    reasons: [
      sign('shortShare', 0, 'spray', 2),
      sign('currentCv', 0.021, 'spray', 1.5),
      sign('currentHighRatio', 1.01, 'spray', 1),
      sign('stepTilt', 0.95, 'globular', 0.5),
      sign('dropStepRateHz', 20.3, 'globular', -0.5),
    ],
  });

  it('are split into what fits and what does not, with what each weighs', () => {
    const { fits, against } = viewAnswer(result, ENGLISH).reasons;
    expect(fits?.title).toBe('Fits spray');
    expect(fits?.list.map(({ text }) => text)).toEqual([
      'no time in short circuit',
      'current steady within 2 %',
      '20 steps up of the voltage a second, as drops leave',
    ]);
    expect(against?.list.map(({ text }) => text)).toEqual([
      'globular: steps of the voltage as drops leave',
    ]);
    // 2 + 1.5 + 1 + 0.5 against 0.5.
    expect(against?.weighed).toBe('What fits weighs 10 times as much.');
  });

  it('say of a beat whether it stands out, by the measure that counts events (20 times the floor)', () => {
    const beat = (prominence: number) => {
      const made = message('sign', {
        feature: { code: 'sound-feature', params: { feature: 'fastLineProminence' } },
        value: Math.log10(prominence),
        unit: 'log10',
      });
      const reason = { ...sign('x', 0, 'spray', 1), ...made };
      return viewAnswer(sampleResult({ mode: 'spray', reasons: [reason] }), ENGLISH).reasons;
    };
    expect(beat(131).fits?.list[0]?.text).toBe('a clear beat above 60 a second in the sound');
    expect(beat(8.1).fits?.list[0]?.text).toBe('no clear beat above 60 a second in the sound');
  });

  it('are said in the language of the reader', () => {
    const { fits } = viewAnswer(result, GERMAN).reasons;
    expect(fits?.list[0]).toEqual({ text: 'zu keiner Zeit im Kurzschluss', lang: 'de' });
  });

  it('keep the text of a reason that has no such words', () => {
    const { fits } = viewAnswer(sampleResult(), GERMAN).reasons;
    expect(fits?.list[0]).toEqual({ text: 'Sharp events come 124 times a second.', lang: 'en' });
  });
});

describe('the answer', () => {
  it('says "100 %" of the arc nowhere, since the name says it', () => {
    const whole = { 'short-circuit': 1, globular: 0, spray: 0, 'pulsed-spray': 0, undetermined: 0 };
    const text = terminalText(sampleResult({ shareOfArcTime: whole }), look);
    expect(text).not.toContain('100 %');
    expect(text).toContain('8 s of arc, from 1 s to 9 s');
  });

  it('calls a silent recording silent', () => {
    const silent = sampleResult({
      status: 'no-arc',
      mode: null,
      confidence: null,
      statusReason: 'Nothing in the recording shows a burning arc.',
      quality: [{ code: 'silent', share: 1, message: 'The recording is silent.' }],
      segments: [],
      arcStretches: [],
    });
    const text = terminalText(silent, look);
    expect(text.match(/The recording is silent\./g)).toHaveLength(1);
    expect(text).not.toContain('Nothing in the recording');
  });

  it('is trusted in tenths, and a doubt says how much it touches', () => {
    const trust = viewAnswer(sampleResult({ confidence: 0.72 }), ENGLISH).trust;
    expect(trust[0]?.text).toBe('The loudest moments are cut off. (2 % of it)');
    expect(trust[1]?.text).toMatch(/^About 7 of 10 /);
    expect(viewAnswer(sampleResult({ confidence: 0.97 }), ENGLISH).trust[1]?.text).toMatch(
      /^More than 9 of 10 /,
    );
  });

  it('says what to change with a direction, or what to look at first, and nothing twice', () => {
    const situation = (first: string) => SITUATIONS.find((one) => one.first === first)!;
    const hot = sampleResult({ mode: 'globular', crossCheck: judge(situation('hot-dip')) });
    const { todo, rest, wanted } = viewAnswer(hot, ENGLISH);
    expect(wanted).toMatchObject({ mode: 'short-circuit', answer: 'wrong', sign: '✗' });
    expect(todo?.kind).toBe('change');
    expect(todo?.text.text).toMatch(/^Too hot for short-circuit: .* down/);
    expect(rest.map(({ text }) => text)).not.toContain(todo?.text.text);
    const text = terminalText(hot, look);
    expect(text.match(/Too hot for short-circuit: /g)).toHaveLength(1);
    const lost = judge(situation('shielding-lost'));
    const checked = viewAnswer(
      sampleResult({ mode: 'globular', crossCheck: { ...lost, advice: [], adviceMessages: [] } }),
      ENGLISH,
    );
    expect(checked.todo).toMatchObject({
      kind: 'check',
      text: { text: 'Look at gas flow, hose, nozzle and draughts.' },
    });
  });

  it('is not praised where no mode is named', () => {
    const unsure = sampleResult({ status: 'unsure', mode: null, confidence: null, quality: [] });
    expect(viewAnswer(unsure, ENGLISH).trust.map(({ text }) => text)).toEqual([
      'A voltage log would settle it.',
    ]);
  });

  it('names spray by the terms of AWS without a letter that AWS does not give it', () => {
    const words = wordsFor(ENGLISH, { terms: 'aws' });
    expect(words.mode('spray')).toBe('spray');
    expect(wordsFor(GERMAN, { terms: 'aws' }).mode('spray')).toBe('Sprühlichtbogen');
    expect(wordsFor(GERMAN, { terms: 'aws' }).mode('globular')).toBe(
      'Übergangslichtbogen (GMAW-G)',
    );
  });
});
