import { describe, expect, it } from 'vitest';
import { readProcedure } from '../../../src/procedure/index.js';
import { makeRecord } from '../../../src/record/index.js';
import { parseSetup } from '../../../src/setup/index.js';
import { analyseBytes } from '../../support/analyse-bytes.js';
import { PROCEDURE_DOCUMENT } from '../../support/procedure.js';
import { sampleResult } from '../../support/sample-result.js';

const RATE = 10_000;
const SECONDS = 4;

/** 5 ms of one pair of volts and amperes, 5 ms of the other, by turns, for 4 s. */
function trace(one: [number, number], other: [number, number]): Uint8Array {
  const rows = Array.from({ length: RATE * SECONDS }, (_, k) => {
    const [volts, amps] = Math.floor(k / 50) % 2 === 0 ? one : other;
    return `${(k / RATE).toFixed(4)},${volts},${amps}`;
  });
  return new TextEncoder().encode(`time_s,voltage_v,current_a\n${rows.join('\n')}\n`);
}

const recordOf = async (bytes: Uint8Array, stated: Record<string, string>) => {
  const setup = parseSetup(stated);
  const procedure = readProcedure(PROCEDURE_DOCUMENT);
  const result = await analyseBytes(bytes);
  return makeRecord({ result, stated: setup, setup, procedure });
};

describe('energy of a run', () => {
  // By hand: (20·300 + 30·100)/2 = 4500 W; means 25 V · 200 A = 5000 W; 4 s are 18 kJ, over 20 mm 0.9 kJ/mm;
  // 20 mm in 4 s are 300 mm/min, so by the means 25·200·60/300/1000 = 1.0 kJ/mm.
  it('of volts and amperes against each other lies below the product of the means', async () => {
    const { power, run } = await recordOf(trace([20, 300], [30, 100]), { beadLength: '20mm' });
    expect(run.arcTimeS).toBeCloseTo(4, 2);
    expect(power.meanPowerW).toBeCloseTo(4500, 6);
    expect(power.byMeansW).toBeCloseTo(5000, 6);
    expect(power.energyKj).toBeCloseTo(18, 1);
    expect(power.arcEnergyKjPerMm).toBeCloseTo(0.9, 2);
    expect(power.heatInputKjPerMm).toBeCloseTo(0.72, 2);
    expect(power.byMeansKjPerMm).toBeCloseTo(1, 2);
    expect(power.remarks[0]).toMatch(/10 % below/);
  });

  // By hand: (20·100 + 30·300)/2 = 5500 W beside 5000 W; at 600 mm/min 5500·60/600/1000 = 0.55 kJ/mm.
  it('of volts and amperes that rise together lies above it', async () => {
    const { power } = await recordOf(trace([20, 100], [30, 300]), { travelSpeed: '600mm/min' });
    expect(power.meanPowerW).toBeCloseTo(5500, 6);
    expect(power.arcEnergyKjPerMm).toBeCloseTo(0.55, 9);
    expect(power.byMeansKjPerMm).toBeCloseTo(0.5, 9);
    expect(power.remarks[0]).toMatch(/10 % above/);
  });

  // A public worked example, secondary text: 24 V, 160 A, 150 mm/min give 1.536 kJ/mm, with 0.8 1.229 kJ/mm.
  it('agrees with a worked example by meters', () => {
    const setup = parseSetup({
      arcVolts: '24',
      measuredCurrent: '160',
      travelSpeed: '150mm/min',
    });
    const result = sampleResult();
    const { power } = makeRecord({
      result,
      stated: setup,
      setup,
      procedure: readProcedure(PROCEDURE_DOCUMENT),
    });
    expect(power.arcEnergyKjPerMm).toBeCloseTo(1.536, 9);
    expect(power.heatInputKjPerMm).toBeCloseTo(1.2288, 9);
    expect(power.meanPowerW).toBeNull();
    expect(power.remarks[0]).toMatch(/30 % either way/);
  });

  it('is not given along the seam without travel speed or bead length', async () => {
    const { power } = await recordOf(trace([20, 300], [30, 100]), {});
    expect([power.arcEnergyKjPerMm, power.heatInputKjPerMm, power.byMeansKjPerMm]).toEqual([
      null,
      null,
      null,
    ]);
    expect(power.remarks.at(-1)).toMatch(/neither was stated/);
  });
});

describe('deposited metal', () => {
  // MIG Welding Handbook, ch. 7 p. 10: 2196 in of 0.045 in steel wire are a pound. 219.6 in/min for 8 s are 29.28 in,
  // hence 29.28/2196 lb = 6.048 g.
  it('agrees with the published length of wire in a pound', () => {
    const setup = parseSetup({
      wireFeed: '219.6in/min',
      wireDiameter: '0.045in',
      wireMaterial: 'carbon-steel',
    });
    const { deposit } = makeRecord({
      result: sampleResult(),
      stated: setup,
      setup,
      procedure: readProcedure(PROCEDURE_DOCUMENT),
    });
    expect(Math.abs(deposit.meltedKg! / 0.006048 - 1)).toBeLessThan(0.01);
    expect(deposit.depositedKg!.max).toBeLessThan(deposit.meltedKg!);
  });
});
