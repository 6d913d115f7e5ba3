import { describe, expect, it } from 'vitest';
import { readBack } from '../../../../src/apps/page/capture/microphone.js';
import { toSixteenBit } from '../../../../src/apps/page/worker/sixteen-bit.js';
import { wavBlob } from '../../../../src/apps/report/client/index.js';
import { blobSource, openRecording } from '../../../../src/recording/index.js';

describe('what the browser applied to the sound', () => {
  it('is said for each step: off, still on, or not told', () => {
    const { keptOn, note } = readBack({ autoGainControl: true, noiseSuppression: false });
    expect(keptOn).toEqual(['gain control']);
    expect(note.code).toBe('microphone-processed');
    expect(note.message).toBe(
      'Raw sound was asked for; the browser reports off: noise suppression; STILL ON: gain control; not told: echo cancellation.',
    );
  });

  it('is as asked when all is off', () => {
    const off = { autoGainControl: false, noiseSuppression: false, echoCancellation: false };
    expect(readBack(off)).toMatchObject({ keptOn: [], note: { code: 'microphone-as-asked' } });
  });
});

describe('samples as they are kept', () => {
  // Plain maths: full scale 1 is 32,768 steps; the topmost value is one step short.
  it('are whole numbers that saturate at the rails', () => {
    expect([...toSixteenBit([0, 1, -1, 2, -2, 0.5, Number.NaN, 1 / 32768])]).toEqual([
      0, 32767, -32768, 32767, -32768, 16384, 0, 1,
    ]);
  });

  it('come back from the file bit for bit', async () => {
    const first = Int16Array.of(0, 1, -1, 32767);
    const second = Int16Array.of(-32768, 5);
    const recording = await openRecording(blobSource(wavBlob([first, second], 48_000), 'kept'));
    expect(recording.sampleRateHz).toBe(48_000);
    expect(recording.channels).toHaveLength(1);
    const heard: number[] = [];
    for await (const block of recording.blocks()) heard.push(...block.channels[0]!);
    expect(heard.map((one) => one * 32768)).toEqual([0, 1, -1, 32767, -32768, 5]);
  });
});
