import { describe, expect, it } from 'vitest';
import {
  currentForFeed,
  currentRangeForFeed,
  feedForCurrent,
  impliedStickOut,
  MM_PER_INCH,
} from '../../src/setup/index.js';

const STEEL_1_2 = { material: 'carbon-steel', diameterMm: 1.2, stickOutMm: 15 } as const;

describe('melting rate', () => {
  // From memory of Allum & Quintino (1985) and Norrish: 0.30 mm/(s·A) and 5.0e-5 /(s·A²). Hand
  // calculation at 250 A: 75 + 46.875 = 121.875 mm/s = 7.3125 m/min. Rejects: stick-out forgotten.
  it('1.2 mm steel at 250 A and 15 mm takes 7.3 m/min', () => {
    expect(feedForCurrent(STEEL_1_2, 250)).toBeCloseTo(7.3125, 9);
  });

  // The same check values lie within what both memories give: 100 A 2.1–2.25, 300 A 9.2–9.45 m/min.
  it.each([
    [100, 2.1, 2.26],
    [150, 3.5, 3.72],
    [200, 5.2, 5.41],
    [300, 9.2, 9.46],
  ])('%d A: %f–%f m/min', (amps, least, most) => {
    const feed = feedForCurrent(STEEL_1_2, amps)!;
    expect(feed).toBeGreaterThanOrEqual(least);
    expect(feed).toBeLessThanOrEqual(most);
  });

  // From memory of Lesnewich (1958) and the AWS Welding Handbook, 1/16 in: 1.9e-2 lb/(h·A) and
  // 5.5e-5 lb/(h·A²·in). Worked by hand into α = 0.154 mm/(s·A) for 1.6 mm. Independent of the row above.
  it('1.6 mm steel agrees with the handbook’s constants within 15 %', () => {
    const feed = feedForCurrent({ ...STEEL_1_2, diameterMm: 1.6 }, 300)! / 0.06;
    const handbook = 0.154 * 300 + 1.75e-5 * 15 * 300 ** 2;
    expect(Math.abs(feed / handbook - 1)).toBeLessThan(0.15);
  });

  // A manufacturer's setting guide (read in the source): inches a minute for each ampere.
  it.each([
    [0.023, 3.5],
    [0.03, 2.0],
    [0.035, 1.6],
  ])('the range for %f in wire reaches the shop rule of %f ipm/A', (inch, ipmPerA) => {
    const feed = (125 * ipmPerA * MM_PER_INCH) / 1000;
    const wire = { material: 'carbon-steel', diameterMm: inch * MM_PER_INCH, stickOutMm: null };
    const found = currentRangeForFeed({ ...wire, material: 'carbon-steel' }, feed)!;
    expect(found.min).toBeLessThanOrEqual(125);
    expect(found.max).toBeGreaterThanOrEqual(125);
  });

  // Secondary shop row: 0.045 in, 250–320 A for 8.9–11.4 m/min.
  it('overlaps the shop row for 0.045 in spray', () => {
    const low = currentRangeForFeed({ ...STEEL_1_2, diameterMm: 1.143, stickOutMm: null }, 8.9)!;
    const high = currentRangeForFeed({ ...STEEL_1_2, diameterMm: 1.143, stickOutMm: null }, 11.4)!;
    expect(low.min).toBeLessThan(250);
    expect(low.max).toBeGreaterThan(250);
    expect(high.min).toBeLessThan(320);
    expect(high.max).toBeGreaterThan(320);
  });

  // From memory of Lesnewich: electrode negative melts about twice as much for each ampere.
  it('draws far less current on electrode negative, and nothing is said of alternating current', () => {
    const negative = currentForFeed({ ...STEEL_1_2, polarity: 'dcen' }, 7.3125)!;
    expect(negative).toBeGreaterThan(125);
    expect(negative).toBeLessThan(250 * 0.7);
    expect(currentForFeed({ ...STEEL_1_2, polarity: 'ac' }, 7.3125)).toBeNull();
  });

  it('tells the stick-out that a current implies', () => {
    const wire = { material: 'carbon-steel', diameterMm: 1.2 } as const;
    const feed = feedForCurrent({ ...wire, stickOutMm: 27 }, 210)!;
    expect(impliedStickOut(wire, feed, 210)).toBeCloseTo(27, 6);
    expect(impliedStickOut({ ...wire, diameterMm: 0.6 }, feed, 210)).toBeNull();
  });
});
