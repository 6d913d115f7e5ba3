import { describe, expect, it } from 'vitest';
import type { Result } from '../../../../src/analysis/result/index.js';
import {
  ENGLISH,
  eitherOf,
  GERMAN,
  LANGUAGES,
  viewGlance,
} from '../../../../src/apps/view/index.js';
import { MODES } from '../../../../src/core/index.js';
import { NEXT } from '../../../../src/messages/english/next.js';
import { englishIn } from '../../../support/english-words.js';
import { sampleResult } from '../../../support/sample-result.js';

const open = (shares: readonly number[]): Result =>
  sampleResult({
    status: 'unsure',
    mode: null,
    confidence: null,
    probabilities: {
      'short-circuit': shares[0] ?? 0,
      globular: shares[1] ?? 0,
      spray: shares[2] ?? 0,
      'pulsed-spray': shares[3] ?? 0,
    },
  });

/** A cross-check that holds only what is asked of it here. */
const checked = (changes: Partial<NonNullable<Result['crossCheck']>>): Result['crossCheck'] => ({
  settings: {
    answer: 'cannot-tell',
    text: 'Nothing to hold against it.',
    comparedVoltage: null,
    marginV: null,
    marginA: null,
  },
  intended: null,
  explanations: [],
  ...changes,
});

const DOWN = {
  code: 'move-volts',
  params: {
    wanted: 'short-circuit',
    trouble: 'too-hot',
    byV: { min: -4.5, max: -2 },
    targetV: { min: 16, max: 20 },
  },
} as const;

describe('the answer to be read from afar', () => {
  it('names the mode, how sure, and whether it was wanted', () => {
    const glance = viewGlance(sampleResult(), 'spray', ENGLISH);
    expect(glance).toMatchObject({
      kind: 'short-circuit',
      name: ['SHORT-', 'CIRCUIT'],
      sure: { word: 'very likely', figure: '94 %' },
      wanted: { mode: 'spray', name: 'SPRAY', answer: 'wrong' },
    });
  });

  it('says right where the wanted mode came, and asks for no change', () => {
    const glance = viewGlance(sampleResult(), 'short-circuit', ENGLISH);
    expect(glance.wanted?.answer).toBe('right');
    expect(glance.todo.text).toContain('Leave the settings as they are');
    expect(glance.procedure).toBeNull();
  });

  // Rejects praise for settings that should not give what came.
  it('asks to look again where the wanted mode came by settings that should not give it', () => {
    const crossCheck = checked({
      settings: {
        answer: 'disagrees',
        text: 'These volts give another mode.',
        comparedVoltage: null,
        marginV: null,
        marginA: null,
      },
      intended: { answer: 'agrees', text: 'It came.' },
      explanations: [
        {
          id: 'other',
          rank: 1,
          text: 'Something is not as stated.',
          evidenceFor: [],
          evidenceAgainst: [],
          check: 'Read all of it again.',
          checkMessage: { code: 'check-settings-again', params: {} },
        },
      ],
    });
    const glance = viewGlance(sampleResult({ crossCheck }), 'short-circuit', ENGLISH);
    expect(glance.wanted?.answer).toBe('right');
    expect(glance.todo.text).toBe('Read dial, feeder volts and wire feed again.');
    expect(glance.spoken).toMatch(/qualified procedure allows\.$/);
  });

  // Rejects an answer that goes by the name alone where the document knows better.
  it('takes the answer of the document where it holds one', () => {
    const crossCheck = checked({ intended: { answer: 'cannot-tell', text: 'Too little of it.' } });
    expect(viewGlance(sampleResult({ crossCheck }), 'spray', ENGLISH).wanted?.answer).toBe('open');
  });

  // Rejects advice without direction where one with it is given, and advice without the word of the procedure.
  it('gives the advice that says which way to turn, within the procedure', () => {
    const crossCheck = checked({
      advice: ['Stick-out 12 to 15 mm.', 'Too hot, 2 to 4.5 V down.'],
      adviceMessages: [
        { code: 'keep-stick-out', params: { stickOutMm: { min: 12, max: 15 } } },
        DOWN,
      ],
    });
    const result = sampleResult({ mode: 'globular', crossCheck });
    const english = viewGlance(result, 'short-circuit', ENGLISH);
    expect(english.todo.text).toBe('Too hot, 2 to 4.5 V down.');
    expect(english.procedure).toContain('procedure');
    const german = viewGlance(result, 'short-circuit', GERMAN);
    expect(german.todo).toMatchObject({ lang: 'de' });
    expect(german.todo.text).toContain('2 bis 4,5 V');
  });

  it('asks for the set-up where nothing is known of it', () => {
    const glance = viewGlance(sampleResult(), 'spray', ENGLISH);
    expect(glance.todo.text).toContain('State wire, gas, volts and feed');
  });

  it.each([
    ['failed', 'can’t be judged'],
    ['no-arc', 'No arc was heard'],
  ] as const)('says what to do next where it is %s', (status, words) => {
    const glance = viewGlance(
      sampleResult({ status, mode: null, confidence: null }),
      null,
      ENGLISH,
    );
    expect(glance.kind).toBe(status);
    expect(glance.sure).toBeNull();
    expect(glance.todo.text).toContain(words);
  });

  it('blames a sound that is cut off, or an arc that was too short, for an open answer', () => {
    const none = { ...open([0.3, 0.3, 0.2, 0.2]), quality: [] };
    const short = [{ startS: 1, endS: 2, openStart: false, openEnd: false }];
    expect(viewGlance(none, null, ENGLISH).todo.text).toContain('Record again');
    expect(viewGlance({ ...none, arcStretches: short }, null, ENGLISH).todo.text).toContain('10 s');
    const clipped = { ...none, quality: [{ code: 'clipping', share: 0.1, message: 'Cut off.' }] };
    expect(viewGlance(clipped, null, ENGLISH).todo.text).toContain('Move the phone back');
  });

  it('is spoken with the same figures', () => {
    expect(viewGlance(sampleResult(), 'spray', ENGLISH).spoken).toMatch(
      /^short-circuit, very likely, 94 percent\. Wanted spray: no\. /,
    );
    expect(viewGlance(sampleResult(), 'spray', GERMAN).spoken).toMatch(
      /^Kurzlichtbogen, sehr wahrscheinlich, 94 Prozent\. Gewünscht war Sprühlichtbogen: nein\. /,
    );
  });
});

