import { describe, expect, it } from 'vitest';
import { linkedSetup, setupLink } from '../../../src/setup/index.js';

describe('a set-up in an address', () => {
  it('comes back as it went, signs and all', () => {
    const setup = { wireDiameter: '1.2mm', gas: 'Ar+18CO2', expect: 'short-circuit' };
    expect(linkedSetup(setupLink(setup))).toEqual(setup);
  });

  it('takes nothing but keys of a set-up, and no long texts', () => {
    expect(linkedSetup(`#set-up?gas=M21&script=x&wireFeed=${'9'.repeat(81)}`)).toEqual({
      gas: 'M21',
    });
    expect(linkedSetup('#record')).toEqual({});
    expect(linkedSetup('')).toEqual({});
  });
});
