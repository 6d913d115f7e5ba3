import { MODES, type Mode, type Segment } from '../../../../src/core/index.js';
import { type CrossCheck, crossCheck, type Seen } from '../../../../src/setup/check/index.js';
import { parseSetup } from '../../../../src/setup/index.js';

/** A described situation. All of them are invented. */
export interface Situation {
  name: string;
  setup: Record<string, string | number>;
  seen: Partial<Seen>;
  /** Id that must rank first; null where nothing is to be explained. */
  first: string | null;
  /** Why it must. */
  because: string;
  settings: 'agrees' | 'disagrees' | 'cannot-tell';
  intended?: 'agrees' | 'disagrees' | 'cannot-tell';
}

/** What a good recording of one mode says: invented, sure, without doubts. */
export function seenAs(mode: Mode, more: Partial<Seen> = {}): Seen {
  const shares = Object.fromEntries(MODES.map((one) => [one, one === mode ? 0.94 : 0.02]));
  return {
    status: 'ok',
    mode,
    confidence: 0.94,
    probabilities: shares as Seen['probabilities'],
    shareOfArcTime: { [mode]: 1 } as Seen['shareOfArcTime'],
    segments: [{ startS: 0, endS: 10, mode, confidence: 0.94 }],
    figures: {},
    sourceProgramme: 'unknown',
    quality: [],
    kind: 'sound',
    ...more,
  };
}

/** Segments of equal length, one after the other. */
export function inTurn(modes: readonly Mode[], eachS = 2): Segment[] {
  return modes.map((mode, i) => ({
    startS: i * eachS,
    endS: (i + 1) * eachS,
    mode,
    confidence: 0.9,
  }));
}

/** Volts and amperes measured by a trace at the feeder. */
export const trace = (
  meanVoltageV: number,
  meanCurrentA: number | null = null,
  more: Record<string, number | null> = {},
): Partial<Seen> => ({
  kind: 'electrical',
  figures: { meanVoltageV, meanCurrentA, ...more },
});

export function judge({ setup, seen }: Pick<Situation, 'setup' | 'seen'>): CrossCheck {
  const base = seenAs((seen.mode === 'mixed' ? 'globular' : seen.mode) ?? 'globular');
  return crossCheck({ setup: parseSetup(setup), seen: { ...base, ...seen } });
}
