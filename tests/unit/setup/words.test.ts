import { describe, expect, it } from 'vitest';
import { parseExpectedMode, parseSetup } from '../../../src/setup/index.js';

const gas = (text: string) => parseSetup({ gas: text }).gas?.composition;

describe('words of the trade', () => {
  it.each([
    ['dip transfer', 'short-circuit'],
    ['Dip', 'short-circuit'],
    ['short-arc', 'short-circuit'],
    ['short arc', 'short-circuit'],
    ['short circuiting transfer', 'short-circuit'],
    ['GMAW-S', 'short-circuit'],
    ['135-D', 'short-circuit'],
    ['ISO 4063-135-D', 'short-circuit'],
    ['13-D', 'short-circuit'],
    ['spray arc', 'spray'],
    ['spray transfer', 'spray'],
    ['131-S', 'spray'],
    ['globular transfer', 'globular'],
    ['GMAW-G', 'globular'],
    ['pulsed arc', 'pulsed-spray'],
    ['GMAW-P', 'pulsed-spray'],
    ['Sprühlichtbogen', 'spray'],
  ] as const)('%s is %s', (word, mode) => {
    expect(parseExpectedMode(word)).toBe(mode);
  });

  it.each(['rotating spray', 'buried arc', '135-B', 'streaming'])('"%s" stays refused', (word) => {
    expect(() => parseExpectedMode(word)).toThrow();
  });

  it('reads a mix that is written in one word', () => {
    expect(gas('98Ar2O2')).toMatchObject({ ar: 98, o2: 2 });
    expect(gas('82Ar18CO2')).toMatchObject({ ar: 82, co2: 18 });
    expect(gas('Ar18CO2')).toMatchObject({ ar: 82, co2: 18 });
    expect(gas('90He7.5Ar2.5CO2')).toMatchObject({ he: 90, ar: 7.5, co2: 2.5 });
    expect(gas('CO2')).toMatchObject({ co2: 100 });
    expect(() => gas('98Ar3O2')).toThrow(/add up/u);
  });

  it.each([
    ['AWS A5.18 ER70S-6', 'carbon-steel'],
    ['G 42 4 M21 3Si1', 'carbon-steel'],
    ['G 19 9 LSi', 'stainless-steel'],
    ['ER316LSi', 'stainless-steel'],
    ['S Al 5356 (AlMg5Cr(A))', 'aluminium'],
  ])('takes %s as %s and no gas from it', (text, material) => {
    const setup = parseSetup({ wireMaterial: text });
    expect(setup.wireMaterial).toBe(material);
    expect(setup.gas).toBeNull();
  });
});
