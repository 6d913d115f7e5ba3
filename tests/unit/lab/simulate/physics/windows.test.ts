import { beforeAll, describe, expect, it } from 'vitest';
import { createRandom, MODES, type Mode } from '../../../../../src/core/index.js';
import {
  type ArcRun,
  type DrawOptions,
  drawScenario,
  ELECTRICAL_FAMILIES,
  simulateArc,
  speaksFor,
  WORKING_WINDOWS,
} from '../../../../../src/lab/simulate/index.js';
import { drawGas, drawWire } from '../../../../../src/lab/simulate/physics/draw-consumables.js';
import { quantile, type RunFigures, runFigures } from '../../../../support/run-figures.js';

/** Long enough for a mean and for drops of every mode; the arc burns from end to end. */
const ARC_S = 0.5;
/** Drawn of whatever wire and gas, and of those that single sources speak about. 400 in all. */
const ANY = 288;
const NAMED = 16;

type Drawn = { run: ArcRun; figures: RunFigures; aim: Mode };

function draw(label: string, aim: Mode, k: number, options: Partial<DrawOptions> = {}): Drawn {
  const family = ELECTRICAL_FAMILIES[k % ELECTRICAL_FAMILIES.length]!;
  const random = createRandom(`${label} ${k}`);
  const scenario = drawScenario(random, { mode: aim, family, arcS: ARC_S, ...options });
  const run = simulateArc({ ...scenario, openStart: true, openEnd: true });
  return { run, figures: runFigures(run), aim };
}

const any: Drawn[] = [];
beforeAll(() => {
  for (let k = 0; k < ANY; k++) {
    any.push(draw('any', MODES[k % MODES.length]!, Math.floor(k / MODES.length)));
  }
}, 300_000);

const right = (): Drawn[] => any.filter(({ run }) => run.scenario.setWrong == null);
const of = (drawn: readonly Drawn[], mode: Mode): Drawn[] =>
  drawn.filter(({ run }) => run.truth.mode === mode);

/** Leeway of two volts, or of 15 % for all that is not volts. */
function expectInside(
  drawn: readonly Drawn[],
  quantity: keyof RunFigures,
  low: number,
  high: number,
  shares: readonly number[] = [0.1, 0.5, 0.9],
): void {
  const values = drawn.map(({ figures }) => figures[quantity]);
  const volts = quantity === 'meanV';
  for (const share of shares) {
    const found = quantile(values, share);
    expect(found, `${quantity}, ${share}`).toBeGreaterThanOrEqual(volts ? low - 2 : 0.85 * low);
    expect(found, `${quantity}, ${share}`).toBeLessThanOrEqual(volts ? high + 2 : 1.15 * high);
  }
}

/** The middle four fifths must not huddle in one place of the window. Own choice: a quarter of its width. */
function expectSpread(drawn: readonly Drawn[], quantity: keyof RunFigures, width: number): void {
  const values = drawn.map(({ figures }) => figures[quantity]);
  expect(quantile(values, 0.9) - quantile(values, 0.1)).toBeGreaterThan(0.25 * width);
}

