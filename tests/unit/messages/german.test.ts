import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MODES } from '../../../src/core/index.js';
import { GERMAN_MODES } from '../../../src/messages/german/glossary.js';
import { GERMAN_TERMS } from '../../../src/messages/german/terms.js';
import { ENGLISH, GERMAN, type MessageCode, retell, say } from '../../../src/messages/index.js';
import { englishIn } from '../../support/english-words.js';
import { SAMPLES } from '../../support/message-samples.js';

const CODES = Object.keys(SAMPLES) as MessageCode[];
const both = CODES.flatMap((code) =>
  (SAMPLES[code] as readonly Record<string, unknown>[]).map((params) => ({
    code,
    english: say({ code, params }, ENGLISH),
    german: say({ code, params }, GERMAN),
  })),
);

describe('the German catalogue', () => {
  it('says every sentence of the English one', () => {
    expect(Object.keys(GERMAN.catalogue).sort()).toEqual(Object.keys(ENGLISH.catalogue).sort());
    expect(CODES.toSorted()).toEqual(Object.keys(ENGLISH.catalogue).sort());
  });

  // Rejects a part of a sentence that stayed English, and a mode or a quantity by its id.
  it.each(both)('leaves no English word: $code, $german', ({ german }) => {
    expect(german).not.toBe('');
    expect(englishIn(german)).toEqual([]);
    for (const mode of MODES) expect(german).not.toContain(mode);
    expect(german).not.toMatch(/undefined|null|NaN|\[object|true|false/);
  });

  it.each(both)('writes numbers with a comma: $code', ({ german }) => {
    // Numbers of standards and tables, versions and times of day keep what they have.
    const rest = german.replaceAll(
      /AWS D1\.\d|QW-409\.2|§[\d.]+|Tabelle 5\.3|C5\.6|MP3|x 1\.2|T10:00:00Z|1\.2mm|0\.045in/g,
      '',
    );
    expect(rest).not.toMatch(/\d\.\d/);
  });

  // Rejects a sentence that forgets a number which the English one says.
  it.each(both)('says the same numbers: $code', ({ english, german }) => {
    // Thousands are apart by a comma in English and by a space in German.
    const numbers = (text: string): string[] => text.match(/\d+(?:\.\d+)?/g) ?? [];
    const own = german.replaceAll(/(\d) (?=\d{3}\b)/g, '$1').replaceAll(/(\d),(?=\d)/g, '$1.');
    const others = english.replaceAll(/(\d)[, ](?=\d{3}\b)/g, '$1');
    const said = new Set(numbers(own));
    const missing = numbers(others).filter((one) => !said.has(one));
    expect(missing).toEqual([]);
  });

  it('names every thing by one term, and uses every term', () => {
    const all = both.map(({ german }) => german).join('\n');
    for (const { german, never } of Object.values(GERMAN_TERMS)) {
      for (const other of never) expect(all).not.toContain(other);
      // Its last word, since those before it change their endings.
      const word = german
        .replace(/ \(WPS\)$/, '')
        .split(' ')
        .at(-1)!;
      expect(all).toContain(word);
    }
    for (const mode of MODES) expect(all).toContain(GERMAN_MODES[mode]);
  });

  // Rejects a heading of the page or the report that calls a thing by another name than the sentences do.
  it.each(['src/apps/view/words/german.ts', 'src/apps/page/words/german.ts'])(
    'agrees in its terms with %s',
    (file) => {
      const words = readFileSync(file, 'utf8');
      for (const { never } of Object.values(GERMAN_TERMS))
        for (const other of never) expect(words).not.toContain(other);
      expect(words).not.toMatch(/Vorschubgerät(?<!Drahtvorschubgerät)/);
    },
  );

  // Both cautions of a verdict and of advice, with every hazard that the English ones name.
  it('keeps the cautions at full force', () => {
    const caution = (code: MessageCode): string => say({ code, params: {} }, GERMAN);
    for (const hazard of [/Augen/, /Haut/, /rauch/, /elektrischen Schlag/, /Lärm/, /Spannung/])
      expect(caution('caution-arc-welding')).toMatch(hazard);
    for (const hazard of [/Augen/, /Haut/, /rauch/, /elektrischer Schlag/, /Verbrennung/, /Lärm/])
      expect(caution('caution-measuring')).toMatch(hazard);
    expect(caution('caution-estimate')).toMatch(/keine Prüfung/);
    expect(caution('caution-no-inspection')).toMatch(/keine Prüfung/);
    for (const code of ['caution-rules-first', 'caution-procedure-first'] as const)
      expect(caution(code)).toMatch(/qualifizierte/);
  });

  it('answers null for what it does not know, so that the English text is shown', () => {
    expect(retell({ code: 'of-a-later-version', params: {} }, GERMAN)).toBeNull();
    expect(retell({ code: 'clipping' }, GERMAN)).toBeNull();
  });

  it('joins lists as German does', () => {
    const { and, or } = GERMAN.write;
    expect([and(['a']), and(['a', 'b']), or(['a', 'b', 'c']), and([])]).toEqual([
      'a',
      'a und b',
      'a, b oder c',
      '',
    ]);
  });
});
