import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { createElectricalExtractor } from '../../src/features/electrical/index.js';
import { dips, runLane, trace } from '../unit/features/electrical/traces.js';

const RATE = 8000;
const SEED = 20_260;

/** Silence, a dip arc of 1.6 s, silence, a pulsed arc of 1 s: something of everything. */
function programme() {
  const random = createRandom(12);
  const dip = dips({ seconds: 1.6, rateHz: RATE, periodS: 0.011, shortS: 0.002, noiseV: 0.4 });
  const pulsed = trace(1, RATE, (t) => ((t * 90) % 1 < 0.4 ? 33 : 21) + random.normal(0, 0.4));
  const gap = new Float64Array(0.4 * RATE);
  const voltage = Float64Array.from([...gap, ...dip, ...gap, ...pulsed, ...gap]);
  const current = voltage.map((v) => (v === 0 ? 0 : 250 - 5 * v + random.normal(0, 3)));
  voltage[2000] = Number.NaN;
  return { voltage, current };
}

describe('laws of the electrical lane', () => {
  it('gives the same events for any split into pushes', () => {
    const { voltage, current } = programme();
    const whole = runLane(RATE, voltage, current);
    expect(whole.windows.length).toBeGreaterThan(5);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3000 }), { maxLength: 12 }), (sizes) => {
        const extractor = createElectricalExtractor({
          sampleRateHz: RATE,
          hasVoltage: true,
          hasCurrent: true,
        });
        const events = [];
        let at = 0;
        for (const size of [...sizes, voltage.length]) {
          const end = Math.min(voltage.length, at + size);
          events.push(...extractor.push([voltage.subarray(at, end), current.subarray(at, end)]));
          at = end;
        }
        events.push(...extractor.flush());
        expect(events).toEqual(whole.events);
        expect(extractor.summary()).toEqual(whole.summary);
      }),
      { seed: SEED, numRuns: 12 },
    );
  });

  it('leaves features nearly unchanged under a constant offset', () => {
    // Rejects: mean voltage, or thresholds in fixed volts, among the features.
    const { voltage } = programme();
    voltage[2000] = 0;
    const random = createRandom(7);
    let wander = 0;
    const spray = trace(2, RATE, () => {
      wander = 0.99 * wander + random.normal(0, 0.05);
      return 27 + wander + random.normal(0, 0.2);
    });
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (offset) => {
        for (const arc of [
          voltage.subarray(3300, 15_900),
          voltage.subarray(19_300, 27_100),
          spray,
        ]) {
          const plain = runLane(RATE, arc);
          const moved = runLane(
            RATE,
            arc.map((v) => v + offset),
          );
          expect(moved.windows.length).toBe(plain.windows.length);
          expect(moved.windows.length).toBeGreaterThan(0);
          expect(moved.summary.sourceProgramme).toBe(plain.summary.sourceProgramme);
          for (const { id } of plain.extractor.featureSet.features) {
            const [a, b] = [plain.column(id), moved.column(id)];
            for (let w = 0; w < a.length; w++) {
              if (Number.isNaN(a[w]!)) expect(b[w], id).toBeNaN();
              else expect(Math.abs(b[w]! - a[w]!), id).toBeLessThan(0.02 + 0.06 * Math.abs(a[w]!));
            }
          }
        }
      }),
      { seed: SEED, numRuns: 8 },
    );
  });

  it('does not mind when in the file the arc starts', () => {
    const { voltage } = programme();
    const arc = voltage.subarray(3200, 16_000);
    const features = (lead: number) =>
      runLane(
        RATE,
        Float64Array.from([...new Float64Array(lead), ...arc, ...new Float64Array(3200)]),
      );
    const first = features(4000);
    fc.assert(
      fc.property(fc.integer({ min: 3000, max: 9000 }), (lead) => {
        const other = features(lead);
        const [a, b] = [first, other].map((run) => run.events.find((e) => e.type === 'arc-start'));
        expect((b as { timeS: number }).timeS - (a as { timeS: number }).timeS).toBeCloseTo(
          (lead - 4000) / RATE,
          9,
        );
        expect(other.windows.map((w) => w.values)).toEqual(first.windows.map((w) => w.values));
      }),
      { seed: SEED, numRuns: 8 },
    );
  });
});
