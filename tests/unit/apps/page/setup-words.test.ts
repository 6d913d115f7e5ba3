import { describe, expect, it } from 'vitest';
import { sentencesOf } from '../../../../src/apps/page/shell/sentences-of.js';
import { LANGUAGES } from '../../../../src/apps/page/words/index.js';
import { parseSetup } from '../../../../src/setup/index.js';
import { englishIn } from '../../../support/english-words.js';

const german = LANGUAGES.find((one) => one.lang === 'de')!;
const english = LANGUAGES.find((one) => one.lang === 'en')!;

/** The error that a set-up as typed gives. */
function wrong(setup: Record<string, string>): unknown {
  try {
    parseSetup(setup);
  } catch (error) {
    return error;
  }
  throw new Error('The set-up was taken.');
}

/** One of each kind that the fields of the page can bring. */
const TYPED: readonly Record<string, string>[] = [
  { wireDiameter: '1.2' },
  { wireDiameter: '12 mm' },
  { wireDiameter: '1.2 furlongs' },
  { wireFeed: 'fast' },
  { wireFeed: '900 m/min' },
  { wireFeed: '900 in/min and more' },
  { setVoltage: '900 V' },
  { setVoltage: '0' },
  { stickOut: '15' },
  { gas: 'something' },
  { gas: 'M' },
  { gas: 'M21-ArC-2' },
  { gas: 'Ar+CO2' },
  { gas: '50Ar/30CO2' },
  { gas: '98/2' },
  { gas: '25/75' },
  { gas: '90/7.5/2.5' },
  { gas: 'Ar+18CO2', wireMaterial: 'aluminium' },
  { expect: 'pulsed-spray', source: 'steady' },
];

describe('a set-up that cannot be used', () => {
  it.each(TYPED)('is refused in sentences that make up its message: %o', (setup) => {
    const error = wrong(setup) as Error;
    const sentences = sentencesOf(error, english).map(({ text }) => text);
    expect(sentences).toHaveLength(3);
    expect(sentences.join(' ')).toBe(error.message);
  });

  // Rejects a new refusal that no German was written for, and one of which a part stays English.
  it.each(TYPED)('is refused in German: %o', (setup) => {
    const said = sentencesOf(wrong(setup), german);
    expect(said.filter(({ lang }) => lang !== 'de')).toEqual([]);
    const texts = said.map(({ text }) => text);
    expect(englishIn(texts.join(' '))).toEqual([]);
    expect(texts.join(' ')).not.toContain('--');
  });

  it('leaves what was typed as it was typed', () => {
    const [what] = sentencesOf(wrong({ wireFeed: '0.5 m/s or spray' }), german);
    expect(what!.text).toContain('„0.5 m/s or spray“');
  });
});
