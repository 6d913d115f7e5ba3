import { describe, expect, it } from 'vitest';
import { parseSetup, sayModeUse, warnOfPosition } from '../../../src/setup/index.js';

const warning = (mode: 'spray' | 'pulsed-spray', stated: Record<string, string>) =>
  warnOfPosition([mode], parseSetup(stated))?.params['position'] ?? null;

describe('where a mode may be used', () => {
  it('is said in three lines where plate or position is stated, else not at all', () => {
    expect(sayModeUse('spray', parseSetup({})).map((one) => one.code)).toEqual([]);
    for (const stated of [{ plate: '5mm' }, { position: '3G' }] as Record<string, string>[])
      expect(sayModeUse('spray', parseSetup(stated)).map((one) => one.code)).toEqual([
        'mode-positions',
        'mode-good-for',
        'mode-bad-for',
      ]);
  });

  it.each(['3G', '4F', 'PF', 'PG', 'PE', '5G', 'overhead'])(
    'warns of conventional spray on steel and stainless in %s',
    (position) => {
      for (const wireMaterial of ['carbon-steel', 'stainless-steel'])
        expect(warning('spray', { position, wireMaterial })).not.toBeNull();
    },
  );

  it.each([
    ['flat and horizontal', 'spray', { position: 'PB', wireMaterial: 'carbon-steel' }],
    ['pulsed spray', 'pulsed-spray', { position: '3G', wireMaterial: 'carbon-steel' }],
    ['aluminium', 'spray', { position: '4G', wireMaterial: 'aluminium' }],
    ['no position', 'spray', { wireMaterial: 'carbon-steel' }],
  ] as const)('does not warn of %s', (_, mode, stated) => {
    expect(warning(mode, stated)).toBeNull();
  });
});
