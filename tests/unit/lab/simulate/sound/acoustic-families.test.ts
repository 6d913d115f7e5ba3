import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { drawAcoustics, drawChain, NOISE_GROUPS } from '../../../../../src/lab/simulate/index.js';

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

  it('keep voices and swells for the families that have them, and lossy files for the coded chain', () => {
    const random = () => createRandom('one');
    expect(drawAcoustics(random(), { family: 'voiced' }).eventSounds).not.toBeNull();
    expect(drawAcoustics(random(), { family: 'unbalanced' }).eventSounds).toBeNull();
    expect(drawAcoustics(random(), { family: 'textured' }).swells).not.toBeNull();
    expect(drawAcoustics(random(), { family: 'monopole' }).swells).toBeNull();
    expect(drawChain(random(), { family: 'coded' }).lossy).not.toBeNull();
    expect(drawChain(random(), { family: 'phone' }).lossy).toBeNull();
  });

  it('let a single drop click in about half of the arcs', () => {
    const clicking = Array.from({ length: 400 }, (_, i) =>
      drawAcoustics(createRandom(`click ${i}`), { family: 'resonant' }),
    ).filter(({ dropPa }) => dropPa > 0).length;
    // 200 expected of 400, standard deviation 10 (binomial); four of them allowed.
    expect(Math.abs(clicking - 200)).toBeLessThan(40);
  });

  it('mix tools and talk into a shop only where that is asked for', () => {
    const kinds = (noiseGroups?: readonly string[]) =>
      new Set(
        Array.from({ length: 300 }, (_, i) =>
          drawChain(createRandom(`shop ${i}`), {
            family: 'shop',
            ...(noiseGroups ? { noiseGroups } : {}),
          }).noises.map(({ kind }) => kind),
        ).flat(),
      );
    const asked = kinds(Object.keys(NOISE_GROUPS));
    for (const kind of ['speech', 'engine', 'impacts', 'motor', 'jet', 'buzz'] as const) {
      expect(kinds()).not.toContain(kind);
      expect(asked).toContain(kind);
    }
    for (const kind of ['fan', 'grinder', 'rain', 'babble', 'neighbour'] as const)
      expect(kinds()).toContain(kind);
  });
});
