import { describe, expect, it } from 'vitest';
import { isArcError } from '../../../src/core/index.js';
import { parseSetup, SETUP_OPTIONS } from '../../../src/setup/index.js';

function refusal(raw: Record<string, string | number>): { code: string; message: string } {
  try {
    parseSetup(raw);
  } catch (error) {
    if (isArcError(error)) return { code: error.code, message: error.message };
    throw error;
  }
  return { code: 'accepted', message: '' };
}

describe('what is read', () => {
  it('knows nothing of an empty set-up', () => {
    const { notes, unknown, ...rest } = parseSetup({});
    expect(Object.values(rest).every((value) => value === null)).toBe(true);
    expect([notes, unknown]).toEqual([[], []]);
  });

  // Plain arithmetic on 25.4 mm to the inch.
  it.each([
    [{ wire: '1.2mm' }, 'wireDiameterMm', 1.2],
    [{ wire: '1,2 mm' }, 'wireDiameterMm', 1.2],
    [{ 'wire-diameter': '0.045in' }, 'wireDiameterMm', 1.143],
    [{ '--wire-diameter': '.035"' }, 'wireDiameterMm', 0.889],
    [{ wireDiameter: '1/16in' }, 'wireDiameterMm', 1.5875],
    [{ wireFeed: '6m/min' }, 'wireFeedMPerMin', 6],
    [{ wireFeed: '240in/min' }, 'wireFeedMPerMin', 6.096],
    [{ wireFeed: '240 ipm' }, 'wireFeedMPerMin', 6.096],
    [{ wireFeed: '100 mm/s' }, 'wireFeedMPerMin', 6],
    [{ stickOut: '5/8 in' }, 'stickOutMm', 15.875],
    [{ setVoltage: 24 }, 'setVoltageV', 24],
    [{ setVoltage: '18.5 V' }, 'setVoltageV', 18.5],
    [{ cableLength: '50ft' }, 'cableLengthM', 15.24],
    [{ sourceSlope: '25mohm' }, 'sourceSlopeVPer100A', 2.5],
    [{ travelSpeed: '5mm/s' }, 'travelSpeedMmPerMin', 300],
  ] as const)('%o', (raw, key, value) => {
    expect(parseSetup(raw)[key]).toBeCloseTo(value, 9);
  });

  it.each([
    ['ER70S-6', 'carbon-steel'],
    ['G3Si1', 'carbon-steel'],
    ['mild steel', 'carbon-steel'],
    ['ER308LSi', 'stainless-steel'],
    ['316L', 'stainless-steel'],
    ['stainless', 'stainless-steel'],
    ['ER5356', 'aluminium'],
    ['aluminum', 'aluminium'],
    ['AlMg5', 'aluminium'],
  ])('wire %s is %s', (text, material) => {
    expect(parseSetup({ wireMaterial: text }).wireMaterial).toBe(material);
  });

  it.each([
    ['dip', 'short-circuit'],
    ['Short Circuit', 'short-circuit'],
    ['S', 'spray'],
    ['pulse', 'pulsed-spray'],
    ['GMAW-S', 'short-circuit'],
  ])('wanted mode %s is %s', (text, mode) => {
    expect(parseSetup({ expect: text }).expectedMode).toBe(mode);
  });

  it('keeps what is unknown as unknown, for every option', () => {
    const raw = Object.fromEntries(SETUP_OPTIONS.map((one) => [one.key, 'unknown']));
    const setup = parseSetup(raw);
    expect(setup.unknown).toEqual(SETUP_OPTIONS.map((one) => one.key));
    expect(setup.setVoltageV).toBeNull();
  });

  it('reads every example that the help shows', () => {
    for (const { key, example } of SETUP_OPTIONS) {
      expect(refusal({ [key]: example })).toMatchObject({ code: 'accepted' });
    }
  });

  it('says which common meaning it took', () => {
    expect(parseSetup({ gas: '75/25' }).notes[0]?.message).toContain('read as Ar + 25 % CO2');
    expect(parseSetup({ gas: 'Ar+25CO2' }).notes).toEqual([]);
  });
});

