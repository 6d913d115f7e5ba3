import { describe, expect, it } from 'vitest';
import { createRandom, MODES } from '../../../../../src/core/index.js';
import {
  drawScenario,
  ELECTRICAL_FAMILIES,
  simulateArc,
} from '../../../../../src/lab/simulate/index.js';

describe('drawScenario', () => {
  it('refuses a family it does not know, and names those it does', () => {
    expect(() => drawScenario(createRandom(1), { family: 'capilary' })).toThrow(/capillary/);
  });

  const aims = ELECTRICAL_FAMILIES.flatMap((family) =>
    MODES.map((mode) => [family, mode] as const),
  );
  it.each(aims)('family %s reaches %s', (family, mode) => {
    // The aim is only an aim; the run's own metal must confirm it in most draws (our floor: half).
    let hits = 0;
    for (let k = 0; k < 4; k++) {
      const scenario = drawScenario(createRandom(`reached ${k}`), { mode, family, arcS: 0.8 });
      if (simulateArc(scenario).truth.mode === mode) hits++;
    }
    expect(hits).toBeGreaterThanOrEqual(2);
  });

  it('never lets pure carbon dioxide spray, whatever the current', () => {
    // Teaching pages and Weld. World 2015: drops stay large and off-axis in pure CO2 at any current.
    const wire = { material: 'carbon-steel', diameterMm: 1.2 } as const;
    const gas = { group: 'C1', co2Percent: 100, o2Percent: 0 };
    for (let k = 0; k < 12; k++) {
      const random = createRandom(`co2 ${k}`);
      const family = random.pick(ELECTRICAL_FAMILIES);
      const mode = random.pick(['globular', 'short-circuit'] as const);
      const scenario = drawScenario(random, { mode, family, arcS: 0.5, wire, gas });
      const { shares, meanDropRatio } = simulateArc(scenario).truth;
      expect(shares.spray + shares['pulsed-spray']).toBeLessThan(0.02);
      if (Number.isFinite(meanDropRatio)) expect(meanDropRatio).toBeGreaterThan(1);
    }
  });

  it('refuses a mode that the gas does not have', () => {
    const gas = { group: 'C1', co2Percent: 100, o2Percent: 0 };
    const wanted = { mode: 'spray', family: 'capillary', gas } as const;
    expect(() => drawScenario(createRandom(1), wanted)).toThrow(/spray in C1/);
  });

  it('gives pulses finite slopes', () => {
    // Current may move no faster than the source's own slew (from sample to sample, single precision).
    for (const family of ELECTRICAL_FAMILIES) {
      const scenario = drawScenario(createRandom('slopes'), {
        mode: 'pulsed-spray',
        family,
        arcS: 0.5,
      });
      if (scenario.source.kind !== 'pulsed') throw new Error('a pulsed source was asked for');
      const { riseAPerS, fallAPerS, peakA } = scenario.source;
      const burning = { ...scenario, openStart: true, openEnd: true };
      const { arcCurrentA, powerRateHz } = simulateArc(burning);
      let up = 0;
      let down = 0;
      for (let i = 1; i < arcCurrentA.length; i++) {
        up = Math.max(up, arcCurrentA[i]! - arcCurrentA[i - 1]!);
        down = Math.max(down, arcCurrentA[i - 1]! - arcCurrentA[i]!);
      }
      expect(up).toBeLessThan((riseAPerS / powerRateHz) * 1.001 + 0.01);
      expect(down).toBeLessThan((fallAPerS / powerRateHz) * 1.001 + 0.01);
      expect(arcCurrentA.reduce((a, b) => Math.max(a, b), 0)).toBeGreaterThan(0.6 * peakA);
    }
  });
});