describe('an answer that is down to two modes', () => {
  // Order of the shares: short-circuit, globular, spray, pulsed spray.
  it('names both in a fixed order, and the wanted mode is wrong only if it is neither', () => {
    const result = open([0.02, 0.4, 0.55, 0.03]);
    expect(eitherOf(result)).toEqual(['globular', 'spray']);
    expect(viewGlance(result, 'spray', ENGLISH)).toMatchObject({
      kind: 'open',
      name: ['GLOBULAR', 'OR SPRAY'],
      wanted: { answer: 'open' },
    });
    expect(viewGlance(result, 'short-circuit', ENGLISH).wanted?.answer).toBe('wrong');
    expect(viewGlance(result, null, ENGLISH).spoken).toMatch(/^globular or spray\./);
  });

  it('names none where more are left, or one is named already', () => {
    expect(eitherOf(open([0.3, 0.3, 0.3, 0.1]))).toBeNull();
    expect(eitherOf(sampleResult())).toBeNull();
  });
});

describe.each(LANGUAGES)('words for the answer: $own', ({ glance, lang }) => {
  it('has a short form of every check that can come first', () => {
    const checks = Object.keys(NEXT);
    expect(checks.length).toBeGreaterThan(10);
    expect(Object.keys(glance.checks)).toEqual(expect.arrayContaining(checks));
  });

  // Longer lines would push the sign or the button off the screen of a phone.
  it('keeps lines of names within sixteen signs and advice within ninety', () => {
    const pairs = MODES.flatMap((one, k) =>
      MODES.slice(k + 1).map((other) => [one, other] as const),
    );
    const lines = [
      ...Object.values(glance.names),
      ...pairs.map((pair) => glance.either(pair)),
    ].flat();
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(16);
    for (const text of [...Object.values(glance.todo), ...Object.values(glance.checks)])
      expect(text.length, text).toBeLessThanOrEqual(90);
  });

  it('is in its own language', () => {
    if (lang === 'en') return;
    const texts = [
      ...Object.values(glance.todo),
      ...Object.values(glance.checks),
      glance.procedure,
    ];
    expect(englishIn(texts.join(' '))).toEqual([]);
  });
});
