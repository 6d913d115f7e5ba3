import { describe, expect, it } from 'vitest';
import { type WavBitDepth, writeWav } from '../../../src/recording/index.js';
import { largestError, readAll } from '../../recordings/read-all.js';
import { pcmFile, tone } from '../../recordings/wav-bytes.js';

describe('writeWav', () => {
  it('writes the same bytes as a file built by hand', async () => {
    expect(await writeWav([tone()], 48_000)).toEqual(pcmFile());
  });

  // Half a quantisation step. Companded: half of 1024 in 32,768, the step of the topmost segment of
  // both laws of ITU-T G.711, which starts just below 0.5 (hand calculation).
  it.each<[WavBitDepth, number]>([
    ['8', 0.5 / 128],
    ['24', 0.5 / 8_388_608],
    ['32', 0.5 / 2_147_483_648],
    ['32f', 2 ** -25],
    ['64', 0],
    ['8a', 0.5 / 32],
    ['8m', 0.5 / 32],
  ])('comes back within its own coarseness at %s', async (depth, within) => {
    const bytes = await writeWav([tone()], 48_000, depth);
    const { channels } = await readAll(bytes);
    expect(largestError(channels[0]!, tone())).toBeLessThanOrEqual(within + 1e-12);
  });

  it('keeps channels apart', async () => {
    const second = tone(4800, 48_000, 3000);
    const bytes = await writeWav([tone(), second], 48_000, '64');
    const { channels } = await readAll(bytes, { channelMap: { sound: 2 } });
    expect(channels[0]).toEqual(second);
  });

  it.each([
    ['nothing', []],
    ['empty channels', [new Float64Array(0)]],
    ['unequal channels', [tone(10), tone(11)]],
    ['NaN', [Float64Array.of(0, Number.NaN)]],
    ['more than full scale', [Float64Array.of(0, 1.01)]],
  ])('refuses %s instead of clipping', async (_, channels) => {
    await expect(writeWav(channels, 48_000)).rejects.toMatchObject({ code: 'bad-wav-samples' });
  });
});
