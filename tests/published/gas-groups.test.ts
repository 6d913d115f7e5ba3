import { describe, expect, it } from 'vitest';
import { gasSymbol, OXIDISING_GROUPS, parseGas, symbolRanges } from '../../src/setup/index.js';

/** Vectors in the text of ISO 14175:2008, from a secondary copy: check the standard itself. */
const IN_THE_TEXT: readonly [string, string][] = [
  ['Ar+11CO2', 'M20'],
  ['Ar+6CO2+4O2', 'M25'],
  ['Ar+30He', 'I3'],
  ['He+7.5Ar+2.5CO2', 'M12'],
  ['Ar+0.05O2', 'Z'],
];

/** Worked from Table 2 of the same secondary copy. */
const FROM_THE_TABLE: readonly [string, string][] = [
  ['98/2 O2', 'M13'],
  ['98/2 CO2', 'M12'],
  ['95/5 CO2', 'M12'],
  ['95/5 O2', 'M22'],
  ['92/8', 'M20'],
  ['90/10', 'M20'],
  ['85/15', 'M20'],
  ['82/18', 'M21'],
  ['80/20', 'M21'],
  ['75/25', 'M21'],
  ['70/30', 'M31'],
  ['argon', 'I1'],
  ['helium', 'I2'],
  ['CO2', 'C1'],
  ['80CO2+20O2', 'C2'],
  ['Ar+3CO2+2H2', 'M11'],
  ['Ar+8CO2+2O2', 'M24'],
  ['Ar+20CO2+2O2', 'M26'],
  ['Ar+20CO2+5O2', 'M27'],
  ['Ar+40CO2+5O2', 'M33'],
  ['Ar+12O2', 'M32'],
  ['Ar+2CO2+2O2', 'M14'],
  ['Ar+2CO2+5O2', 'M23'],
  ['Ar+10CO2+12O2', 'M34'],
  ['Ar+40CO2+12O2', 'M35'],
  ['Ar+60CO2', 'Z'],
  ['Ar+5N2', 'Z'],
];

describe('ISO 14175 symbols of compositions (secondary copy of the standard)', () => {
  it.each([...IN_THE_TEXT, ...FROM_THE_TABLE])('%s is %s', (gas, symbol) => {
    expect(parseGas(gas).symbol).toBe(symbol);
  });

  // Rejects: open and closed ends swapped (15 % is still M20, 25 % still M21).
  it.each([
    [15, 'M20'],
    [15.1, 'M21'],
    [25, 'M21'],
    [25.1, 'M31'],
    [5, 'M12'],
    [5.1, 'M20'],
    [50, 'M31'],
  ])('argon with %f %% CO2 is %s at the edge of the group', (co2, symbol) => {
    expect(gasSymbol({ ar: 100 - co2, he: 0, co2, o2: 0, h2: 0, n2: 0 })).toBe(symbol);
  });

  it('comes back: the middle of every group has the symbol of that group', () => {
    for (const { symbol, co2, o2, h2 } of OXIDISING_GROUPS) {
      const mid = (band: { from: number; upTo: number } | null) =>
        band === null ? 0 : (band.from + band.upTo) / 2;
      const [c, o, h] = [mid(co2), mid(o2), mid(h2)];
      // M33 and M35 overlap M31's neighbours only in oxygen, so the middle names one group alone.
      expect(gasSymbol({ ar: 100 - c - o - h, he: 0, co2: c, o2: o, h2: h, n2: 0 })).toBe(symbol);
      const ranges = symbolRanges(symbol)!;
      expect(ranges.co2.min).toBeLessThanOrEqual(c);
      expect(ranges.co2.max).toBeGreaterThanOrEqual(c);
    }
  });
});

// Old American form, from memory of AWS A5.32-97.
describe('designations', () => {
  it.each([
    ['ISO 14175-M20-ArC-11', 'Ar + 11 % CO2'],
    ['M25-ArCO-6/4', 'Ar + 6 % CO2 + 4 % O2'],
    ['I3-ArHe-30', 'Ar + 30 % He'],
    ['M12-HeArC-7.5/2.5', 'He + 7.5 % Ar + 2.5 % CO2'],
    ['SG-AC-25', 'Ar + 25 % CO2'],
    ['SG-AO-2', 'Ar + 2 % O2'],
  ])('%s is %s', (gas, text) => {
    expect(parseGas(gas).text).toBe(text);
  });
});
