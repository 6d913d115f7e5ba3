import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { runLane, trace } from '../unit/features/electrical/traces.js';

const RATE = 10_000;

/** A saw of the arc voltage: a step up at each drop, then a slow fall, with noise. */
function saw(rateHz: number, stepV: number, noiseV: number, jitter: number, seconds = 6) {
  const random = createRandom(21);
  let next = 0.01;
  let since = 0;
  let period = 1 / rateHz;
  return trace(seconds, RATE, (t) => {
    if (t >= next) {
      since = t;
      period = Math.max(0.2, 1 + random.normal(0, jitter)) / rateHz;
      next = t + period;
    }
    return 26 + stepV * (1 - (t - since) / period) + random.normal(0, noiseV);
  });
}

describe('drops in free flight', () => {
  it('counts single drops of a globular arc', () => {
    // 20 drops a second by construction, steps of 1 V. The step filter spans 3.2 ms, over which the saw
    // falls by 3 % of its height, so the step comes out a little low.
    const { summary } = runLane(RATE, saw(20, 1, 0.15, 0.2));
    expect(summary.figures['dropRateHz']).toBeGreaterThan(19);
    expect(summary.figures['dropRateHz']).toBeLessThan(21);
    expect(summary.figures['dropStepV']).toBeGreaterThan(0.85);
    expect(summary.figures['dropStepV']).toBeLessThan(1.15);
    expect(summary.figures['dropIntervalCv']).toBeGreaterThan(0.1);
    expect(summary.figures['dropIntervalCv']).toBeLessThan(0.3);
    expect(summary.figures['shortCircuitRateHz']).toBe(0);
  });

  it('reads a fast train from its line', () => {
    // 240 drops a second: too fast for single steps. Rejects: counting alone.
    const { summary, column } = runLane(RATE, saw(240, 0.5, 0.3, 0.08));
    expect(Math.abs(summary.figures['dropRateHz']! / 240 - 1)).toBeLessThan(0.03);
    expect(column('lineProminence').every((prominence) => prominence > 4)).toBe(true);
    expect(column('lineTonalShare').every((share) => share < 0.9)).toBe(true);
  });

  it('shows no drop rate in noise, under ripple or for a swinging pool', () => {
    const random = createRandom(5);
    const wander = () => random.normal(0, 0.3);
    let slow = 0;
    const arc = (t: number) => {
      slow = 0.995 * slow + random.normal(0, 0.05);
      return 26 + slow + wander() + 0 * t;
    };
    const noise = runLane(RATE, trace(6, RATE, arc));
    const ripple = runLane(
      RATE,
      trace(6, RATE, (t) => arc(t) + Math.sin(2 * Math.PI * 300 * t)),
    );
    const pool = runLane(
      RATE,
      trace(6, RATE, (t) => arc(t) + 0.5 * Math.sin(2 * Math.PI * 123 * t)),
    );
    for (const run of [noise, ripple, pool]) {
      expect(run.windows.length).toBeGreaterThan(10);
      expect(run.summary.figures['dropRateHz']).toBeNull();
    }
    expect(ripple.summary.figures['rippleHz']).toBe(300);
    expect(noise.summary.figures['rippleHz']).toBeNull();
  });
});

describe('pulses of a source', () => {
  const random = createRandom(6);
  const voltage = trace(5, RATE, (t) => ((t * 130) % 1 < 0.3 ? 33 : 21) + random.normal(0, 0.3));
  const current = trace(5, RATE, (t) => ((t * 130) % 1 < 0.3 ? 420 : 60) + random.normal(0, 2));

  it('gives rate, levels and duty from voltage alone', () => {
    // By construction: 130 a second, 30 % of the time at 33 V, else 21 V.
    const { summary, column } = runLane(RATE, voltage);
    expect(summary.sourceProgramme).toBe('pulsed');
    expect(summary.figures['pulseRateHz']).toBeCloseTo(130, 0);
    expect(summary.figures['pulsePeakV']).toBeCloseTo(33, 0);
    expect(summary.figures['pulseBaseV']).toBeCloseTo(21, 0);
    expect(summary.figures['pulseDutyShare']).toBeCloseTo(0.3, 1);
    expect(summary.figures['dropRateHz']).toBeNull();
    expect(summary.figures['eventRateHz']).toBeCloseTo(130, 0);
    expect(Math.max(...column('pulseClockCv'))).toBeLessThan(0.03);
    expect(Math.max(...column('shortRateHz'))).toBe(0);
  });

  it('gives peak and base of the current too', () => {
    const { summary } = runLane(RATE, voltage, current);
    expect(summary.sourceProgramme).toBe('pulsed');
    expect(summary.figures['pulsePeakA']).toBeCloseTo(420, 0);
    expect(summary.figures['pulseBaseA']).toBeCloseTo(60, 0);
    // Mean of the product: 0.3·33·420 + 0.7·21·60 = 5040 W. Rejects: product of the means (24.6·168 = 4133 W).
    expect(Math.abs(summary.figures['powerW']! / 5040 - 1)).toBeLessThan(0.01);
  });
});
