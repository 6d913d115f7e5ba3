import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/index.js';
import { drawAcoustics, drawChain } from '../../../src/simulate/index.js';

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
