import { expect, test } from 'vitest';
import { judge, shippedRecording } from '../../support/judge.js';

/** So much of a dip arc, switched on and off in a quiet room. */
async function burst(lastsS: number) {
  const { sampleRateHz, channels } = await shippedRecording('short-circuit.wav');
  const arc = channels[0]!.subarray(2 * sampleRateHz, (2 + lastsS) * sampleRateHz);
  const samples = new Float64Array(4 * sampleRateHz).map((_, i) => 1e-4 * Math.sin(i * i));
  samples.set(arc, sampleRateHz);
  return judge('sound', sampleRateHz, [samples]).verdict;
}

// A window is 1.024 s long. Rejects naming a mode from an arc interval that no window fits into, as a loud word is.
test('by ear no mode is named of what is shorter than a window', async () => {
  expect((await burst(2)).mode).toBe('short-circuit');
  expect((await burst(0.8)).mode).toBeNull();
});
