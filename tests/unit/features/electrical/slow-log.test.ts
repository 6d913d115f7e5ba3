import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/index.js';
import { createElectricalExtractor } from '../../../../src/features/index.js';

/** 1 s of nothing, 4 s of arc at 24 V ± 1.5 V and 190 A, 1 s of nothing; with the means of the arc's samples. */
function log(sampleRateHz: number) {
  const random = createRandom(5);
  const voltage = new Float64Array(6 * sampleRateHz);
  const current = new Float64Array(6 * sampleRateHz);
  let sum = 0;
  for (let i = sampleRateHz; i < 5 * sampleRateHz; i++) {
    voltage[i] = 24 + random.uniform(-1.5, 1.5);
    current[i] = 190;
    sum += voltage[i]!;
  }
  return { voltage, current, meanV: sum / (4 * sampleRateHz) };
}

describe.each([50, 100, 250])('a log of %i samples a second', (sampleRateHz) => {
  const { voltage, current, meanV } = log(sampleRateHz);
  const extractor = createElectricalExtractor({ sampleRateHz, hasVoltage: true, hasCurrent: true });
  const events = [...extractor.push([voltage, current]), ...extractor.flush()];
  const { figures, disturbances } = extractor.summary();

  // Rejects a detector that loses the arc between samples, and times counted in held samples.
  it('has its arc where it burns', () => {
    const times = events.flatMap((event) =>
      event.type === 'arc-start' || event.type === 'arc-stop' ? [event.timeS] : [],
    );
    expect(times).toHaveLength(2);
    expect(Math.abs(times[0]! - 1)).toBeLessThan(0.06);
    expect(Math.abs(times[1]! - 5)).toBeLessThan(0.06);
  });

  // Rejects means over the whole log (16 V) and figures of some other rate.
  it('has the means of the arc', () => {
    expect(figures.meanVoltageV).toBeCloseTo(meanV, 0);
    expect(figures.meanCurrentA).toBeCloseTo(190, 1);
  });

  // Rejects "0 short circuits a second" of a log that cannot show one.
  it('says nothing of what it cannot show', () => {
    expect(figures.shortCircuitRateHz ?? null).toBeNull();
    expect(figures.stepRateHz ?? null).toBeNull();
    expect(disturbances).toBeUndefined();
  });
});

it('refuses what is slower', () => {
  expect(() =>
    createElectricalExtractor({ sampleRateHz: 20, hasVoltage: true, hasCurrent: false }),
  ).toThrow(/20 Hz/);
});
