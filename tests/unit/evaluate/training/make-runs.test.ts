import { describe, expect, it } from 'vitest';
import { makeArc, SMALL_RECIPE } from '../../../../src/evaluate/index.js';

const plan = (acoustics: string, chain: string) => ({
  acousticFamilies: [acoustics],
  chainFamilies: [chain],
});
const recipe = { ...SMALL_RECIPE, arcS: [1.2, 1.3] as const };
const heard = (renderings: readonly ReturnType<typeof plan>[]) =>
  makeArc({ ...recipe, renderings }, 0).sound;

describe('makeArc', () => {
  it('renders the sound of an arc once by each plan', () => {
    const runs = heard([plan('monopole', 'studio'), plan('textured', 'coded')]);
    const named = runs.map(({ conditions }) =>
      conditions.filter((name) => /^(acoustics|chain) /.test(name)),
    );
    // Rejects one draw of acoustics for all, and plans that are taken in turn from arc to arc.
    expect(named).toEqual([
      ['acoustics monopole', 'chain studio'],
      ['acoustics textured', 'chain coded'],
    ]);
  });

  it('renders the first plan alike whatever plans follow', () => {
    const [alone] = heard([plan('resonant', 'shop')]);
    const [first] = heard([plan('resonant', 'shop'), plan('voiced', 'phone')]);
    expect(first!.windows.length).toBeGreaterThan(0);
    expect(first).toEqual(alone);
  });
});
