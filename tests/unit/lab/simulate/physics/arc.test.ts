import { describe, expect, it } from 'vitest';
import { createRandom, MODES } from '../../../../../src/core/index.js';
import {
  drawAcoustics,
  drawScenario,
  ELECTRICAL_FAMILIES,
  simulateArc,
  simulateSound,
} from '../../../../../src/lab/simulate/index.js';

const draw = (seed: string, mode: (typeof MODES)[number], family: string) =>
  drawScenario(createRandom(seed), { mode, family, arcS: 1.2 });

describe('simulateArc', () => {
  it('gives the same run for the same scenario', () => {
    // Rejects hidden state or a clock used as a seed.
    const scenario = draw('twice', 'short-circuit', 'capillary');
    const first = simulateArc(scenario);
    const second = simulateArc(structuredClone(scenario));
    expect(second.voltageV).toEqual(first.voltageV);
    expect(second.truth).toEqual(first.truth);
    const acoustic = drawAcoustics(createRandom(3), { family: 'monopole', rateHz: 16000 });
    expect(simulateSound(second, acoustic)).toEqual(simulateSound(first, acoustic));
  });

  it('gives another run for another seed', () => {
    const scenario = draw('twice', 'short-circuit', 'capillary');
    const other = simulateArc({ ...scenario, seed: scenario.seed + 1 });
    expect(other.voltageV).not.toEqual(simulateArc(scenario).voltageV);
  });

  it.each(ELECTRICAL_FAMILIES)('family %s balances the wire to within one percent', (family) => {
    // Conservation of mass, computed from the events and not from the balance's own sums:
    // wire fed = metal that crossed + what hangs + growth of the extension.
    for (const mode of MODES) {
      const scenario = {
        ...draw(`volume ${mode}`, mode, family),
        openStart: false,
        openEnd: false,
      };
      const run = simulateArc(scenario);
      const { fedMm3, extensionMm3, hangingLiquidMm3 } = run.balance;
      const drops = run.truth.drops.reduce((sum, d) => sum + (Math.PI / 6) * d.diameterMm ** 3, 0);
      const shorts = run.truth.shorts.reduce((sum, s) => sum + s.transferredMm3, 0);
      // Liquid to solid density from memory of Lancaster, as in the simulator's table.
      const ratio = {
        'carbon-steel': 7000 / 7860,
        'stainless-steel': 6900 / 7900,
        aluminium: 2400 / 2700,
      };
      const solid = (drops + shorts + hangingLiquidMm3) * ratio[scenario.wire.material];
      expect(Math.abs(fedMm3 - extensionMm3 - solid)).toBeLessThan(0.01 * fedMm3);
    }
  });

  it('balances the energy of a constant-voltage circuit to 1 %', () => {
    // Source work = slope loss + choke + load; rejects a wrong sign or a missing term in L·dI/dt.
    const scenario = draw('energy 1', 'short-circuit', 'necking');
    if (scenario.source.kind !== 'constant-voltage') throw new Error('choose another seed');
    scenario.source.riseLimitAPerS = Number.POSITIVE_INFINITY;
    scenario.source.maxA = 5000;
    const { sourceJ, slopeJ, chokeJ, loadJ } = simulateArc({ ...scenario, openEnd: true }).balance;
    expect(loadJ).toBeGreaterThan(500);
    expect(Math.abs(sourceJ - slopeJ - chokeJ - loadJ)).toBeLessThan(0.01 * sourceJ);
  });
});
