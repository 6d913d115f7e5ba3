import { describe, expect, it } from 'vitest';
import { parseSetup, processMaps } from '../../src/setup/index.js';

const { FAULTS, likelihoodsAt, processMap } = processMaps;

/**
 * Arc-spot rows of a manufacturer's M21 table (80/20): welds that a maker recommends, at high current.
 * The lines of the map were laid without them: diameter mm, A, V (middles of printed ranges).
 */
const ARC_SPOT: readonly (readonly [mm: number, amps: number, volts: number])[] = [
  [0.8, 130, 23],
  [0.8, 155, 25],
  [1.2, 260, 25],
  [1.2, 320, 32],
  [1.6, 320, 31],
  [1.6, 340, 32],
  [1.6, 350, 32],
  [1.6, 370, 33],
  [1.6, 380, 32],
  [1.6, 390, 33],
  [1.6, 400, 32],
  [1.6, 460, 35],
  [1.6, 480, 35],
  [1.6, 500, 35],
  [1.6, 550, 37],
];

describe('settings that a maker recommends are not faults on the map', () => {
  it('holds for the arc-spot rows, which no line was laid through', () => {
    const gas = parseSetup({ gas: '80/20' }).gas;
    const faulty = ARC_SPOT.filter(([diameterMm, amps, volts]) => {
      const all = likelihoodsAt(
        processMap({ material: 'carbon-steel', diameterMm, gas }),
        volts,
        amps,
      );
      return FAULTS.reduce((sum, one) => sum + all[one], 0) >= 0.5;
    });
    expect(faulty).toEqual([]);
  });
});
