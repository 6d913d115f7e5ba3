import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MODES } from '../../src/core/index.js';
import { crossCheck } from '../../src/setup/check/index.js';
import {
  currentForFeed,
  feedForCurrent,
  gasSymbol,
  MM_PER_INCH,
  modeBoundaries,
  parseGas,
  parseSetup,
  permitsAt,
  symbolRanges,
  WIRE_MATERIALS,
} from '../../src/setup/index.js';
import { seenAs } from '../unit/setup/check/situation.js';

const options = { seed: 440, numRuns: 200 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('units', () => {
  it('inch and metric statements of one diameter, feed and stick-out are the same set-up', () => {
    fc.assert(
      fc.property(real(0.6, 2.4), real(1, 30), real(4, 50), (mm, feed, stick) => {
        const metric = parseSetup({
          wire: `${mm}mm`,
          wireFeed: `${feed}m/min`,
          stickOut: `${stick}mm`,
        });
        const inch = parseSetup({
          wire: `${mm / MM_PER_INCH}in`,
          wireFeed: `${(feed * 1000) / MM_PER_INCH}ipm`,
          stickOut: `${stick / MM_PER_INCH}"`,
        });
        expect(inch.wireDiameterMm).toBeCloseTo(metric.wireDiameterMm!, 9);
        expect(inch.wireFeedMPerMin).toBeCloseTo(metric.wireFeedMPerMin!, 9);
        expect(inch.stickOutMm).toBeCloseTo(metric.stickOutMm!, 9);
      }),
      options,
    );
  });
});

describe('melting', () => {
  // Rejects: an inverse that is only right near the check values, or one that loses small feeds.
  it('current → feed → current comes back, for every wire, polarity and stick-out', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...WIRE_MATERIALS),
        real(0.58, 1.65),
        real(0, 40),
        real(20, 500),
        fc.boolean(),
        (material, diameterMm, stickOutMm, amps, negative) => {
          const polarity =
            negative && material !== 'aluminium' ? ('dcen' as const) : ('dcep' as const);
          const wire = { material, diameterMm, stickOutMm, polarity };
          const back = currentForFeed(wire, feedForCurrent(wire, amps)!)!;
          expect(Math.abs(back / amps - 1)).toBeLessThan(1e-9);
        },
      ),
      options,
    );
  });

  it('more wire between tip and arc never draws more current', () => {
    fc.assert(
      fc.property(real(0.8, 1.6), real(5, 30), real(2, 14), (diameterMm, stickOutMm, feed) => {
        const wire = { material: 'carbon-steel', diameterMm } as const;
        const short = currentForFeed({ ...wire, stickOutMm }, feed)!;
        expect(currentForFeed({ ...wire, stickOutMm: stickOutMm + 5 }, feed)!).toBeLessThan(short);
      }),
      options,
    );
  });
});

describe('gases', () => {
  it('a mix lies within the ranges that its own symbol leaves open', () => {
    fc.assert(
      fc.property(real(0, 60), real(0, 20), (co2, o2) => {
        const gas = { ar: 100 - co2 - o2, he: 0, co2, o2, h2: 0, n2: 0 };
        const ranges = symbolRanges(gasSymbol(gas));
        if (ranges === null) return;
        expect(co2).toBeGreaterThanOrEqual(ranges.co2.min);
        expect(co2).toBeLessThanOrEqual(ranges.co2.max);
        expect(o2).toBeLessThanOrEqual(ranges.o2.max);
      }),
      options,
    );
  });

  it('four spellings of one mix are one gas', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 49 }), (co2) => {
        const spellings = [`Ar+${co2}CO2`, `${100 - co2}/${co2} CO2`, `Ar ${co2}% CO2`, `C${co2}`];
        const read = spellings.map((text) => parseGas(text).composition);
        for (const one of read) expect(one).toEqual(read[0]);
      }),
      options,
    );
  });
});

