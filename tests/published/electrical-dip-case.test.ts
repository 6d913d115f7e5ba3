import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { runLane } from '../unit/features/electrical/traces.js';

/**
 * Published: R. D. Smith, "Waveform analysis for MIG/GMAW dip-transfer" (2011/2017): 1.2 mm steel wire,
 * Ar/20 % CO2, 10 kHz log; mean 180 A; about 180 cycles a second; shorts of about 1 ms at about 4.5 V;
 * current rises linearly in the short and falls linearly after it to about 120 A; "very regular".
 * The arc voltage and the peak current are chosen to meet the published means.
 */
function publishedDip(seconds: number, offsetV = 0) {
  const rateHz = 10_000;
  const random = createRandom(180);
  const voltage = new Float64Array(seconds * rateHz);
  const current = new Float64Array(seconds * rateHz);
  let start = 0;
  let period = 1 / 180;
  for (let n = 0; n < voltage.length; n++) {
    if (n / rateHz - start >= period) {
      start += period;
      period = (1 + random.normal(0, 0.03)) / 180;
    }
    const t = n / rateHz - start;
    const inShort = t < 0.001;
    const amps = inShort
      ? 120 + 180 * (t / 0.001)
      : Math.max(120, 300 - 180 * ((t - 0.001) / 0.0025));
    voltage[n] = offsetV + (inShort ? 4.5 : 21.5) + random.normal(0, 0.2);
    current[n] = amps + random.normal(0, 1);
  }
  return { rateHz, voltage, current };
}

describe('the published dip-transfer run', () => {
  it.each([-3, 0, 3])('comes out with its rate and duration under an offset of %f V', (offset) => {
    const { rateHz, voltage, current } = publishedDip(5, offset);
    for (const amps of [undefined, current]) {
      const { figures } = runLane(rateHz, voltage, amps).summary;
      expect(Math.abs(figures['shortCircuitRateHz']! / 180 - 1)).toBeLessThan(0.05);
      expect(Math.abs(figures['shortDurationS']! - 0.001)).toBeLessThan(0.0003);
      // Rejects: the fixed 2 ms rule, which calls every one of them incipient.
      expect(figures['incipientRateHz']).toBeLessThan(2);
      expect(figures['shortIntervalCv']).toBeLessThan(0.1);
    }
  });

  it('shows the currents of the cycle', () => {
    const { rateHz, voltage, current } = publishedDip(5);
    const { figures } = runLane(rateHz, voltage, current).summary;
    // By construction of the fixture: the rise of 180 A in 1 ms, a break just below 300 A, 4.5 V at a mean of 210 A.
    expect(Math.abs(figures['currentRiseAPerS']! / 180_000 - 1)).toBeLessThan(0.05);
    expect(figures['currentAtBreakA']).toBeGreaterThan(270);
    expect(figures['currentAtBreakA']).toBeLessThan(300);
    expect(figures['shortResistanceOhm']).toBeCloseTo(4.5 / 207, 2);
    expect(figures['dropRateHz']).toBeNull();
    expect(figures['eventRateHz']).toBeCloseTo(figures['shortCircuitRateHz']!, 6);
  });
});
