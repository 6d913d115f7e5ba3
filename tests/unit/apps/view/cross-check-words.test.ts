import { describe, expect, it } from 'vitest';
import { GERMAN, tell, viewResult } from '../../../../src/apps/view/index.js';
import { message } from '../../../../src/messages/index.js';
import { SETUP_OPTIONS } from '../../../../src/setup/index.js';
import { englishIn } from '../../../support/english-words.js';
import { sampleResult } from '../../../support/sample-result.js';
import { judge } from '../../setup/check/situation.js';
import { SITUATIONS } from '../../setup/check/situations.js';

/** All that is shown of a comparison with the set-up. */
function shown(situation: (typeof SITUATIONS)[number]) {
  const result = sampleResult({ crossCheck: judge(situation), cautions: [] });
  const { settings, wanted, qualification, next, cautions } = viewResult(result, GERMAN);
  return [
    settings!.text,
    settings!.compared,
    wanted?.text,
    ...qualification,
    ...next.flatMap((one) => [one.check, one.because, ...one.speaksFor, ...one.speaksAgainst]),
    ...cautions,
  ].filter((one) => one !== undefined && one !== null);
}

describe('the comparison with the set-up', () => {
  // Rejects a sentence without a code, one that no German was written for, and a part that stays English.
  it.each(SITUATIONS)('is German throughout: $name', (situation) => {
    const said = shown(situation);
    expect(said.length).toBeGreaterThan(0);
    expect(said.filter(({ lang }) => lang !== 'de')).toEqual([]);
    const text = said.map((one) => one.text).join(' ');
    expect(englishIn(text)).toEqual([]);
    expect(text).not.toMatch(/\d\.\d [VsA%]/);
  });

  // On the page there are fields and no flags.
  it('names no option of the command line', () => {
    const text = SITUATIONS.flatMap((one) => shown(one).map((said) => said.text)).join(' ');
    for (const { flag } of SETUP_OPTIONS) expect(text).not.toContain(flag);
  });

  it('puts modes, places and limits into German', () => {
    const where = message('lies-in-spray', {
      bottomV: { min: 24, max: 26 },
      aboveA: { min: 220, max: 269 },
      disputed: false,
    });
    const refused = message('setup-forbids', {
      place: {
        feederV: { min: 12.7, max: 18 },
        currentA: { min: 134, max: 190 },
        gas: { symbol: 'M20', composition: { ar: 92, he: 0, co2: 8, o2: 0, h2: 0, n2: 0 } },
        source: null,
      },
      modes: ['spray'],
      outside: [{ mode: 'spray', where }],
    });
    expect(tell(refused.text, refused, GERMAN).text).toBe(
      'Mit 12,7–18 V am Drahtvorschubgerät, 134–190 A, Ar + 8 % CO2 ist kein Sprühlichtbogen möglich: der Sprühlichtbogen liegt über 24–26 V und 220–269 A.',
    );
  });

  // Rejects a translation that also translates what the user's file says.
  it('leaves the names of columns as the file has them', () => {
    const column = { name: 'U and I, V', number: 1, unit: null };
    const said = message('voltage-column', { column, by: 'name' });
    expect(tell(said.text, said, GERMAN).text).toContain('„U and I, V“');
  });

  // Documents of version 1.0, codes of a later version, and words of others.
  it('leaves a sentence that it cannot say as it is, marked as English', () => {
    const text = 'A sentence of a later version.';
    for (const coded of [undefined, null, {}, { code: 'later', params: {} }, { code: 'clipping' }])
      expect(tell(text, coded, GERMAN)).toEqual({ text, lang: 'en' });
    const foreign = message('in-words', { text });
    expect(tell(text, foreign, GERMAN)).toEqual({ text, lang: 'en' });
  });
});
