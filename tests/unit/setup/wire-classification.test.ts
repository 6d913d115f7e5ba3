import { describe, expect, it } from 'vitest';
import { readWireClass } from '../../../src/setup/wire-classification.js';

// Classifications as the standards write them (from memory of the standards named).
describe('wire classifications, for their material alone', () => {
  it.each([
    ['ER70S-6', 'AWS A5.18', 'carbon-steel'],
    ['AWS A5.18 ER70S-6', 'AWS A5.18', 'carbon-steel'],
    ['AWS A5.18/A5.18M: ER70S-3', 'AWS A5.18', 'carbon-steel'],
    ['SFA-5.18 ER70S-6', 'AWS A5.18', 'carbon-steel'],
    ['ER48S-6', 'AWS A5.18', 'carbon-steel'],
    ['E70C-6M', 'AWS A5.18', 'metal-cored'],
    ['E70C-6M H4', 'AWS A5.18', 'metal-cored'],
    ['ER80S-D2', 'AWS A5.28', 'carbon-steel'],
    ['AWS A5.28 ER100S-G', 'AWS A5.28', 'carbon-steel'],
    ['ER308LSi', 'AWS A5.9', 'stainless-steel'],
    ['ER316LSi', 'AWS A5.9', 'stainless-steel'],
    ['AWS A5.9 ER2209', 'AWS A5.9', 'stainless-steel'],
    ['ER410NiMo', 'AWS A5.9', 'stainless-steel'],
    ['ER4043', 'AWS A5.10', 'aluminium'],
    ['AWS A5.10 ER5356', 'AWS A5.10', 'aluminium'],
    ['ERCuSi-A', 'AWS A5.7', 'silicon-bronze'],
    ['G 42 4 M21 3Si1', 'ISO 14341', 'carbon-steel'],
    ['EN ISO 14341-A: G 42 4 M21 3Si1', 'ISO 14341', 'carbon-steel'],
    ['ISO 14341-A-G 46 4 M21 4Si1', 'ISO 14341', 'carbon-steel'],
    ['G 42 3 C1 3Si1', 'ISO 14341', 'carbon-steel'],
    ['G 49A 3 C1 S6', 'ISO 14341', 'carbon-steel'],
    ['G 69 5 M21 Mn3Ni1CrMo', 'ISO 16834', 'carbon-steel'],
    ['G 19 9 LSi', 'ISO 14343', 'stainless-steel'],
    ['G 19 9 L Si', 'ISO 14343', 'stainless-steel'],
    ['EN ISO 14343-A: G 19 12 3 LSi', 'ISO 14343', 'stainless-steel'],
    ['G 22 9 3 N L', 'ISO 14343', 'stainless-steel'],
    ['SS308LSi', 'ISO 14343', 'stainless-steel'],
    ['S Al 5356 (AlMg5Cr(A))', 'ISO 18273', 'aluminium'],
    ['EN ISO 18273: S Al 4043 (AlSi5)', 'ISO 18273', 'aluminium'],
    ['AlMg5', 'ISO 18273', 'aluminium'],
  ])('%s', (text, standard, material) => {
    expect(readWireClass(text)).toMatchObject({ standard, material });
  });

  it('names the gas of the test and takes none from those that hold none', () => {
    expect(readWireClass('G 42 4 M21 3Si1')?.testGas).toBe('M21');
    expect(readWireClass('G 42 3 C1 3Si1')?.testGas).toBe('C1');
    expect(readWireClass('ER70S-6')?.testGas).toBeNull();
  });

  it.each([
    '',
    'steel',
    'ER',
    '1.2mm',
    'E71T-1',
    'T 46 4 P M 1',
    'ER70',
    'G 42',
    'AWS A5.18',
    'copper',
  ])('leaves "%s" alone', (text) => {
    expect(readWireClass(text)).toBeNull();
  });
});
