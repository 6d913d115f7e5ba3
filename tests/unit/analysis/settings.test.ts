import { describe, expect, it } from 'vitest';
import {
  defaultSettings,
  parseSettings,
  SETTINGS,
  settingsRecord,
} from '../../../src/analysis/index.js';
import { ArcError } from '../../../src/core/index.js';

const codeOf = (given: Record<string, unknown>): string => {
  try {
    parseSettings(given);
  } catch (error) {
    return error instanceof ArcError ? error.code : String(error);
  }
  return 'none';
};

describe('SETTINGS', () => {
  it('has defaults within their own range, one flag and one key each, and says why', () => {
    expect(new Set(SETTINGS.map((one) => one.flag)).size).toBe(SETTINGS.length);
    expect(new Set(SETTINGS.map((one) => one.key)).size).toBe(SETTINGS.length);
    for (const one of SETTINGS) {
      expect(one.default).toBeGreaterThanOrEqual(one.min);
      expect(one.default).toBeLessThanOrEqual(one.max);
      expect(one.why.length).toBeGreaterThan(20);
    }
  });

  it('names the unit in the key where there is one', () => {
    // House rule: names carry units. Rejects `soundWindow` in seconds.
    for (const one of SETTINGS) if (one.unit === 's') expect(one.key).toMatch(/S$/);
  });
});

describe('parseSettings', () => {
  it('takes defaults for what is absent', () => {
    expect(parseSettings({})).toEqual(defaultSettings());
    expect(parseSettings({ lookAheadS: undefined })).toEqual(defaultSettings());
  });

  it('reads numbers and text, with the unit or without', () => {
    expect(parseSettings({ lookAheadS: '2' }).lookAheadS).toBe(2);
    expect(parseSettings({ lookAheadS: '2 s' }).lookAheadS).toBe(2);
    expect(parseSettings({ lookAheadS: 2 }).lookAheadS).toBe(2);
  });

  it.each([
    [{ lookAheadS: '2ms' }, 'bad-setting'], // another unit is not guessed at
    [{ lookAheadS: 'long' }, 'bad-setting'],
    [{ lookAheadS: '' }, 'bad-setting'],
    [{ lookAheadS: Number.NaN }, 'bad-setting'],
    [{ lookAheadS: 11 }, 'bad-setting'], // above the range: no clamping
    [{ lookAheadS: -1 }, 'bad-setting'],
    [{ answerThreshold: '60%' }, 'bad-setting'],
    [{ lookAhead: 1 }, 'unknown-setting'],
  ])('refuses %j', (given, code) => {
    expect(codeOf(given)).toBe(code);
  });

  it('says value, range and default in the message, and guesses a misspelt key', () => {
    expect(() => parseSettings({ lookAheadS: '99' })).toThrow(
      /--look-ahead was given "99".*0 to 10 s.*default of 1 s/,
    );
    expect(() => parseSettings({ lookAhedS: 1 })).toThrow(/Did you mean "lookAheadS"/);
  });
});

describe('settingsRecord', () => {
  it('changes its fingerprint with every single setting', () => {
    // Rejects a fingerprint that leaves a setting out: two different runs would look the same.
    const base = settingsRecord(defaultSettings()).fingerprint;
    const others = SETTINGS.map((one) => {
      const changed = { ...defaultSettings(), [one.key]: one.default * 0.999 };
      return settingsRecord(changed).fingerprint;
    });
    expect(new Set([base, ...others]).size).toBe(SETTINGS.length + 1);
  });
});
