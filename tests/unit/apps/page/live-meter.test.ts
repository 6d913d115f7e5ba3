import { expect, test } from 'vitest';
import { extractorFor, type PipelineEvent } from '../../../../src/analysis/index.js';
import { LiveMeter } from '../../../../src/apps/page/worker/live-meter.js';
import { MODES } from '../../../../src/core/index.js';

const RATE_HZ = 44_100;
const format = {
  kind: 'sound' as const,
  sampleRateHz: RATE_HZ,
  channels: [{ name: '1', quantity: 'sound' as const, unit: 'full-scale' as const }],
};
const start: PipelineEvent = { type: 'arc-start', timeS: 1, open: false };
const stop: PipelineEvent = { type: 'arc-stop', timeS: 3, open: false };
const surely = (name: (typeof MODES)[number]) =>
  Float64Array.from(MODES, (mode) => (mode === name ? 0.97 : 0.01));

/** A half second that ends at `endS`, taken for spray. */
function half(endS: number, arcScore = 4): PipelineEvent {
  const probabilities = surely('spray');
  return { type: 'short-window', startS: endS - 0.512, endS, arcScore, probabilities };
}

const meter = () => new LiveMeter(RATE_HZ, extractorFor(format, true));

// Rejects a meter that waits for whole windows, which only come a second after the start.
test('names a mode from half seconds alone, and says when it has settled', () => {
  const one = meter();
  one.event(start);
  one.event(half(1.6));
  expect(one.read()).toMatchObject({ arc: true, mode: 'spray', settled: false });
  for (let k = 1; k < 12; k++) one.event(half(1.6 + 0.128 * k));
  expect(one.read()).toMatchObject({ arc: true, mode: 'spray', settled: true });
});

// Rejects a meter that keeps the name of the arc before, and one that names what is no arc.
test('forgets the mode with the arc and names none from what sounds like no arc', () => {
  const one = meter();
  one.event(start);
  for (let k = 0; k < 12; k++) one.event(half(1.6 + 0.128 * k));
  one.event(stop);
  expect(one.read()).toMatchObject({ arc: false, mode: null, settled: false });
  one.event(half(3.2));
  one.event(start);
  one.event(half(4, -3));
  expect(one.read()).toMatchObject({ arc: true, mode: null, settled: false });
});
