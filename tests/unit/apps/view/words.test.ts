import { describe, expect, it } from 'vitest';
import {
  ENGLISH,
  firstKnown,
  GERMAN,
  languageNamed,
  plain,
  sayConfidence,
} from '../../../../src/apps/view/index.js';

const { figure, percent, rate: sayRate, time: sayTime } = ENGLISH.numbers;

describe('percent', () => {
  it.each([
    [0, '0 %'],
    [1, '100 %'],
    [0.004, 'under 1 %'], // never shown as none
    [0.997, 'over 99 %'], // never shown as all
    [0.994, '99 %'],
    [0.125, '13 %'],
  ])('%f is %s', (share, words) => expect(percent(share)).toBe(words));
});

describe('sayConfidence', () => {
  it.each([
    [0.995, 'almost certain, over 99 %'],
    [0.99, 'almost certain, 99 %'],
    [0.9, 'very likely, 90 %'],
    [0.75, 'likely, 75 %'],
    [0.6, 'more likely than not, 60 %'],
    [0.3, 'doubtful, 30 %'],
  ])('%f is %s', (confidence, words) => expect(sayConfidence(confidence, ENGLISH)).toBe(words));
});

describe('figures and times', () => {
  it.each([
    [124.26, '124'],
    [0.012345, '0.0123'],
    [12345.6, '12346'],
    [0, '0'],
    [null, '–'],
    [Number.NaN, '–'],
  ])('%s is %s', (value, words) => expect(figure(value)).toBe(words));

  it.each([
    [0.123, '0.12 s'],
    [9.999, '10 s'],
    [59.96, '60 s'],
    [185, '3 min 05 s'],
    [7199.6, '2 h 00 min'],
    [7800, '2 h 10 min'],
  ])('%f s is %s', (seconds, words) => expect(sayTime(seconds)).toBe(words));

  it('gives kilohertz from 1000 on', () => {
    expect(sayRate(44100)).toBe('44.1 kHz');
    expect(sayRate(999)).toBe('999 Hz');
  });
});

describe('plain', () => {
  it('shows what would steer a terminal or turn text around', () => {
    expect(plain('a\u001b\u009b\u202eb')).toBe('a\\x1b\\x9b\\u202eb');
    expect(plain('Schweißnaht 溶接.wav')).toBe('Schweißnaht 溶接.wav');
  });
});

describe('German numbers', () => {
  it.each([
    [GERMAN.numbers.figure(0.012345), '0,0123'],
    [GERMAN.numbers.percent(0.997), 'über 99 %'],
    [GERMAN.numbers.percent(0.004), 'unter 1 %'],
    [GERMAN.numbers.time(0.123), '0,12 s'],
    [GERMAN.numbers.time(12.44), '12,4 s'],
    [GERMAN.numbers.time(7800), '2 h 10 min'],
    [GERMAN.numbers.rate(44100), '44,1 kHz'],
    [GERMAN.numbers.range('0,5', '1'), '0,5 bis 1'],
  ])('write %s', (said, words) => expect(said).toBe(words));

  // Rejects a translation that moves the bounds of the wordings: those are the README's table.
  it('put confidence at the same bounds', () => {
    const said = [0.99, 0.989, 0.75, 0.5, 0.49].map((one) => sayConfidence(one, GERMAN));
    expect(said).toEqual([
      'fast sicher, 99 %',
      'sehr wahrscheinlich, 99 %',
      'wahrscheinlich, 75 %',
      'eher ja, 50 %',
      'zweifelhaft, 49 %',
    ]);
  });
});

describe('the choice of a language', () => {
  it('takes tags as browsers and environments write them', () => {
    for (const tag of ['de', 'DE', 'de-AT', 'de_DE.UTF-8', 'de_DE@euro'])
      expect(languageNamed(tag).lang).toBe('de');
    expect(firstKnown(['fr-CA', 'de-AT', 'en']).lang).toBe('de');
    expect(firstKnown(['', 'C.UTF-8', 'fr']).lang).toBe('en');
  });

  it('refuses what it does not know, with the nearest that it does', () => {
    expect(() => languageNamed('dde')).toThrow(/no language "dde"\. Did you mean "de"\?/);
    expect(() => languageNamed('klingon')).toThrow(/en \(English\), de \(Deutsch\)/);
  });
});
