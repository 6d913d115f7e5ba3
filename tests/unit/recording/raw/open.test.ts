import { describe, expect, it } from 'vitest';
import { openRecording } from '../../../../src/recording/open.js';
import { parseRawFormat } from '../../../../src/recording/raw/index.js';
import { bufferSource } from '../../../../src/recording/sources/buffer.js';
import { drain, errorOf } from '../logs/read-log.js';

/* Expected values: hand calculation from the bytes (half the integer range is full scale). */

describe('bare samples', () => {
  // Rejects the wrong byte order (0x4000 would become 0x0040) and swapped channels.
  it('reads two channels of big-endian 16-bit integers behind a header as volts and amperes', async () => {
    const bytes = Uint8Array.of(9, 9, 9, 0x40, 0x00, 0xc0, 0x00, 0x20, 0x00, 0x10, 0x00);
    const recording = await openRecording(bufferSource(bytes, 'daq.bin'), {
      raw: parseRawFormat('s16be:2+3'),
      sampleRateHz: 20_000,
      channelMap: { voltage: 1, current: 2 },
      scale: { voltage: 100, current: 1000 },
    });
    expect(recording).toMatchObject({ kind: 'electrical', format: 'raw', sampleRateHz: 20_000 });
    const { channels, note } = await drain(recording);
    expect(channels).toEqual([
      [50, 25],
      [-500, 125],
    ]);
    expect(note('raw-stated')).toContain('3 bytes passed over');
  });

  it('takes the stated layout even where the content looks like another format', async () => {
    const text = new TextEncoder().encode('1,2\n3,4\n');
    const recording = await openRecording(bufferSource(text), {
      raw: parseRawFormat('u8'),
      sampleRateHz: 8000,
    });
    expect(recording.kind).toBe('sound');
    expect((await drain(recording)).channels[0]?.[0]).toBe((0x31 - 128) / 128);
  });

  it('needs a rate', async () => {
    const open = openRecording(bufferSource(new Uint8Array(8)), { raw: parseRawFormat('f32le') });
    expect((await errorOf(open)).code).toBe('no-sample-rate');
  });

  it.each(['', 's16', 'u8le', 'f16le', 's16le:0', 's16le:2x', 'mp3'])(
    'refuses the layout %j',
    (text) => {
      expect(() => parseRawFormat(text)).toThrow(/is not understood/);
    },
  );
});
