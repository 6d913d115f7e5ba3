import { describe, expect, it } from 'vitest';
import { sayAdvice } from '../../../src/setup/coach.js';
import { parseSetup } from '../../../src/setup/index.js';

describe('advice where the wanted mode was seen', () => {
  const stay = (likelihood: number) =>
    sayAdvice(
      { kind: 'stay', wanted: 'spray', likelihood, targetV: { min: 26, max: 29 } },
      parseSetup({ gas: 'Ar+8CO2' }),
    ).map(({ text }) => text);

  it('says that the settings suit it where they do', () => {
    expect(stay(0.8)).toEqual([
      'The settings suit spray (8 in 10); at this current it lies at 26–29 V at the feeder.',
    ]);
  });

  // Rejects "the settings suit spray (0 in 10)" beside a run that was spray all the same.
  it('praises no settings that the map gives another mode for', () => {
    expect(stay(0)).toEqual([]);
  });
});
