import { describe, expect, it } from 'vitest';
import { makeArc, SMALL_RECIPE } from '../../../../../src/lab/train/index.js';

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

  // Rejects one generator that is shared by the renderings in turn.
  it('renders a plan alike whatever plan comes before it', () => {
    const second = (first: ReturnType<typeof plan>) => heard([first, plan('resonant', 'shop')])[1]!;
    const one = second(plan('monopole', 'studio'));
    expect(one.windows.length).toBeGreaterThan(0);
    expect(second(plan('voiced', 'phone'))).toEqual(one);
  });
});
