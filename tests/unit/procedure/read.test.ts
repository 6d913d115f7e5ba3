import { describe, expect, it } from 'vitest';
import { ArcError } from '../../../src/core/index.js';
import { procedureJsonSchema, readProcedure } from '../../../src/procedure/index.js';
import { PROCEDURE_DOCUMENT as DOCUMENT } from '../../support/procedure.js';

const read = (change: object) => readProcedure({ ...DOCUMENT, ...change });
const errorOf = (parsed: unknown): ArcError => {
  try {
    readProcedure(parsed);
  } catch (error) {
    if (error instanceof ArcError) return error;
  }
  throw new Error('nothing was refused');
};

describe('a procedure document', () => {
  // By hand: 20 V ± 10 %; 177 in/min = 4.4958 m/min ± 0.5; 30 kJ/in = 1.1811 kJ/mm; 5/8 in = 15.875 mm.
  it('is read into base units from inch and metric alike', () => {
    const procedure = readProcedure(DOCUMENT);
    expect(procedure.modes).toEqual(['short-circuit']);
    expect(procedure.volts).toEqual({ min: 18, max: 22, at: 'feeder' });
    expect(procedure.wireFeedMPerMin?.min).toBeCloseTo(3.9958, 9);
    expect(procedure.wireFeedMPerMin?.max).toBeCloseTo(4.9958, 9);
    expect(procedure.travelSpeedMmPerMin).toEqual({ min: 12 * 25.4, max: null });
    expect(procedure.stickOutMm).toEqual({ min: null, max: 15.875 });
    expect(procedure.heatInputKjPerMm?.max).toBeCloseTo(1.1811, 4);
    expect(procedure.heatInputKjPerMm?.efficiency).toBe(false);
    expect(procedure.positions).toEqual(['flat', 'horizontal']);
    expect(procedure.plateMm?.max).toBeCloseTo(6.35, 9);
  });

  it('takes AWS and ISO words for the same modes', () => {
    expect(read({ mode: ['GMAW-P', 'spray arc'], source: 'pulsed' }).modes).toEqual([
      'pulsed-spray',
      'spray',
    ]);
    expect(read({ mode: '13-D' }).modes).toEqual(['short-circuit']);
    expect(read({ mode: ['dip transfer', 'D'] }).modes).toEqual(['short-circuit']);
  });

  it('counts with thermal efficiency as EN and ISO do', () => {
    const heat = { heatInput: { max: '1.2 kJ/mm', countedBy: 'en' } };
    expect(read(heat).heatInputKjPerMm).toEqual({ min: null, max: 1.2, efficiency: true });
  });

  it.each([
    ['a number without its unit', { amperes: { min: '150', max: '210 A' } }, /amperes.*150/],
    ['a unit of something else', { amperes: { max: '210 V' } }, /amperes\.max.*210 V/],
    ['volts without a place', { volts: { max: '22 V' } }, /volts.*"at" is source, feeder or arc/s],
    ['ends exchanged', { amperes: { min: '210 A', max: '150 A' } }, /from "210 A" to "150 A"/],
    ['a misspelt field', { amperage: { max: '210 A' } }, /no field "amperage"/],
    ['a mode that is none', { mode: 'buried' }, /mode: .*buried/],
    ['a position that is none', { position: '9G' }, /position: .*9G/],
    ['pulses of a steady source', { mode: 'pulsed' }, /steady/],
    ['another form', { format: 'arc-transfer procedure 9' }, /procedure 9/],
    ['a share above all', { keep: { share: '120 %' } }, /120 %/],
    [
      'a tolerance in another unit',
      { volts: { nominal: '20 V', tolerance: '2 A', at: 'arc' } },
      /volts\.tolerance.*2 A/,
    ],
  ])('refuses %s and names it', (_, change, message) => {
    const error = errorOf({ ...DOCUMENT, ...change });
    expect(error.message).toMatch(message);
    expect(error.message).toMatch(/Expected/);
  });

  it.each([null, 7, 'text', []])('refuses %j, which is no document', (parsed) => {
    expect(errorOf(parsed).code).toBe('bad-procedure');
  });

  it('needs a name and a mode', () => {
    const { name: _, ...nameless } = DOCUMENT;
    expect(errorOf(nameless).message).toMatch(/name is missing/);
  });

  it('has a schema that asks for what reading asks for', () => {
    const schema = procedureJsonSchema() as { required: string[]; additionalProperties: boolean };
    expect(schema.required).toEqual(['format', 'name', 'mode']);
    expect(schema.additionalProperties).toBe(false);
  });
});
