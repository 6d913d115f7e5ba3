import { describe, expect, it } from 'vitest';
import { analyseSamples } from '../../../src/index.js';

const RATE = 44_100;
const judged = (samples: Float64Array) =>
  analyseSamples(samples, { sampleRateHz: RATE, quantity: 'sound' });
const noise = (peak: number): Float64Array =>
  new Float64Array(3 * RATE).map((_, n) => peak * Math.sin(n * n));

describe('a silent recording', () => {
  // The last steps of 16 bits: 1/32768 is 3e-5 of full scale.
  it.each([
    ['zeros', 0],
    ['one step of 16 bits', 1 / 32_768],
  ])('%s: is said to be silent', async (_, peak) => {
    const { status, quality } = await judged(noise(peak));
    expect(status).toBe('no-arc');
    expect(quality.map(({ code }) => code)).toContain('silent');
  });

  it('is not one that is quiet', async () => {
    const { quality } = await judged(noise(0.003));
    expect(quality.map(({ code }) => code)).not.toContain('silent');
  });
});
