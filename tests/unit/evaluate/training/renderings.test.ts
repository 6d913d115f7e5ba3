import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/index.js';
import { makeArc, SHIPPED_RECIPE } from '../../../../src/evaluate/index.js';
import { teachesGate } from '../../../../src/evaluate/training/recipe.js';
import { drawAcoustics, drawChain } from '../../../../src/simulate/index.js';

const SHORT = { ...SHIPPED_RECIPE, arcS: [1.2, 1.2] as const };

describe('renderings of a drawn arc', () => {
  it('follow the plans in their order, and one does not depend on how many follow', () => {
    // Rejects plans that share one random sequence: a recipe with one plan less would draw other sounds.
    const all = makeArc(SHORT, 3).sound;
    const [first] = SHORT.renderings;
    const alone = makeArc({ ...SHORT, renderings: [first] }, 3).sound;
    const counts = SHORT.renderings.map((plan) => plan.count);
    expect(all).toHaveLength(counts.reduce((sum, count) => sum + count, 0));
    expect(all.slice(0, alone.length)).toEqual(alone);
    const family = (i: number) => all[i]!.conditions.find((one) => one.startsWith('acoustics '));
    expect(family(all.length - 1)).toBe('acoustics unbalanced');
    for (let i = 0; i < first.count; i++)
      expect(first.acousticFamilies.map((one) => `acoustics ${one}`)).toContain(family(i));
  });
});

describe('families of sound', () => {
  const ratioDb = (family: string) =>
    Array.from({ length: 400 }, (_, i) => {
      const { hissPa, pulseGain } = drawAcoustics(createRandom(`${family} ${i}`), { family });
      return 20 * Math.log10(hissPa / pulseGain);
    });

  it('spread hiss against impulses evenly over 38 dB where nothing is known of it', () => {
    // Uniform over 38 dB: standard deviation 38/√12 = 11.0 dB; the others are normal with 7 dB.
    const sd = (values: number[]) => {
      const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
      return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length);
    };
    const spread = ratioDb('unbalanced');
    expect(Math.max(...spread) - Math.min(...spread)).toBeLessThanOrEqual(38);
    expect(Math.abs(sd(spread) - 11)).toBeLessThan(1);
    expect(Math.abs(sd(ratioDb('monopole')) - 7)).toBeLessThan(1);
  });

  it('keep voices for the family that is named after them, and lossy files for the coded chain', () => {
    const random = () => createRandom('one');
    expect(drawAcoustics(random(), { family: 'voiced' }).voices).not.toBeNull();
    expect(drawAcoustics(random(), { family: 'unbalanced' }).voices).toBeNull();
    expect(drawChain(random(), { family: 'coded' }).lossy).not.toBeNull();
    expect(drawChain(random(), { family: 'phone' }).lossy).toBeNull();
  });
});

describe('teachesGate', () => {
  it('is true of the first plan alone', () => {
    // Two renderings in the first plan of the shipped recipe: numbers 0 and 1. Rejects the number of the arc.
    const taught = [0, 1, 2, 3, 4].map((i) =>
      teachesGate(SHIPPED_RECIPE, { id: `a seed/necking/spray/7/${i}` }),
    );
    expect(taught).toEqual([true, true, false, false, false]);
  });
});
