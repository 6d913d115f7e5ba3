import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { damage, spoil } from './fuzz/damage.js';
import { SEEDS } from './fuzz/seeds.js';
import { survives } from './fuzz/survives.js';
import { clicksAndSweep, type MediaFolder, mediaFolder } from './media.js';

/*
 * The short fuzz: always the same cases, few a file. `npm run fuzz` runs the long one. Rejects a reader that
 * crashes with somebody else's error, hangs, lets NaN through, or makes more of a file than it can hold.
 */

const RUNS = 20;
const SEED = 20_260_101;

describe('spoiled files end in a result or a typed error', () => {
  let media: MediaFolder;
  beforeAll(() => {
    media = mediaFolder(clicksAndSweep(0.4));
  });
  afterAll(() => media.remove());

  for (const seed of SEEDS) {
    it.skipIf(!seed.available)(seed.name, async () => {
      const good = await seed.bytes(media);
      // What is refused as it is would test nothing.
      expect(await survives(good, seed.options)).toBe('samples');
      const property = fc.asyncProperty(damage, async (how) => {
        await survives(spoil(good, how), seed.options);
      });
      await fc.assert(property, { numRuns: RUNS, seed: SEED });
    });
  }

  it('any bytes at all', async () => {
    const property = fc.asyncProperty(fc.uint8Array({ maxLength: 4000 }), async (bytes) => {
      await survives(bytes);
    });
    await fc.assert(property, { numRuns: 4 * RUNS, seed: SEED });
  });

  it('text of the characters of tables', async () => {
    const token = fc.constantFrom(
      ...['1', '-2.5', '3e4', ',', ';', '\t', ' ', '\n', '\r\n', '"', 'U', 't', 'V', 'NaN'],
      ...['0:1:2', '.', '1,5', '#', '[ms]', '1e999', '9'.repeat(30)],
    );
    const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
    const property = fc.asyncProperty(fc.array(token, { maxLength: 120 }), async (tokens) => {
      await survives(bytes(tokens.join('')), { sampleRateHz: 10_000 });
      await survives(bytes(`t,U\n${tokens.join('')}`));
    });
    await fc.assert(property, { numRuns: 20 * RUNS, seed: SEED });
  });
});
