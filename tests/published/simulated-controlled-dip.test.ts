import { describe, expect, it } from 'vitest';
import { measuredControlledDip, simulateArc } from '../../src/lab/simulate/index.js';

// The current log of a robot weld with ER70S-6 wire, H. He et al., Rensselaer Polytechnic Institute, 2023: levels of
// about 5, 43 and 95 A, 122 to 130 cycles a second, 43.8 A in the slow log of the source, 46.8 A in the clamp meter.
describe('the measured run of source-controlled dip transfer', () => {
  const run = simulateArc(measuredControlledDip());
  const rate = run.electricalRateHz;
  const amps = [...run.currentA.subarray(rate, 4 * rate)];
  const shorts = run.truth.shorts.filter((s) => s.startS >= 1 && s.startS < 4);
  const near = (level: number) => amps.filter((a) => Math.abs(a - level) < 6).length / amps.length;

  it('cycles 122 to 130 times a second', () => {
    expect(shorts.length / 3).toBeGreaterThan(122);
    expect(shorts.length / 3).toBeLessThan(130);
  });

  it('stands at three levels, some fifth to a third of the time at each', () => {
    // Clamp meter: 21 % below 10 A, 19 % at 40–50 A, 21 % at 85 A and more; the rest is its slow rise and fall.
    for (const level of [5, 43, 95]) {
      expect(near(level)).toBeGreaterThan(0.2);
      expect(near(level)).toBeLessThan(0.42);
    }
    expect(near(24) + near(68)).toBeLessThan(0.1);
  });

  it('draws 43.8 to 46.8 A in the mean, within 5 %', () => {
    const mean = amps.reduce((sum, a) => sum + a, 0) / amps.length;
    expect(mean).toBeGreaterThan(0.95 * 43.8);
    expect(mean).toBeLessThan(1.05 * 46.8);
  });

  it('is dip transfer, whatever its current looks like', () => {
    expect(run.truth.mode).toBe('short-circuit');
    expect(run.truth.sourceProgramme).toBe('controlled-dip');
  });
});
