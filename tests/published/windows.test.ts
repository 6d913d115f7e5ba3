import { describe, expect, it } from 'vitest';
import { MODES, type Mode } from '../../src/core/index.js';
import {
  bandsFor,
  DIP_BANDS,
  GLOBULAR_BANDS,
  MODE_LETTERS,
  modeBoundaries,
  parseSetup,
  permitsAt,
  processName,
  qualificationNotes,
  SPRAY_BANDS,
  TAUGHT_HIGHEST_MODE_IN_CO2,
} from '../../src/setup/index.js';

const at = (gas: string, v: number, a: number, wire = '1.2mm') =>
  permitsAt(v, a, modeBoundaries(parseSetup({ wire, gas })), null);

/** Published single settings and windows (read in the source named), each near its middle. */
const PUBLISHED: readonly [Mode, string, string, number, number, string][] = [
  ['short-circuit', '0.030in', '75/25', 18, 100, "a manufacturer's data sheet, Table 6-1"],
  ['short-circuit', '0.035in', '75/25', 19, 135, "a manufacturer's data sheet, Table 6-1"],
  ['short-circuit', '0.045in', '75/25', 19.5, 160, "a manufacturer's data sheet, Table 6-1"],
  ['short-circuit', '1.2mm', '80/20', 17.5, 155, "a manufacturer's MAG table (a), butt 4.0 mm"],
  ['short-circuit', '1.0mm', '80/20', 16.5, 130, "a manufacturer's MAG table (a), butt 3.2 mm"],
  ['short-circuit', '1.2mm', '80/20', 18.7, 180, 'R. D. Smith, measured'],
  ['short-circuit', '1.0mm', '82/18', 14, 52, "a second manufacturer's table (b), butt 1.0 mm"],
  ['globular', '1.0mm', '92/8', 23.5, 190, "a gas supplier's handbook p. 7, chart as read here"],
  ['spray', '0.035in', '98/2 O2', 26.5, 230, "a manufacturer's data sheet, Table 6-2"],
  ['spray', '0.045in', '98/2 O2', 27, 260, "a manufacturer's data sheet, Table 6-2"],
];

describe('published windows lie where the boundaries put their mode', () => {
  it.each(PUBLISHED)('%s, %s in %s at %f V and %d A (%s)', (mode, wire, gas, v, a) => {
    const permitted = at(gas, v, a, wire);
    expect(permitted[mode]).toBe('yes');
    const rivals = MODES.filter((one) => one !== mode && one !== 'pulsed-spray');
    for (const rival of rivals) expect(permitted[rival]).not.toBe('yes');
  });

  // Secondary sources and practice, no primary: 1.2 mm, M21 160 A 17–18 V dip; 90/10 280 A 28 V spray;
  // C1 250 A 28 V globular.
  it('places three rows that rest on secondary texts', () => {
    expect(at('M21', 17.5, 160)['short-circuit']).toBe('yes');
    expect(at('90/10', 28, 280).spray).toBe('yes');
    expect(at('C1', 28, 250)).toMatchObject({ globular: 'yes', spray: 'no' });
  });

  it('never permits spray or pulsed spray in pure CO2 (Weld. World 2015, introduction)', () => {
    for (const v of [18, 24, 29, 34, 40]) {
      for (const a of [100, 250, 400]) {
        expect(at('CO2', v, a)).toMatchObject({ spray: 'no', 'pulsed-spray': 'no' });
      }
    }
  });

  it('holds the rows as they were read', () => {
    const row = (rows: typeof DIP_BANDS, source: string, mm: number) =>
      rows.find((one) => one.source.includes(source) && (one.diameterMm?.max ?? 0) === mm);
    // A manufacturer's data sheet, Tables 6-1 and 6-2.
    expect(row(DIP_BANDS, 'Table 6-1', 1.14)).toMatchObject({
      currentA: { min: 100, max: 225 },
      voltageV: { min: 17, max: 22 },
    });
    expect(row(SPRAY_BANDS, 'Table 6-2', 1.14)).toMatchObject({
      currentA: { min: 200, max: 315 },
      voltageV: { min: 24, max: 30 },
    });
    // Modern Welding (2020), Figs. 8-17 and 8-18.
    expect(row(SPRAY_BANDS, 'Fig. 8-17', 0.89)).toMatchObject({ currentA: { min: 180, max: 255 } });
    expect(row(SPRAY_BANDS, 'Fig. 8-18', 1.19)).toMatchObject({
      currentA: { min: 130, max: 200 },
      voltageV: { min: 22, max: 28 },
    });
  });

  it('gives every row a source and a certainty, and no range upside down', () => {
    for (const row of [...DIP_BANDS, ...GLOBULAR_BANDS, ...SPRAY_BANDS]) {
      expect(row.source.length).toBeGreaterThan(3);
      expect(['F', 'F2', 'M', 'CP', 'X']).toContain(row.certainty);
      for (const one of [row.currentA, row.voltageV, row.feedMPerMin, row.diameterMm]) {
        if (one !== null) expect(one.min).toBeLessThanOrEqual(one.max);
      }
    }
  });
});

