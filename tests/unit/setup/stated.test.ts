import { describe, expect, it } from 'vitest';
import { meetsFailOn, parseFailOn } from '../../../src/apps/terminal/flags/fail-on.js';
import { ENGLISH, TERM_SETS, withTerms, withUnits } from '../../../src/messages/index.js';
import { type CrossCheck, crossCheck, crossCheckIn } from '../../../src/setup/check/index.js';
import { parseSetup } from '../../../src/setup/index.js';
import { sampleResult } from '../../support/sample-result.js';
import { seenAs, trace } from './check/situation.js';

const check = (
  setup: Record<string, string | number>,
  seen: Parameters<typeof seenAs>,
  more: ReturnType<typeof trace> = {},
): CrossCheck => crossCheck({ setup: parseSetup(setup), seen: { ...seenAs(...seen), ...more } });

const STEEL = { wire: '1.2mm', wireMaterial: 'carbon-steel', gas: 'Ar+8CO2' };

// Plain logic: a comparison needs two sides.
describe('settings disagree only with what was stated', () => {
  it('a trace alone states nothing', () => {
    const { settings, explanations } = check({}, ['spray'], trace(17, 120));
    expect(settings.answer).toBe('cannot-tell');
    expect(settings.code).toBe('no-setting-stated');
    expect(explanations.map((one) => one.id)).not.toContain('wrong-setting');
  });

  it('pulses that were heard are not a programme that was stated', () => {
    const heard = check({ ...STEEL, feederVolts: 18, measuredCurrent: 160 }, ['short-circuit'], {
      sourceProgramme: 'pulsed',
    });
    expect(heard.settings.text).not.toContain('source said to run');
    expect(heard.settings.answer).toBe('agrees');
  });

  it('a trace whose place is not stated stays of unknown place', () => {
    const open = check({ ...STEEL, wireFeed: '8m/min' }, ['globular'], trace(26, 240));
    expect(open.settings.text).toContain('place is not stated');
    const placed = check(
      { ...STEEL, wireFeed: '8m/min', traceVoltsAt: 'feeder' },
      ['globular'],
      trace(26, 240),
    );
    expect(placed.settings.text).toContain('at the feeder');
  });

  it('a meter of 22.0 V is not answered with the dial’s range', () => {
    const { settings } = check({ ...STEEL, setVoltage: 24, feederVolts: 22, wireFeed: '9m/min' }, [
      'short-circuit',
    ]);
    expect(settings.comparedVoltage).toContain('22.0 V');
    expect(settings.text).toMatch(/^21\.7–22\.3 V at the feeder/u);
  });

  it('volts that were given are not asked for again', () => {
    const { explanations } = check(
      { ...STEEL, feederVolts: 23.5, measuredCurrent: 300, expect: 'spray' },
      ['spray', { mode: 'mixed', shareOfArcTime: { spray: 0.8, 'short-circuit': 0.2 } }],
    );
    expect(explanations[0]?.id).toBe('cold-spray');
    expect(explanations[0]?.check).not.toMatch(/read the voltage/iu);
  });

  it('volts above the dial contradict the dial', () => {
    const { settings } = check({ ...STEEL, setVoltage: 20, feederVolts: 28, wireFeed: '9m/min' }, [
      'spray',
    ]);
    expect(settings.code).toBe('measured-above-dial');
  });
});

describe('settings and wanted mode are two conditions', () => {
  const answers = (settings: 'agrees' | 'disagrees', intended: 'agrees' | 'disagrees') => {
    const result = sampleResult({});
    const part = check(STEEL, ['spray']);
    return {
      ...result,
      crossCheck: {
        ...part,
        settings: { ...part.settings, answer: settings },
        intended: { answer: intended, text: '' },
      },
    };
  };

  it.each([
    ['settings-disagree', 'disagrees', 'agrees', true],
    ['settings-disagree', 'agrees', 'disagrees', false],
    ['wanted-disagrees', 'agrees', 'disagrees', true],
    ['wanted-disagrees', 'disagrees', 'agrees', false],
    ['disagrees', 'agrees', 'disagrees', true],
    ['disagrees', 'disagrees', 'agrees', true],
  ] as const)('--fail-on %s with settings %s and wanted %s: %s', (name, settings, wanted, met) => {
    expect(meetsFailOn(answers(settings, wanted), parseFailOn(name))).toBe(met);
  });
});

describe('the comparison in other units and names', () => {
  const stuckOut = check(
    { ...STEEL, feederVolts: 27, wireFeed: '8.5m/min', stickOut: '15mm', expect: 'spray' },
    ['globular'],
    trace(27, 232),
  );

  // Plain arithmetic: 26 to 27 mm are 1.0 to 1.1 in.
  it('says lengths in inches', () => {
    const inch = crossCheckIn(stuckOut, withUnits(ENGLISH, 'inch'));
    const texts = inch.explanations.flatMap((one) => one.evidenceFor).join(' ');
    expect(texts).toMatch(/A stick-out of about 1\.0\d? in would explain it/u);
    expect(texts).not.toMatch(/ mm\b/u);
  });

  it('names modes as the reader does, and leaves the document alone', () => {
    const iso = crossCheckIn(stuckOut, withTerms(ENGLISH, TERM_SETS.iso));
    expect(iso.intended?.text).toContain('spray arc (S) was wanted');
    expect(stuckOut.intended?.text).toContain('spray was wanted');
  });
});

describe('travel speed and plate are not ignored', () => {
  // 24 V, 160 A, 150 mm/min: 1.536 and 1.229 kJ/mm (a public worked example), meters at ±0.3 V and ±2 %.
  it('gives the energy along the seam both ways', () => {
    const { heatInput } = check(
      { ...STEEL, feederVolts: 24, measuredCurrent: 160, travelSpeed: '150mm/min' },
      ['globular'],
    );
    expect(heatInput!.arcEnergyKjPerMm.min).toBeLessThan(1.536);
    expect(heatInput!.arcEnergyKjPerMm.max).toBeGreaterThan(1.536);
    expect(heatInput!.heatInputKjPerMm.max / heatInput!.arcEnergyKjPerMm.max).toBeCloseTo(0.8, 9);
    const lacking = check({ ...STEEL, travelSpeed: '150mm/min' }, ['globular']);
    expect(lacking.heatInput).toBeUndefined();
    expect(lacking.heatNote).toContain('volts and amperes are missing');
  });

  it('warns of short-circuit on thick plate', () => {
    const { plateNote } = check({ ...STEEL, plate: '12mm' }, ['short-circuit']);
    expect(plateNote).toContain('lack of fusion');
    expect(check({ ...STEEL, plate: '12mm' }, ['spray']).plateNote).toContain('changes nothing');
    expect(check(STEEL, ['spray']).plateNote).toBeUndefined();
  });
});