describe('arcs drawn of any wire and gas', () => {
  it('stand in a published window of their mode in four draws of five, and one in five is set wrong', () => {
    const inside = ({ run: { truth, scenario }, figures: { meanV, meanA } }: Drawn): boolean =>
      WORKING_WINDOWS.some(
        (row) =>
          speaksFor(row, truth.mode as Mode, scenario.wire, scenario.gas) &&
          meanV >= row.voltageV[0] - 2 &&
          meanV <= row.voltageV[1] + 2 &&
          meanA >= 0.85 * row.currentA[0] &&
          meanA <= 1.15 * row.currentA[1],
      );
    // Of 230 or so set right, all but a few whose hand wandered far in half a second.
    expect(right().filter(inside).length / right().length).toBeGreaterThan(0.96);
    expect(any.filter(inside).length / any.length).toBeGreaterThan(0.8);
  });

  it('are the mode aimed at in 19 draws of 20, where nothing was set wrong', () => {
    const drawn = right();
    expect(drawn.filter(({ run, aim }) => run.truth.mode === aim).length).toBeGreaterThan(
      0.95 * drawn.length,
    );
  });

  // Each row: mode, metals, wire in mm, CO2 in %, quantity, published range, its source.
  const steel = ['carbon-steel'];
  const iron = ['carbon-steel', 'stainless-steel'];
  const rows = [
    // Welding: Principles and Practices, ch. 21 (read there): 0.030 to 0.045 in, 50–225 A, 12–22 V.
    ['short-circuit', steel, [0.76, 1.2], [0, 25], 'meanV', [12, 22]],
    ['short-circuit', steel, [0.76, 1.2], [0, 100], 'meanA', [50, 225]],
    // MIG Welding Handbook ch. 1 p. 4: 20–200/s; the textbook above: "over 200"; auto-body lesson: to 230.
    ['short-circuit', iron, [0.5, 1.7], [0, 100], 'shortRateHz', [20, 230]],
    // MIG Welding Handbook ch. 1 p. 6: larger than the wire; a reference note (secondary): up to three times.
    ['globular', iron, [0.5, 1.7], [0, 100], 'dropRatio', [1.15, 3]],
    // The MIG Welding Handbook's line of Table 1-2 (33 + 156·d for steel) is the upper end, four fifths of it the
    // lower (own choice); the welder's handbook's chart has 22 to 26 V.
    ['globular', iron, [0.5, 1.7], [0, 15], 'meanV', [22, 26]],
    // A manufacturer's data sheet, Table 6-2, and Modern Welding (2020), Fig. 8-17: 24–28 to 24–30 V.
    ['spray', iron, [0.76, 1.2], [0, 15], 'meanV', [24, 30]],
    // API RP 577 (secondary): "short circuits do not occur".
    ['spray', iron, [0.5, 1.7], [0, 25], 'shortRateHz', [0, 1]],
    // A welding glossary: below the wire diameter. Not so of wires under 0.035 in: Soderstrom & Mendez 2008.
    ['spray', iron, [0.89, 1.7], [0, 25], 'dropRatio', [0.4, 1]],
    ['spray', iron, [0.5, 0.85], [0, 25], 'dropRatio', [1, 1.5]],
    // API RP 577 §4.4.5 (secondary): 30–400 pulses a second. One drop each: reviews of pulsed transfer.
    ['pulsed-spray', iron, [0.5, 1.7], [0, 25], 'pulseRateHz', [30, 400]],
    ['pulsed-spray', iron, [0.5, 1.7], [0, 25], 'dropsPerPulse', [0.9, 1.2]],
  ] as const;

  const title = ([mode, metals, mm, co2, quantity, range]: (typeof rows)[number]): string =>
    `${mode} of ${metals.join(' and ')}, ${mm.join('–')} mm, ${co2.join('–')} % CO2: ${quantity} ${range.join('–')}`;

  it.each(rows.map((row) => [title(row), row] as const))('%s', (_, row) => {
    const [mode, metals, mm, co2, quantity, range] = row;
    const drawn = of(right(), mode).filter(({ run: { scenario } }) => {
      const { material, diameterMm } = scenario.wire;
      const { co2Percent } = scenario.gas;
      return (
        (metals as readonly string[]).includes(material) &&
        diameterMm >= mm[0] &&
        diameterMm <= mm[1] &&
        co2Percent >= co2[0] &&
        co2Percent <= co2[1]
      );
    });
    expect(drawn.length).toBeGreaterThan(5);
    expectInside(drawn, quantity, range[0], range[1]);
    const middle = quantile(
      drawn.map(({ figures }) => figures[quantity]),
      0.5,
    );
    expect(middle).toBeGreaterThanOrEqual(range[0]);
    expect(middle).toBeLessThanOrEqual(range[1]);
    if (quantity === 'meanV') expectSpread(drawn, quantity, range[1] - range[0]);
  });

  it('have globular currents of argon-rich steel from 0.8 of the handbook’s least spray current', () => {
    // MIG Welding Handbook, Table 1-2: 33 + 156·d A through its rows for steel, 24 + 164·d for stainless steel.
    const shares = of(right(), 'globular')
      .filter(({ run: { scenario } }) => {
        return scenario.wire.material !== 'aluminium' && scenario.gas.co2Percent < 15;
      })
      .map(({ run: { scenario }, figures }) => {
        const d = scenario.wire.diameterMm;
        const least = scenario.wire.material === 'carbon-steel' ? 33 + 156 * d : 24 + 164 * d;
        return figures.meanA / least;
      });
    expect(shares.length).toBeGreaterThan(5);
    expect(quantile(shares, 0.1)).toBeGreaterThan(0.85 * 0.8);
    expect(quantile(shares, 0.9)).toBeLessThan(1.15 * 1.2);
  });

  it('have pulses that rise and fall in 0.2 to 0.6 ms in most sources', () => {
    // Common practice, no source. From a tenth to nine tenths of the way, made out to the whole.
    const rises = any
      .filter(({ run }) => run.scenario.source.kind === 'pulsed')
      .map(({ run }) => riseS(run));
    const usual = rises.filter((s) => s > 0.15e-3 && s < 0.8e-3).length;
    expect(rises.length).toBeGreaterThan(40);
    expect(usual / rises.length).toBeGreaterThan(0.6);
  });

  it('are set wrong in one draw of five, in every way, and say so', () => {
    const wrong = any.filter(({ run }) => run.scenario.setWrong != null);
    expect(wrong.length / any.length).toBeGreaterThan(0.14);
    expect(wrong.length / any.length).toBeLessThan(0.26);
    expect(new Set(wrong.map(({ run }) => run.truth.setWrong))).toEqual(
      new Set(['cold', 'long-arc', 'stubbing', 'wrong-gas']),
    );
    // Named by the metal, not by what was meant: a share of them does something else.
    const other = wrong.filter(({ run, aim }) => run.truth.mode !== aim);
    expect(other.length / wrong.length).toBeGreaterThan(0.3);
  });
});

