import { describe, expect, it } from 'vitest';
import { chooseWords, LANGUAGES } from '../../../../src/apps/page/words/index.js';
import { LANGUAGES as SHARED } from '../../../../src/apps/view/index.js';

describe('the words of the page', () => {
  it('follow the choice, else the device, else are English', () => {
    expect(chooseWords('de', ['en']).lang).toBe('de');
    expect(chooseWords(null, ['fr-CA', 'de-AT', 'en']).lang).toBe('de');
    expect(chooseWords('xx', ['fr']).lang).toBe('en');
  });

  it('are there in every language that terminal and report speak', () => {
    expect(LANGUAGES.map(({ lang }) => lang)).toEqual(SHARED.map(({ lang }) => lang));
    for (const { lang, page, view } of LANGUAGES)
      expect([page.lang, view.lang]).toEqual([lang, lang]);
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
});
