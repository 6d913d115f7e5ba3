import { describe, expect, it } from 'vitest';
import { contradictions, fillSetup, readProcedure } from '../../../src/procedure/index.js';
import { parseSetup } from '../../../src/setup/index.js';
import { PROCEDURE_DOCUMENT } from '../../support/procedure.js';

const PROCEDURE = readProcedure(PROCEDURE_DOCUMENT);
const filled = (stated: Record<string, string>) => parseSetup(fillSetup(PROCEDURE, stated));
const said = (stated: Record<string, string>) =>
  contradictions(PROCEDURE, parseSetup(stated)).map((one) => one.what);

describe('a set-up under a procedure', () => {
  it('takes wire, gas, polarity, programme and the one mode, and no range', () => {
    const setup = filled({});
    expect(setup.wireDiameterMm).toBeCloseTo(1.143, 9);
    expect(setup.gas?.text).toBe('Ar + 18 % CO2');
    expect(setup.expectedMode).toBe('short-circuit');
    expect(setup.source).toBe('steady');
    // A range is no statement about the run, and two positions are no single one.
    expect([setup.setVoltageV, setup.wireFeedMPerMin, setup.travelSpeedMmPerMin]).toEqual([
      null,
      null,
      null,
    ]);
    expect(setup.position).toBeNull();
  });

  it('leaves what was stated, and what was stated as unknown', () => {
    const setup = filled({ gas: 'Ar+8CO2', 'wire-diameter': 'unknown' });
    expect(setup.gas?.text).toBe('Ar + 8 % CO2');
    expect(setup.wireDiameterMm).toBeNull();
  });

  it('refuses another wanted mode', () => {
    expect(() => filled({ expect: 'spray' })).toThrow(
      /spray is wanted, but.*INVENTED-1.*short-circuit/,
    );
  });

  it.each([
    ['wire', { wireDiameter: '1.0mm' }],
    ['gas', { gas: 'Ar+8CO2' }],
    ['position', { position: 'PF' }],
    ['plate', { plate: '12mm' }],
    ['polarity', { polarity: 'dcen' }],
  ])('says where the %s is another', (what, stated) => {
    expect(said(stated as Record<string, string>)).toEqual([what]);
  });

  it('says nothing of the same in other words', () => {
    expect(said({ wireDiameter: '1.2mm', gas: 'M21', position: 'PB', plate: '5mm' })).toEqual([]);
  });
});