/** Mean time from base to peak of the pulses of a run. */
function riseS(run: ArcRun): number {
  if (run.scenario.source.kind !== 'pulsed') return Number.NaN;
  const { baseA, peakA } = run.scenario.source;
  const low = baseA + 0.1 * (peakA - baseA);
  const high = baseA + 0.9 * (peakA - baseA);
  let sinceLow = Number.NaN;
  const rises: number[] = [];
  run.arcCurrentA.forEach((a, i) => {
    const before = run.arcCurrentA[i - 1] ?? a;
    if (before < low && a >= low) sinceLow = i;
    if (before < high && a >= high && !Number.isNaN(sinceLow)) {
      rises.push((i - sinceLow) / run.powerRateHz / 0.8);
      sinceLow = Number.NaN;
    }
  });
  return quantile(rises, 0.5);
}

describe('arcs drawn for the wire and gas that a source speaks about', () => {
  const steel = (diameterMm: number) => ({ material: 'carbon-steel', diameterMm }) as const;
  const gas = (group: string, co2Percent: number) => ({ group, co2Percent, o2Percent: 0 });
  const named = (
    mode: Mode,
    wire: NonNullable<DrawOptions['wire']>,
    [group, co2]: readonly [string, number],
    arcS = ARC_S,
  ) =>
    Array.from({ length: NAMED }, (_, k) => {
      const options = { wire, gas: gas(group, co2), wrongShare: 0, arcS };
      return draw(`${mode} ${wire.diameterMm} ${group}`, mode, k, options);
    });

  it('globular, 1.0 mm, argon with little CO2: 180–230 A, 22–26 V', () => {
    // A gas supplier's welder's handbook p. 7, chart as read here.
    const drawn = named('globular', steel(1.0), ['M20', 8]);
    expectInside(drawn, 'meanA', 180, 230);
    expectInside(drawn, 'meanV', 22, 26);
  });

  it('globular, 1.2 mm, pure CO2: repelled drops that touch 5 to 60 times a second, unevenly', () => {
    // Rates and unevenness: common practice, no source. 20–32 V: two notes (secondary) and, from memory, guides.
    const drawn = named('globular', steel(1.2), ['C1', 100], 1.5);
    expectInside(drawn, 'shortRateHz', 5, 60);
    expectInside(drawn, 'meanV', 20, 32);
    const cvs = drawn.map(({ figures }) => figures.shortIntervalCv);
    expect(quantile(cvs, 0.5)).toBeGreaterThan(0.5);
    const repelled = drawn.filter(({ run }) => run.truth.freeFlight === 'repelled');
    expect(repelled.length).toBe(drawn.length);
  });

  it('dip, 1.2 mm, M21: 100–225 A, 17–22 V', () => {
    // A manufacturer's data sheet, Table 6-1; the textbook's wider window for all wires starts at 50 A and 12 V.
    const drawn = named('short-circuit', steel(1.2), ['M21', 20]);
    expectInside(drawn, 'meanA', 100, 225, [0.5, 0.9]);
    expectInside(drawn, 'meanV', 17, 22, [0.5, 0.9]);
    expectInside(drawn, 'meanA', 50, 225);
    expectInside(drawn, 'meanV', 12, 22);
  });

  it('spray, 0.9 mm, 90Ar/10CO2: 175–290 A, 24–28 V', () => {
    // A manufacturer's data sheet, Table 6-2, for 0.035 in.
    const drawn = named('spray', steel(0.9), ['M20', 10]);
    expectInside(drawn, 'meanA', 175, 290);
    expectInside(drawn, 'meanV', 24, 28);
  });

  it('spray, 1.2 mm, 98Ar/2CO2: 200–315 A, 24–30 V; projected 100–300/s, streaming above 500/s', () => {
    // Table 6-2 for 0.045 in; rates from memory of Lancaster and of Rhee & Kannatey-Asibu 1992.
    const drawn = named('spray', steel(1.2), ['M12', 2]);
    expectInside(drawn, 'meanA', 200, 315);
    expectInside(drawn, 'meanV', 24, 30);
    const projected = drawn.filter(({ run }) => run.truth.freeFlight === 'projected');
    const streaming = drawn.filter(({ run }) => run.truth.freeFlight === 'streaming');
    expect(projected.length).toBeGreaterThan(4);
    expect(streaming.length).toBeGreaterThan(1);
    expectInside(projected, 'dropRateHz', 100, 300, [0.1, 0.5]);
    expectInside(streaming, 'dropRateHz', 500, 1500);
  });

  it('spray, 1.2 mm aluminium, argon: 130–200 A, 22–28 V', () => {
    // Modern Welding (2020), Fig. 8-18, for 3/64 in.
    const drawn = named('spray', { material: 'aluminium', diameterMm: 1.2 }, ['I1', 0]);
    expectInside(drawn, 'meanA', 130, 200);
    expectInside(drawn, 'meanV', 22, 28);
  });

  it('pulsed, 1.2 mm: one drop a pulse, about as thick as the wire', () => {
    // Reviews of pulsed transfer: one drop a pulse; its size is own choice, from the volume that the feed gives.
    const drawn = named('pulsed-spray', steel(1.2), ['M20', 10]);
    expectInside(drawn, 'dropsPerPulse', 0.9, 1.2);
    expectInside(drawn, 'dropRatio', 0.8, 1.1);
  });
});

