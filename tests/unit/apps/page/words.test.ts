import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../../../src/analysis/result/index.js';
import { chooseWords, LANGUAGES } from '../../../../src/apps/page/words/index.js';
import { sayConfidence } from '../../../../src/apps/view/index.js';
import { SOUND_FEATURES, VOLTAGE_CURRENT_FEATURES } from '../../../../src/features/index.js';
import { sampleResult } from '../../../support/sample-result.js';

const german = LANGUAGES.find((one) => one.lang === 'de')!;
const english = LANGUAGES.find((one) => one.lang === 'en')!;

describe('the words of the page', () => {
  it('follow the choice, else the device, else are English', () => {
    expect(chooseWords('de', ['en']).lang).toBe('de');
    expect(chooseWords(null, ['fr-CA', 'de-AT', 'en']).lang).toBe('de');
    expect(chooseWords('xx', ['fr']).lang).toBe('en');
  });

  it('leave nothing of a language empty that another has', () => {
    const empty = (value: unknown, path: string): string[] =>
      typeof value === 'string'
        ? value.trim() === ''
          ? [path]
          : []
        : value !== null && typeof value === 'object'
          ? Object.entries(value).flatMap(([key, one]) => empty(one, `${path}.${key}`))
          : [];
    for (const { lang, page } of LANGUAGES) {
      const allowed = /hint$|\.foreign$/;
      expect(empty(page, lang).filter((path) => !allowed.test(path))).toEqual([]);
    }
  });

  it('are, in English, those of the command line', () => {
    expect(english.result.confidence(0.94)).toBe(sayConfidence(0.94));
    expect(english.result.verdict(sampleResult())).toMatch(/transfer$/);
  });

  // Rejects a translation that moves the bounds of the wordings: those are the README's table.
  it('put German confidence at the same bounds', () => {
    expect(german.result.confidence(0.99)).toBe('fast sicher, 99 %');
    expect(german.result.confidence(0.989)).toBe('sehr wahrscheinlich, 99 %');
    expect(german.result.confidence(0.75)).toBe('wahrscheinlich, 75 %');
    expect(german.result.confidence(0.5)).toBe('eher ja, 50 %');
    expect(german.result.confidence(0.49)).toBe('zweifelhaft, 49 %');
    expect(german.result.percent(0.997)).toBe('über 99 %');
  });

  it('say every caution of a result in German', () => {
    for (const one of CAUTIONS) expect(german.result.said(one).lang).toBe('de');
  });

  // Rejects a German page that falls back on English where a feature was added to the set.
  it('name every feature of sound, voltage and current in German', () => {
    for (const { id } of [...SOUND_FEATURES.features, ...VOLTAGE_CURRENT_FEATURES.features]) {
      const reason = { ...sampleResult().reasons[0]!, feature: id, text: 'meaning: 1.5 (ratio)' };
      expect(german.result.reason(reason).lang, id).toBe('de');
    }
  });

  it('put numbers and modes into German sentences', () => {
    expect(german.result.said('spray over 97 % of the judged arc time.').text).toBe(
      'Sprühlichtbogen über 97 % der beurteilten Zeit.',
    );
    expect(german.result.said('The run mixes spray (60 %) and globular (40 %).').text).toBe(
      'Der Versuch mischt Sprühlichtbogen (60 %) und Übergangslichtbogen (40 %).',
    );
    expect(
      german.result.said('1.42 s is little to judge by; record 5 s of steady arc or more.').text,
    ).toBe('1,42 s sind wenig; 5 s ruhigen Lichtbogens oder mehr aufnehmen.');
  });

  // Rejects a page that hides a sentence, or marks English as German.
  it('leave a sentence they do not know as it is, marked as English', () => {
    const text = 'A sentence of a later version.';
    expect(german.result.said(text)).toEqual({ text, lang: 'en' });
  });
});
