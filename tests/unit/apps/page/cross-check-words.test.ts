import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../../../src/apps/page/words/index.js';
import type { CrossCheck } from '../../../../src/setup/check/index.js';
import { SETUP_OPTIONS } from '../../../../src/setup/index.js';
import { englishLeft } from '../../../support/english-left.js';
import { judge } from '../../setup/check/situation.js';
import { SITUATIONS } from '../../setup/check/situations.js';

const german = LANGUAGES.find((one) => one.lang === 'de')!;

/** What the page shows of a comparison with the set-up. */
function shown({ settings, intended, qualification, explanations, advice }: CrossCheck): string[] {
  return [
    ...(advice ?? []),
    settings.text,
    ...(intended ? [intended.text] : []),
    ...(qualification ?? []),
    ...explanations.flatMap(({ text, check }) => [text, check]),
  ];
}

describe('the comparison with the set-up on the page', () => {
  // Rejects a new sentence that no German was written for, and one of which a part stays English.
  it.each(SITUATIONS)('is German throughout: $name', (situation) => {
    const english = shown(judge(situation));
    const said = english.map((one) => german.result.said(one));
    expect(said.filter(({ lang }) => lang !== 'de')).toEqual([]);
    const texts = said.map(({ text }) => text);
    expect(englishLeft(english, texts)).toEqual([]);
    expect(texts.join(' ')).not.toMatch(/\d\.\d [VsA%]/);
  });

  // On the page there are fields and no flags.
  it('names no option of the command line', () => {
    const texts = SITUATIONS.flatMap((one) => shown(judge(one))).join(' ');
    for (const { flag } of SETUP_OPTIONS) expect(texts).not.toContain(flag);
  });

  it('puts modes, places and limits into German', () => {
    expect(
      german.result.said(
        '12.7–18 V at the feeder, 134–190 A, Ar + 8 % CO2 does not permit spray: spray lies above 24–26 V and 220–269 A.',
      ).text,
    ).toBe(
      '12,7–18 V am Vorschubgerät, 134–190 A, Ar + 8 % CO2 erlaubt Sprühlichtbogen nicht: Sprühlichtbogen liegt über 24–26 V und 220–269 A.',
    );
    expect(
      german.result.said(
        'spray was wanted; globular and spray was seen (spray for 50 % of the time).',
      ).text,
    ).toBe(
      'Sprühlichtbogen war gewünscht; Übergangslichtbogen und Sprühlichtbogen kam vor (Sprühlichtbogen in 50 % der Zeit).',
    );
  });

  // Rejects a translation that also translates what the user's file says.
  it('leaves the names of columns as the file has them', () => {
    expect(german.result.said('Voltage is read from “U and I, V” (by its name).').text).toBe(
      'Die Spannung kommt aus “U and I, V”.',
    );
  });
});
