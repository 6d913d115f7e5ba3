import { describe, expect, it } from 'vitest';
import { parseSetup, processMaps } from '../../src/setup/index.js';
import { fromRange, likely, normalShare, plus } from '../../src/setup/process-map/spread.js';

const {
  ellipse,
  judgePoint,
  likelihoods,
  likelihoodsAt,
  lossBetween,
  mapPicture,
  mapPoint,
  OUTCOMES,
  processMap,
  sprayGas,
  voltsAtPlace,
  weighSeen,
} = processMaps;

const gas = (text: string) => parseSetup({ gas: text }).gas;
const steel = (text: string, diameterMm = 1.2) =>
  processMap({ material: 'carbon-steel', diameterMm, gas: gas(text) });
const NO_CIRCUIT = { sourceSlopeVPer100A: null, cableLengthM: null, stickOutMm: null };

// Values of the standard normal distribution, Abramowitz & Stegun, table 26.1.
describe('normal share', () => {
  it.each([
    [0, 0.5],
    [1, 0.84134],
    [-1, 0.15866],
    [1.96, 0.975],
    [-2.5, 0.00621],
  ])('at %f is %f', (z, share) => {
    expect(normalShare(z)).toBeCloseTo(share, 4);
  });

  it('adds spreads as independent', () => {
    expect(plus(likely(1, 3), likely(2, 4))).toEqual({ mean: 3, sd: 5 });
    expect(fromRange({ min: 2, max: 6 })).toEqual({ mean: 4, sd: 1 });
  });
});

describe('likelihoods on the map', () => {
  it('add up to one everywhere', () => {
    for (const text of ['Ar+8CO2', 'Ar+18CO2', 'CO2', '75/25', '98/2 O2']) {
      for (const volts of [8, 15, 20, 25, 30, 45]) {
        for (const amps of [40, 120, 240, 330, 500]) {
          const all = likelihoodsAt(steel(text), volts, amps);
          const sum = OUTCOMES.reduce((total, one) => total + all[one], 0);
          expect(sum).toBeCloseTo(1, 9);
          for (const one of OUTCOMES) expect(all[one]).toBeGreaterThanOrEqual(0);
        }
      }
    }
  });

  // Rejects walls: with rising volts at one current the cold outcomes only fall and the hot ones only rise.
  it('go from cold to hot with the volts', () => {
    const map = steel('Ar+8CO2');
    for (const amps of [100, 180, 300]) {
      let before = likelihoodsAt(map, 8, amps);
      for (let volts = 8.5; volts < 45; volts += 0.5) {
        const now = likelihoodsAt(map, volts, amps);
        expect(now.stubbing).toBeLessThanOrEqual(before.stubbing + 1e-9);
        expect(now['burn-back']).toBeGreaterThanOrEqual(before['burn-back'] - 1e-9);
        before = now;
      }
    }
  });

  it('of a point without spread are those at the point', () => {
    const map = steel('Ar+18CO2');
    const point = { voltageV: likely(21, 0), currentA: likely(190, 0), correlation: 0 };
    const [all, at] = [likelihoods(map, point), likelihoodsAt(map, 21, 190)];
    for (const one of OUTCOMES) expect(all[one]).toBeCloseTo(at[one], 9);
  });

  it('give no spray in a gas that carries none, at any volts', () => {
    for (const text of ['CO2', '75/25', 'Ar+40CO2']) {
      for (let volts = 15; volts < 45; volts += 3) {
        const all = likelihoodsAt(steel(text), volts, 320);
        expect(all.spray + all['spray-with-shorts']).toBe(0);
      }
    }
  });

  it('the figure where an outcome flips is one at which it does', () => {
    const map = steel('Ar+8CO2');
    const point = { voltageV: likely(23.5, 0.3), currentA: likely(300, 5), correlation: 0 };
    const { next, outcomes } = judgePoint(map, point);
    expect(next?.outcome).toBe('spray');
    const flips = outcomes.find((one) => one.outcome === 'spray')!.flipsAtV!;
    const moved = (volts: number) =>
      judgePoint(map, { ...point, voltageV: likely(volts, 0.3) }).likeliest.outcome;
    expect(moved(flips + 0.05)).toBe('spray');
    expect(moved(flips - 0.2)).not.toBe('spray');
  });
});

// AWS C5.6 Table 3 (secondary) for what is listed; a gas table for tri-mix as dip; nothing for the rest.
describe('spray by gas', () => {
  it.each([
    ['Ar+2O2', 'yes'],
    ['Ar+5O2', 'yes'],
    ['Ar+8CO2', 'yes'],
    ['Ar+15CO2', 'yes'],
    ['Ar+18CO2', 'disputed'],
    ['M21', 'disputed'],
    ['75/25', 'no'],
    ['CO2', 'no'],
    ['He+7.5Ar+2.5CO2', 'no'],
    ['He', 'no-source'],
    ['Ar+2N2', 'no-source'],
    ['Ar+12O2', 'no-source'],
  ])('%s on steel: %s', (text, word) => {
    expect(sprayGas(gas(text), 'carbon-steel').word).toBe(word);
  });

  it.each([
    ['Ar', 'yes'],
    ['Ar+50He', 'yes'],
    ['25Ar+75He', 'yes'],
    ['He', 'no-source'],
  ])('%s on aluminium: %s', (text, word) => {
    expect(sprayGas(gas(text), 'aluminium').word).toBe(word);
  });
});