const gases = fc.constantFrom('98/2 O2', 'Ar+8CO2', 'M21', '80/20', '75/25', 'CO2');
const ORDER = { no: 0, possible: 1, yes: 2 } as const;

describe('permits', () => {
  // At equal volts more amperes end in stubbing: the volts have to rise along the load line (IEC 60974-1).
  it('more volts never make dip likelier, more amperes along the load line never make spray less likely', () => {
    fc.assert(
      fc.property(gases, real(14, 36), real(60, 400), (gas, v, a) => {
        const bounds = modeBoundaries(parseSetup({ wire: '1.2mm', gas }));
        const here = permitsAt(v, a, bounds, null);
        const hotter = permitsAt(v + 2, a, bounds, null);
        const richer = permitsAt(v + 0.05 * 30, a + 30, bounds, null);
        expect(ORDER[hotter['short-circuit']]).toBeLessThanOrEqual(ORDER[here['short-circuit']]);
        expect(ORDER[richer.spray]).toBeGreaterThanOrEqual(ORDER[here.spray]);
      }),
      options,
    );
  });

  it('leaves no point of the map without a mode, and no point with two for sure', () => {
    fc.assert(
      fc.property(gases, real(12, 38), real(60, 450), (gas, v, a) => {
        const bounds = modeBoundaries(parseSetup({ wire: '1.2mm', gas }));
        const { 'pulsed-spray': _, ...steady } = permitsAt(v, a, bounds, 'steady');
        const words = Object.values(steady);
        expect(words.some((word) => word !== 'no')).toBe(true);
        expect(words.filter((word) => word === 'yes').length).toBeLessThanOrEqual(1);
      }),
      options,
    );
  });
});

describe('cross-check', () => {
  const stated = fc.record({
    gas: gases,
    wire: fc.constant('1.2mm'),
    expect: fc.constantFrom(...MODES),
    setVoltage: real(14, 36),
    wireFeed: real(2, 14).map((feed) => `${feed}m/min`),
  });

  it('never advises without cautions, checks and ranks in order; the set-up is left as it was', () => {
    fc.assert(
      fc.property(stated, fc.constantFrom(...MODES), real(0.3, 1), (raw, mode, confidence) => {
        const setup = parseSetup(raw);
        const copy = structuredClone(setup);
        const answer = crossCheck({ setup, seen: seenAs(mode, { confidence }) });
        expect(setup).toEqual(copy);
        expect(answer.cautions?.join(' ')).toMatch(
          /qualified welding procedure.*not an inspection/su,
        );
        const ids = answer.explanations.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const [i, one] of answer.explanations.entries()) {
          expect(one.rank).toBe(i + 1);
          expect(one.check.length).toBeGreaterThan(20);
        }
      }),
      options,
    );
  });

  it('a weak label disagrees with nobody', () => {
    fc.assert(
      fc.property(stated, fc.constantFrom(...MODES), real(0, 0.59), (raw, mode, confidence) => {
        const seen = seenAs(mode, { confidence });
        const answer = crossCheck({ setup: parseSetup(raw), seen });
        expect(answer.settings.answer).toBe('cannot-tell');
        expect(answer.intended?.answer).toBe('cannot-tell');
        expect(answer.explanations[0]?.id).toBe('recording-cannot-support');
      }),
      options,
    );
  });

  it('an agreement has its margin on the right side of every boundary', () => {
    fc.assert(
      fc.property(
        gases,
        real(12, 36),
        real(80, 400),
        fc.constantFrom(...MODES),
        (gas, v, a, mode) => {
          const setup = parseSetup({ wire: '1.2mm', gas, feederVolts: v, measuredCurrent: a });
          const { settings } = crossCheck({ setup, seen: seenAs(mode) });
          if (settings.answer !== 'agrees' || settings.marginV === null) return;
          expect(settings.marginV).toBeGreaterThan(-2.1);
        },
      ),
      options,
    );
  });
});
