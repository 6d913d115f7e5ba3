import { describe, expect, it } from 'vitest';
import { createElectricalExtractor } from '../../src/features/index.js';

const RATE_HZ = 10_000;

/** An invented dip trace: 22 V with shorts of 2 ms at 4 V, at the rate given for each second. */
function trace(ratesHz: readonly number[]): Float64Array {
  const volts = new Float64Array(ratesHz.length * RATE_HZ).fill(22);
  for (const [second, rate] of ratesHz.entries()) {
    for (let k = 0; k < rate; k++) {
      const start = Math.round((second + k / rate) * RATE_HZ);
      volts.fill(4, start, start + 20);
    }
  }
  return volts;
}

function driftOf(ratesHz: readonly number[]): number | null | undefined {
  const extractor = createElectricalExtractor({
    sampleRateHz: RATE_HZ,
    hasVoltage: true,
    hasCurrent: false,
  });
  extractor.push([trace(ratesHz)]);
  extractor.flush();
  return extractor.summary().figures['shortRateDriftCv'];
}

describe('shortRateDriftCv', () => {
  it('is near 0 for a steady rate', () => {
    expect(driftOf([80, 80, 80, 80, 80, 80, 80, 80])).toBeLessThan(0.03);
  });

  // By hand: 40 and 120 by turns have mean 80 and population spread 40: 0.5. Seconds of the figure are
  // not those of the trace (ignition is left out), which smooths it somewhat. Rejects: the spread of
  // single intervals, which says nothing of wandering.
  it('is large for a rate that wanders from second to second', () => {
    const drift = driftOf([40, 120, 40, 120, 40, 120, 40, 120, 40, 120]);
    expect(drift).toBeGreaterThan(0.15);
    expect(drift).toBeLessThan(0.55);
  });

  it('is absent for a run of less than three whole seconds', () => {
    expect(driftOf([80, 80]) ?? null).toBeNull();
  });
});
