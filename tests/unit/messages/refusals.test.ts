import { describe, expect, it } from 'vitest';
import { isArcError } from '../../../src/core/index.js';
import { ENGLISH, retell } from '../../../src/messages/index.js';
import { parseSetup } from '../../../src/setup/index.js';

/** One of each kind of set-up that cannot be. */
const WRONG: readonly Record<string, string>[] = [
  { wireDiameter: '1.2' },
  { wireDiameter: '12 mm' },
  { wireDiameter: '1.2 furlongs' },
  { wireDiameter: `${'9'.repeat(400)}mm` },
  { wireDiameter: `${'9'.repeat(400)}in` },
  { wireFeed: 'fast' },
  { wireFeed: '900 in/min and more' },
  { setVoltage: '900 V' },
  { gas: 'something' },
  { gas: 'M' },
  { gas: 'M21-ArC-2' },
  { gas: 'Ar+CO2' },
  { gas: '50Ar/30CO2' },
  { gas: '98/2' },
  { gas: '25/75' },
  { gas: '90/7.5/2.5' },
  { gas: 'C2' },
  { gas: 'Ar+18CO2', wireMaterial: 'aluminium' },
  { expect: 'pulsed-spray', source: 'steady' },
  { expect: 'rotating' },
  { expect: 'globbing' },
  { polarity: 'plus' },
  { wireMaterial: 'flux cored' },
  { wireMaterial: 'bronze' },
  { sourceVolts: '20', feederVolts: '24' },
];

describe('a set-up that cannot be', () => {
  // Rejects a refusal without its codes, and params that do not give back its parts or survive no message
  // between workers.
  it.each(WRONG)('is refused in sentences of the catalogues: %o', (setup) => {
    let error: unknown;
    try {
      parseSetup(setup);
    } catch (thrown) {
      error = thrown;
    }
    if (!isArcError(error)) throw new Error('The set-up was taken.');
    const said: typeof error.said = JSON.parse(JSON.stringify(error.said));
    const { what, expected, todo, message } = error;
    for (const [part, text] of Object.entries({ what, expected, todo, whole: message }))
      expect(retell(said![part as 'what'], ENGLISH)).toBe(text);
  });
});
