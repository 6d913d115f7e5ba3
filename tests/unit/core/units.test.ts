import { describe, expect, it } from 'vitest';
import {
  fromSystem,
  inSystem,
  rangeWithUnit,
  systemOfLocale,
  UNIT_QUANTITIES,
  UNIT_SYSTEMS,
  withUnit,
} from '../../../src/core/index.js';

// Plain arithmetic from 1 in = 25.4 mm and 1 lb = 0.45359237 kg.
describe('units of a system', () => {
  it.each([
    ['feed', 10.16, '400 in/min', '10.2 m/min'],
    ['travel', 304.8, '12 in/min', '305 mm/min'],
    ['diameter', 1.143, '0.045 in', '1.14 mm'],
    ['length', 15.875, '0.63 in', '16 mm'],
    ['cable', 15.24, '50 ft', '15.2 m'],
    ['deposition', 4.5359237, '10 lb/h', '4.5 kg/h'],
    ['energy', 1.229, '31 kJ/in', '1.23 kJ/mm'],
    ['temperature', 150, '302 °F', '150 °C'],
  ] as const)('%s', (quantity, base, inch, metric) => {
    expect(withUnit(base, quantity, 'inch')).toBe(inch);
    expect(withUnit(base, quantity, 'metric')).toBe(metric);
  });

  it('goes there and back', () => {
    for (const quantity of UNIT_QUANTITIES) {
      for (const system of UNIT_SYSTEMS) {
        expect(fromSystem(inSystem(7.3, quantity, system), quantity, system)).toBeCloseTo(7.3, 9);
      }
    }
  });

  it('says a range once where both ends are shown alike', () => {
    expect(rangeWithUnit({ min: 8, max: 9.5 }, 'feed', 'metric')).toBe('8–9.5 m/min');
    expect(rangeWithUnit({ min: 8.001, max: 8.002 }, 'feed', 'metric')).toBe('8 m/min');
  });

  it('takes inches for the United States alone', () => {
    expect(systemOfLocale('en-US')).toBe('inch');
    expect(systemOfLocale('en_US.UTF-8')).toBe('inch');
    expect(systemOfLocale('es-Latn-US')).toBe('inch');
    for (const other of ['de-DE', 'en-GB', 'en', 'C', 'POSIX', undefined]) {
      expect(systemOfLocale(other)).toBe('metric');
    }
  });
});
