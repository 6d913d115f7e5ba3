import { describe, expect, it } from 'vitest';
import {
  arcEnergy,
  energyPerLength,
  heatInput,
  powerPerSpeed,
  THERMAL_EFFICIENCY,
} from '../../src/setup/index.js';

describe('heat input', () => {
  // A public worked example, secondary text: 24 V, 160 A, 150 mm/min. Rejects: mm/s taken for mm/min,
  // efficiency left out or applied twice.
  it('gives 1.536 kJ/mm arc energy and 1.229 kJ/mm heat input', () => {
    const energy = arcEnergy(24, 160, 150);
    expect(energy).toBeCloseTo(1.536, 9);
    expect(heatInput(energy)).toBeCloseTo(1.2288, 9);
  });

  it('uses the efficiencies of ISO/TR 17671-1 and EN 1011-1 (TWI FAQ)', () => {
    const { saw, smaw, fcaw, gmaw, gtaw, paw } = THERMAL_EFFICIENCY;
    expect([saw, smaw, fcaw, gmaw, gtaw, paw]).toEqual([1, 0.8, 0.8, 0.8, 0.6, 0.6]);
  });

  // ISO/TR 18491 methods B and C agree for steady travel: 300 J over 0.1 s at 600 mm/min is 1 mm.
  it('methods B and C agree where travel is steady', () => {
    expect(energyPerLength(300, 1)).toBeCloseTo(0.3, 12);
    expect(powerPerSpeed(3000, 600)).toBeCloseTo(0.3, 12);
  });

  it('refuses a standing torch and a bead without length', () => {
    expect(() => arcEnergy(24, 160, 0)).toThrow(/travel speed is 0/);
    expect(() => powerPerSpeed(3000, 0)).toThrow(/travel speed is 0/);
    expect(() => energyPerLength(300, 0)).toThrow(/bead length is 0/);
  });
});
