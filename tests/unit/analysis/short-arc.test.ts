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

// A window of features is 1.024 s long, a block of the network 0.128 s. Rejects leaving unjudged what no window fits
// into, and judging what is shorter than --min-stretch (0.4 s).
test('by ear what is shorter than a window is judged, down to --min-stretch', async () => {
  expect((await burst(2)).mode).toBe('short-circuit');
  expect((await burst(0.8)).mode).toBe('short-circuit');
  expect((await burst(0.3)).mode).toBeNull();
});
