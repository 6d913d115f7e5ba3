import { describe, expect, it } from 'vitest';
import { REFUSALS } from '../../../src/messages/english/refusals.js';
import {
  ENGLISH,
  language,
  type Message,
  message,
  numbersWith,
  retell,
  say,
} from '../../../src/messages/index.js';
import { EXAMPLES } from './examples.js';

const examples = Object.entries(EXAMPLES).flatMap(([code, list]) =>
  (list as readonly (readonly [Message['params'], string])[]).map(([params, text]) => ({
    code,
    params,
    text,
  })),
);

describe('the English catalogue', () => {
  // Rejects a sentence that changed by a letter, rounds otherwise, or takes another case of its params.
  it.each(examples)('says $code: $text', ({ code, params, text }) => {
    expect(say({ code, params }, ENGLISH)).toBe(text);
  });

  // Rejects a code that is in no room: examples and refusals are complete by type, the catalogue may hold more.
  it('holds the codes of the rooms and no others', () => {
    const codes = [...Object.keys(EXAMPLES), ...Object.keys(REFUSALS)];
    expect(Object.keys(ENGLISH.catalogue).sort()).toEqual(codes.sort());
  });

  // Rejects params that lose something in a document: undefined, NaN, an infinity, a class.
  it('takes params that survive JSON', () => {
    for (const { params } of examples) expect(JSON.parse(JSON.stringify(params))).toEqual(params);
  });

  it('writes no unit, mode or number that its params left out', () => {
    for (const { text } of examples)
      expect(text).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
  });
});

describe('a language', () => {
  const { 'mode-held': held, ...lacking } = ENGLISH.catalogue;

  // The check is the compiler's: without an error at these lines `npm run typecheck` fails.
  it('does not compile without one of the sentences, or with params of another', () => {
    // @ts-expect-error a sentence is missing
    const short = language(ENGLISH.write, lacking);
    expect(retell({ code: 'mode-held', params: {} }, short)).toBeNull();
    // @ts-expect-error the confidence belongs to another sentence
    expect(() => message('modes-mixed', { confidence: 1 })).toThrow();
    expect(held({ mode: 'spray', shareOfTime: 1 }, ENGLISH.write)).toContain('100 %');
  });

  // Rejects a sentence within a sentence that is said in English whatever the language.
  it('says what stands within a sentence in itself as well', () => {
    const loud = language(
      { ...ENGLISH.write, mode: (mode) => mode.toUpperCase() },
      { ...ENGLISH.catalogue, 'not-in-this-gas': () => 'NOWHERE' },
    );
    const where = { code: 'not-in-this-gas', params: {} };
    expect(say({ code: 'mode-lies', params: { mode: 'spray', where } }, loud)).toBe(
      'SPRAY: NOWHERE',
    );
  });
});

describe('retell', () => {
  const known = { code: 'mode-held', params: { mode: 'spray', shareOfTime: 0.97 } };

  it('says a sentence of a document', () => {
    expect(retell(known, ENGLISH)).toBe('spray over 97 % of the judged arc time.');
  });

  // Rejects one that throws at a document of an earlier or later version, or at a foreign one.
  it('leaves what it cannot say to the English text', () => {
    expect(retell({ code: 'mode-held' }, ENGLISH)).toBeNull();
    expect(retell({ params: known.params }, ENGLISH)).toBeNull();
    expect(retell({ code: 'not-a-code', params: {} }, ENGLISH)).toBeNull();
    expect(retell({ code: 'toString', params: {} }, ENGLISH)).toBeNull();
    expect(retell({ code: 'modes-mixed', params: {} }, ENGLISH)).toBeNull();
  });
});

describe('numbers with a decimal comma', () => {
  const write = numbersWith(',');

  // Rejects a language whose numbers keep the point somewhere, or lose digits that English shows.
  it('have the digits of the English ones', () => {
    expect(write.plain(18.5)).toBe('18,5');
    expect(write.plain(48000)).toBe('48000');
    expect(write.fixed(1.25, 2)).toBe('1,25');
    expect(write.short(2.5, 3)).toBe('2,5');
    expect(write.precise(4, 3)).toBe('4,00');
    expect(write.figures(0.012345, 3)).toBe('0,0123');
    expect(write.percent(0.555)).toBe('56 %');
    expect(write.span({ min: 24, max: 26.5 })).toBe('24–26,5');
    expect(write.span({ min: 24.01, max: 24.04 })).toBe('24');
    expect(write.span({ min: 1.14, max: 1.14 }, 2)).toBe('1,14');
  });
});