// Common practice, no source: teaching figures for 0.045 in solid carbon-steel wire in pure CO2.
describe('the trade’s bands in pure CO2 (common practice, no source)', () => {
  const co2 = (v: number) => at('CO2', v, 200, '0.045in');

  it('short-circuit 18.5–24 V: held below 22 V, possible to 24 V, since published windows end at 22 V', () => {
    expect(co2(18.5)['short-circuit']).toBe('yes');
    expect(co2(21.9)['short-circuit']).toBe('yes');
    expect(co2(24)['short-circuit']).toBe('possible');
  });

  it('globular 26–28 V', () => {
    expect(co2(26.5).globular).toBe('yes');
    expect(co2(28).globular).toBe('yes');
  });

  it('24–26 V is nobody’s: no mode is held for sure', () => {
    expect(Object.values(co2(25))).not.toContain('yes');
  });

  it('28–30 V, "the highest mode": globular here, since pure CO2 gives no axial spray', () => {
    const { min, max } = TAUGHT_HIGHEST_MODE_IN_CO2.voltageV;
    expect([min, max]).toEqual([28, 30]);
    for (const v of [min, max]) expect(co2(v)).toMatchObject({ globular: 'yes', spray: 'no' });
  });

  it('keeps both teaching rows marked as common practice', () => {
    const taught = bandsFor(parseSetup({ wire: '0.045in', gas: 'CO2' })).filter(
      (row) => row.certainty === 'CP',
    );
    expect(taught.map((row) => [row.mode, row.voltageV])).toEqual([
      ['short-circuit', { min: 18.5, max: 24 }],
      ['globular', { min: 26, max: 28 }],
    ]);
  });
});

// ISO 4063:2023 Annex A, secondary copy.
describe('process letters', () => {
  it('D, G, S, P with 131 in inert and 135 in active gas, 13 where the gas is unknown', () => {
    expect(MODE_LETTERS).toEqual({
      'short-circuit': 'D',
      globular: 'G',
      spray: 'S',
      'pulsed-spray': 'P',
    });
    const gas = (text: string) => parseSetup({ gas: text }).gas;
    expect(processName('short-circuit', gas('argon'))).toBe('ISO 4063-131-D');
    expect(processName('spray', gas('M20'))).toBe('ISO 4063-135-S');
    expect(processName('pulsed-spray', null)).toBe('ISO 4063-13-P');
  });
});

// ASME IX QW-409.2 by way of API RP 577 §11.3, and ISO 15614-1 by a secondary copy.
describe('qualification', () => {
  it('speaks only of steps to or from short-circuit, and sends to the code each time', () => {
    for (const mode of ['globular', 'spray', 'pulsed-spray'] as const) {
      const notes = qualificationNotes('short-circuit', mode);
      expect(notes.length).toBeGreaterThan(1);
      expect(qualificationNotes(mode, 'short-circuit').length).toBe(notes.length);
      for (const note of notes) expect(note).toContain("Check your code's current edition.");
    }
    expect(qualificationNotes('spray', 'globular')).toEqual([]);
    expect(qualificationNotes('pulsed-spray', 'spray')).toEqual([]);
    expect(qualificationNotes('short-circuit', 'short-circuit')).toEqual([]);
  });
});