describe('losses from dial to arc', () => {
  // Plain arithmetic: 3 V per 100 A at 250 A.
  it('a stated slope is taken as stated', () => {
    const circuit = { ...NO_CIRCUIT, sourceSlopeVPer100A: 3 };
    expect(lossBetween(circuit, 'set', 'source', 250).mean).toBeCloseTo(7.5, 9);
  });

  // A welding-cable table: 0.7–1 V at 100 A and 2–3 V at 500 A over 10–15 m.
  it('cables lose what the table says for 12.5 m, and twice that for twice the length', () => {
    const at = (metres: number, amps: number) =>
      lossBetween({ ...NO_CIRCUIT, cableLengthM: metres }, 'source', 'feeder', amps).mean;
    expect(at(12.5, 100)).toBeCloseTo(0.85, 9);
    expect(at(12.5, 500)).toBeCloseTo(2.5, 9);
    expect(at(25, 300)).toBeCloseTo(2 * at(12.5, 300), 9);
  });

  it('there and back again is the same place', () => {
    const there = voltsAtPlace(likely(28, 0), 'set', 'arc', NO_CIRCUIT, 280);
    const back = voltsAtPlace(there, 'arc', 'set', NO_CIRCUIT, 280);
    expect(back.mean).toBeCloseTo(28, 9);
    expect(there.mean).toBeLessThan(27);
  });

  it('volts measured at the feeder stay what was measured', () => {
    const point = mapPoint(
      parseSetup({
        wire: '1.2mm',
        gas: 'M21',
        setVoltage: 28,
        feederVolts: 22,
        wireFeed: '6m/min',
      }),
    )!;
    expect(point.voltageV.mean).toBe(22);
    expect(point.volts).toEqual({ from: 'feeder', given: 22, measured: true });
  });

  it('a trace of unknown place stays unknown and wider', () => {
    const setup = parseSetup({ wire: '1.2mm', gas: 'M21', measuredCurrent: 200 });
    const at = parseSetup({
      wire: '1.2mm',
      gas: 'M21',
      measuredCurrent: 200,
      traceVoltsAt: 'feeder',
    });
    const measured = { meanVoltageV: 22, meanCurrentA: null };
    const [open, known] = [mapPoint(setup, measured)!, mapPoint(at, measured)!];
    expect(open.volts.from).toBe('unknown');
    expect(open.voltageV.sd).toBeGreaterThan(2 * known.voltageV.sd);
  });
});

describe('what was seen weighs in', () => {
  it('spray with shorts pulls a dial’s volts down, clean spray does not', () => {
    const setup = parseSetup({ wire: '1.2mm', gas: '90/10', setVoltage: 28, wireFeed: '10m/min' });
    const point = mapPoint(setup)!;
    const map = steel('90/10');
    const cold = weighSeen(map, point, 'spray-with-shorts');
    const clean = weighSeen(map, point, 'spray');
    expect(cold.point.voltageV.mean).toBeLessThan(point.voltageV.mean - 0.5);
    expect(clean.point.voltageV.mean).toBeGreaterThan(point.voltageV.mean - 0.2);
    expect(clean.fit).toBeGreaterThan(cold.fit);
  });

  it('what cannot be from these settings fits badly', () => {
    const point = { voltageV: likely(17.5, 0.2), currentA: likely(150, 3), correlation: 0 };
    expect(weighSeen(steel('Ar+8CO2'), point, 'spray').fit).toBeLessThan(0.01);
  });
});

describe('the map as numbers to draw', () => {
  const wire = {
    material: 'carbon-steel',
    diameterMm: 1.2,
    stickOutMm: null,
    polarity: null,
  } as const;
  const point = { voltageV: likely(26, 1), currentA: likely(280, 20), correlation: -0.3 };
  const picture = mapPicture(steel('Ar+8CO2'), {
    wire,
    point,
    measured: null,
    wanted: 'spray',
    columns: 20,
    rows: 15,
  });

  it('has the cells of the likelihoods, volts falling and amperes rising', () => {
    expect(picture.voltsV[0]).toBeGreaterThan(picture.voltsV[1]!);
    expect(picture.currentA[0]).toBeLessThan(picture.currentA[1]!);
    const cell = picture.cells[0]![0]!;
    const all = likelihoodsAt(steel('Ar+8CO2'), picture.voltsV[0]!, picture.currentA[0]!);
    expect(cell.likelihood).toBe(all[cell.outcome]);
    expect(cell.outcome).toBe('burn-back');
  });

  // Plain geometry: the farthest edge in volts lies two standard deviations away.
  it('draws the ellipse of two standard deviations', () => {
    const { edge } = ellipse(point)!;
    const most = Math.max(...edge.map((one) => one.voltageV));
    expect(most).toBeGreaterThan(27.98);
    expect(most).toBeLessThan(28.001);
    expect(Math.max(...edge.map((one) => one.currentA))).toBeCloseTo(320, 6);
  });

  it('outlines the wanted region around published spray', () => {
    const near = picture.wanted.filter((one) => Math.abs(one.currentA - 285) < 15);
    const volts = near.map((one) => one.voltageV);
    // A reference note (secondary): 250–320 A at 26–29 V in 90/10.
    expect(Math.min(...volts)).toBeLessThan(26);
    expect(Math.max(...volts)).toBeGreaterThan(29);
  });
});