// Each refusal names the value and guesses the mistake. Rejects: clamping, silent defaults, and
// messages that only say "invalid".
describe('what is refused, with a guess', () => {
  it.each([
    [{ wire: '1.2' }, 'missing-unit', '1.2mm'],
    [{ wire: '045' }, 'missing-unit', '0.045in'],
    [{ wire: '1.2in' }, 'impossible-value', '1.2mm'],
    [{ wire: '12mm' }, 'impossible-value', '1.2mm'],
    [{ wire: '0.045mm' }, 'impossible-value', '0.045in'],
    [{ wire: '1.2kg' }, 'bad-unit', '1.2mm'],
    [{ wireFeed: '240' }, 'missing-unit', '240in/min'],
    [{ wireFeed: '240m/min' }, 'impossible-value', '240in/min'],
    [{ wireFeed: '8in/min' }, 'impossible-value', '8m/min'],
    [{ wireFeed: 'fast' }, 'bad-quantity', '6m/min'],
    [{ setVoltage: 240 }, 'impossible-value', '24V'],
    [{ setVoltage: 4 }, 'impossible-value', 'tap numbers'],
    [{ stickOut: '150mm' }, 'impossible-value', '15mm'],
    [{ gas: '95/5' }, 'ambiguous-gas', 'Ar+5O2'],
    [{ gas: '98/2' }, 'ambiguous-gas', 'Ar+2CO2'],
    [{ gas: '25/75' }, 'ambiguous-gas', '75He+25Ar'],
    [{ gas: '90/7.5/2.5' }, 'ambiguous-gas', '90He+7.5Ar+2.5CO2'],
    [{ gas: 'C2' }, 'ambiguous-gas', 'ISO 14175-C2'],
    [{ gas: 'M2' }, 'bad-gas', 'M21'],
    [{ gas: 'Ar+CO2' }, 'bad-gas', 'Ar+18CO2'],
    [{ gas: '80Ar+30CO2' }, 'bad-gas', '110 %'],
    [{ gas: 'M21-ArC-11' }, 'contradictory-gas', 'M20'],
    [{ wireMaterial: 'E71T-1' }, 'cored-wire', 'solid wire'],
    [{ wireMaterial: 'flux-cored' }, 'cored-wire', 'solid wire'],
    [{ wireMaterial: 'metal cored' }, 'cored-wire', 'solid wire'],
    [{ wireMaterial: 'E70C-6M' }, 'cored-wire', 'solid wire'],
    [{ wireMaterial: 'copper' }, 'bad-wire-material', 'unknown'],
    [{ expect: 'spry' }, 'bad-choice', 'spray'],
    [{ expect: 'rotating spray' }, 'unsupported-mode', 'unsure'],
    [{ expect: 'buried arc' }, 'unsupported-mode', 'unsure'],
    [{ polarity: 'up' }, 'bad-choice', 'dcep'],
    [{ wirediam: '1.2mm' }, 'unknown-setup-key', 'wireDiameter'],
    [{ setVolts: '20' }, 'unknown-setup-key', 'setVoltage'],
    [{ wire: '1.2mm', 'wire-diameter': '1.0mm' }, 'contradictory-setup', 'twice'],
    [{ wire: '1.2mm', wireDiameter: 'unknown' }, 'contradictory-setup', 'twice'],
    [{ feederVolts: 24, sourceVolts: 22 }, 'contradictory-setup', 'swapped'],
    [{ expect: 'pulsed', source: 'steady' }, 'contradictory-setup', '--source pulsed'],
    [{ wireMaterial: 'aluminium', gas: 'C25' }, 'impossible-pair', 'argon'],
    [{ wireMaterial: 'aluminium', gas: 'CO2' }, 'impossible-pair', 'argon'],
    [{ wireMaterial: 'ER4043', gas: '98/2 O2' }, 'impossible-pair', 'argon'],
    [{ wireMaterial: 'aluminium', gas: 'M21' }, 'impossible-pair', 'argon'],
  ] as [Record<string, string | number>, string, string][])('%o: %s, %s', (raw, code, guess) => {
    const found = refusal(raw);
    expect(found.code).toBe(code);
    expect(found.message).toContain(guess);
  });

  it('lets aluminium be welded in what it is welded in', () => {
    for (const gas of ['argon', 'I1', 'I3', '75He+25Ar', 'Ar+30He', 'Z-ArO-0.05']) {
      expect(refusal({ wireMaterial: 'aluminium', gas }).code).toBe('accepted');
    }
  });

  it('refuses values that are no text or number', () => {
    const raw = { gas: true } as unknown as Record<string, string>;
    expect(refusal(raw).code).toBe('bad-setup-value');
    expect(refusal({ setVoltage: Number.NaN }).code).toBe('bad-setup-value');
  });
});
