import { describe, expect, it } from 'vitest';
import {
  chooseUnits,
  chooseWords,
  tagOf,
  unitsOfTag,
} from '../../../../src/apps/page/words/index.js';

describe('units of the page', () => {
  it('are those chosen before, else those of the device’s first language', () => {
    expect(chooseUnits('inch', ['de-DE'])).toBe('inch');
    expect(chooseUnits(null, ['en-US', 'de'])).toBe('inch');
    expect(chooseUnits(null, ['de-DE', 'en-US'])).toBe('metric');
    expect(chooseUnits('furlongs', [])).toBe('metric');
  });

  // Rejects a tag that hides the language it begins with.
  it('travel with the language in one tag', () => {
    for (const lang of ['en', 'de']) {
      for (const units of ['metric', 'inch'] as const) {
        const tag = tagOf(lang, units);
        expect(unitsOfTag(tag)).toBe(units);
        expect(chooseWords(tag, []).lang).toBe(lang);
        expect(new Intl.Locale(tag).language).toBe(lang);
      }
    }
  });
});
