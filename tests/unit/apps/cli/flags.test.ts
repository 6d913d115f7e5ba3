import { describe, expect, it } from 'vitest';
import { meetsFailOn, parseFailOn } from '../../../../src/apps/terminal/flags/fail-on.js';
import { readReading } from '../../../../src/apps/terminal/flags/reading-flags.js';
import { readSetup } from '../../../../src/apps/terminal/flags/setup-flags.js';
import { sampleResult } from '../../../support/sample-result.js';
import { scratch } from '../../../support/scratch.js';

describe('readReading', () => {
  it('reads channels, columns, factors and the rate', () => {
    expect(
      readReading({
        channel: 'voltage=1, current=2',
        scale: 'voltage=100,current=-1000',
        sampleRate: '20 kHz',
      }),
    ).toEqual({
      channelMap: { voltage: 1, current: 2 },
      scale: { voltage: 100, current: -1000 },
      sampleRateHz: 20000,
    });
    // A column name may hold a comma.
    expect(readReading({ map: 'voltage=U, arc,time=t' }).channelMap).toEqual({
      voltage: 'U, arc',
      time: 't',
    });
    expect(readReading({})).toEqual({});
  });

  it.each([
    [{ channel: 'volts=1' }],
    [{ channel: 'voltage=0' }], // channels count from 1
    [{ channel: 'voltage=one' }],
    [{ channel: 'voltage' }],
    [{ channel: 'voltage=1,voltage=2' }],
    [{ channel: 'voltage=1', map: 'voltage=U' }], // said twice
    [{ scale: 'voltage=0' }],
    [{ scale: 'voltage=' }],
    [{ sampleRate: '0' }],
    [{ sampleRate: '-5' }],
    [{ sampleRate: '20 kV' }],
  ])('refuses %j', (options) => {
    expect(() => readReading(options)).toThrow(expect.objectContaining({ name: 'ArcError' }));
  });
});

describe('readSetup', () => {
  it('lets a flag win over the file, whatever the spelling in the file', async () => {
    const folder = scratch({ 's.json': '{"set-voltage": 30, "wire": "1.2mm", "gas": "C1"}' });
    const setup = await readSetup({
      setup: `${folder}/s.json`,
      setVoltage: '22V',
      wireDiameter: '1.0mm',
    });
    expect(setup.setVoltageV).toBe(22);
    expect(setup.wireDiameterMm).toBe(1);
    expect(setup.gas).not.toBeNull();
  });

  it.each([['[1]'], ['{"set'], ['{"sett-voltage": 3}']])('refuses the file %s', async (content) => {
    const folder = scratch({ 's.json': content });
    await expect(readSetup({ setup: `${folder}/s.json` })).rejects.toMatchObject({
      name: 'ArcError',
    });
  });
});

describe('--fail-on', () => {
  it('meets either answer of the cross-check', () => {
    const settings = {
      answer: 'agrees' as const,
      text: '',
      comparedVoltage: null,
      marginV: null,
      marginA: null,
    };
    const intended = { answer: 'disagrees' as const, text: '' };
    const result = sampleResult({ crossCheck: { settings, intended, explanations: [] } });
    expect(meetsFailOn(result, parseFailOn('disagrees'))).toBe(true);
    expect(meetsFailOn(result, parseFailOn('cannot-tell,unsure'))).toBe(false);
  });

  it('guesses a misspelt word', () => {
    expect(() => parseFailOn('unsrue')).toThrow(/Did you mean "unsure"/);
  });
});