describe('the table of windows', () => {
  it('holds published rows as they were read', () => {
    const row = (source: string, mm: number) =>
      WORKING_WINDOWS.find(
        (one) => one.source.includes(source) && one.diameterMm[0] <= mm && one.diameterMm[1] >= mm,
      );
    expect(row('Table 6-1', 0.9)).toMatchObject({ currentA: [80, 190], voltageV: [16, 22] });
    expect(row('Table 6-2', 1.2)).toMatchObject({ currentA: [200, 315], voltageV: [24, 30] });
    expect(row('p. 7, chart', 1.0)).toMatchObject({ currentA: [180, 230], voltageV: [22, 26] });
    expect(row('Fig. 8-17', 0.9)).toMatchObject({ currentA: [180, 255], voltageV: [24, 29] });
    expect(row('Fig. 8-18', 1.6)).toMatchObject({ currentA: [160, 300], voltageV: [24, 30] });
  });

  it('speaks for every wire and gas that is drawn for a mode, and gives no range upside down', () => {
    for (const row of WORKING_WINDOWS) {
      expect(row.source.length).toBeGreaterThan(10);
      for (const [low, high] of [row.diameterMm, row.co2Percent, row.currentA, row.voltageV]) {
        expect(low).toBeLessThanOrEqual(high);
      }
    }
    const random = createRandom('consumables');
    for (let k = 0; k < 2000; k++) {
      const mode = MODES[k % MODES.length]!;
      const wire = drawWire(random);
      const mix = drawGas(random, wire.material, mode);
      const found = WORKING_WINDOWS.some((row) => speaksFor(row, mode, wire, mix));
      expect(found, `${mode} ${wire.material} ${wire.diameterMm} ${mix.group}`).toBe(true);
    }
  });

  it('gives the same draw for the same seed', () => {
    const twice = [1, 2].map(() =>
      drawScenario(createRandom('same'), { mode: 'globular', family: 'necking' }),
    );
    expect(twice[0]).toEqual(twice[1]);
  });
});
