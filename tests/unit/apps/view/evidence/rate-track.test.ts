import { describe, expect, it } from 'vitest';
import type { PipelineEvent } from '../../../../../src/analysis/index.js';
import { RateTrack } from '../../../../../src/apps/view/evidence/index.js';
import { VOLTAGE_FEATURES } from '../../../../../src/features/index.js';

/** A window of one second with so many short circuits a second; NaN for none counted. */
function windowAt(startS: number, hz: number): PipelineEvent {
  const { features } = VOLTAGE_FEATURES;
  const values = new Float64Array(features.length).fill(Number.NaN);
  values[features.findIndex(({ id }) => id === 'shortRateHz')] = hz;
  return {
    type: 'window',
    arcOn: true,
    window: { startS, endS: startS + 1, values },
    judgement: { probabilities: Float64Array.of(1, 0, 0, 0) },
  } as unknown as PipelineEvent;
}

describe('RateTrack', () => {
  it('puts the rate of a window at its middle', () => {
    // Rejects a rate at the start of the window, half a second early.
    const track = new RateTrack(VOLTAGE_FEATURES);
    track.event(windowAt(2, 40));
    expect(track.meanHz(2.5, 2.75)).toBe(40);
    expect(track.meanHz(2, 2.25)).toBeNull();
  });

  it('averages the windows that show a rate, and those alone', () => {
    // Rejects a window without a count taken for a rate of 0. By hand: (20 + 60) / 2.
    const track = new RateTrack(VOLTAGE_FEATURES);
    for (const [startS, hz] of [
      [0, 20],
      [0.25, 60],
      [0.5, Number.NaN],
    ] as const)
      track.event(windowAt(startS, hz));
    expect(track.meanHz(0, 2)).toBe(40);
  });
});
