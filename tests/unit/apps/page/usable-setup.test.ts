import { describe, expect, it } from 'vitest';
import { understood, usableSetup } from '../../../../src/apps/page/shell/usable-setup.js';
import { GAS_CHOICES, wireChoices } from '../../../../src/apps/page/views/setup-lists.js';
import { parseSetup } from '../../../../src/setup/index.js';

describe('what is typed', () => {
  // What only one unit can make sense of: by hand from the limits 0.5 to 2.5 mm, 0.8 to 35 m/min and 3 to 60 mm.
  it.each([
    ['wireDiameter', '.035', '.035 in'],
    ['wireDiameter', '0.045', '0.045 in'],
    ['wireDiameter', '035', '0.035 in'],
    ['wireDiameter', '45', '0.045 in'],
    ['wireDiameter', '1,2', '1.2 mm'],
    ['wireDiameter', '0.9 mm', '0.9 mm'],
    ['wireFeed', '8', '8 m/min'],
    ['wireFeed', '240', '240 in/min'],
    ['stickOut', '15', '15 mm'],
    ['stickOut', '.5', '.5 in'],
    ['setVoltage', '24', '24'],
  ])('as %s “%s” is understood as %s', (key, typed, meant) => {
    expect(understood(key, typed)).toBe(meant);
    expect(() => parseSetup({ [key]: meant })).not.toThrow();
  });

  // 33 m/min and 33 in/min (0.84 m/min) can both be fed.
  it('is left as it is where two units make sense of it, or none does', () => {
    expect(understood('wireFeed', '33')).toBe('33');
    expect(understood('wireDiameter', '12')).toBe('12');
    expect(understood('gas', '98/2')).toBe('98/2');
  });

  it('is used as far as it can be; every wrong field is named and left out', () => {
    const { setup, wrong } = usableSetup({
      wireDiameter: '.035',
      gas: 'something',
      setVoltage: '900 V',
      wireFeed: '',
      expect: 'spray',
    });
    expect(setup).toEqual({ wireDiameter: '.035 in', expect: 'spray' });
    expect(Object.keys(wrong).sort()).toEqual(['gas', 'setVoltage']);
  });

  // Rejects a comparison with one of two that exclude each other, and one that drops the wish.
  it('leaves out both of a pair that can’t be, but never the wanted mode', () => {
    const pair = usableSetup({ gas: 'Ar+18CO2', wireMaterial: 'aluminium', setVoltage: '24' });
    expect(pair.setup).toEqual({ setVoltage: '24' });
    expect(Object.keys(pair.wrong).sort()).toEqual(['gas', 'wireMaterial']);
    const wish = usableSetup({ expect: 'pulsed-spray', source: 'steady' });
    expect(wish.setup).toEqual({ expect: 'pulsed-spray' });
    expect(Object.keys(wish.wrong)).toEqual(['source']);
  });

  it('always gives a set-up that can be read', () => {
    const texts = [
      '',
      '.035',
      '-1',
      '1e9',
      'x',
      '24 V',
      '0',
      'Ar+18CO2',
      'aluminium',
      'pulsed',
      '∞',
    ];
    for (const wireDiameter of texts)
      for (const gas of texts) {
        const typed = {
          wireDiameter,
          gas,
          setVoltage: gas,
          wireMaterial: wireDiameter,
          source: gas,
        };
        expect(() => parseSetup(usableSetup(typed).setup)).not.toThrow();
      }
  });
});

describe('lists to pick from', () => {
  it.each(GAS_CHOICES)('$value is a gas without doubt', ({ value }) => {
    expect(parseSetup({ gas: value }).gas).not.toBeNull();
  });

  it('holds the words of the shop', () => {
    const words = GAS_CHOICES.flatMap(({ value, also }) => `${value}, ${also}`).join(', ');
    for (const word of ['75/25', 'C25', '90/10', 'M21', 'CO2']) expect(words).toContain(word);
  });

  it.each(['metric', 'inch'] as const)('wires in %s are sizes that can be read', (units) => {
    const diameters = wireChoices(units).map(
      ({ value }) => parseSetup({ wireDiameter: value }).wireDiameterMm,
    );
    expect(diameters).toEqual([...new Set(diameters)].toSorted((a, b) => (a ?? 0) - (b ?? 0)));
  });
});
