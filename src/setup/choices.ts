import { MODES, type Mode } from '../core/index.js';
import { message, refuse } from '../messages/index.js';
import { choose } from './choose.js';

export const POLARITIES = ['dcep', 'dcen', 'ac'] as const;
export type Polarity = (typeof POLARITIES)[number];

export const VOLTS_AT = ['source', 'feeder', 'arc'] as const;
export type VoltsAt = (typeof VOLTS_AT)[number];

export const SOURCE_KINDS = ['steady', 'pulsed'] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

const MODE_WORDS: Readonly<Record<string, Mode>> = {
  'short-circuit': 'short-circuit',
  'short-circuiting': 'short-circuit',
  'short-arc': 'short-circuit',
  short: 'short-circuit',
  dip: 'short-circuit',
  kurzlichtbogen: 'short-circuit',
  'gmaw-s': 'short-circuit',
  d: 'short-circuit',
  globular: 'globular',
  g: 'globular',
  'gmaw-g': 'globular',
  grosstropfig: 'globular',
  großtropfig: 'globular',
  spray: 'spray',
  'axial-spray': 'spray',
  sprühlichtbogen: 'spray',
  s: 'spray',
  'pulsed-spray': 'pulsed-spray',
  pulsed: 'pulsed-spray',
  pulse: 'pulsed-spray',
  impulslichtbogen: 'pulsed-spray',
  'gmaw-p': 'pulsed-spray',
  p: 'pulsed-spray',
};

const POLARITY_WORDS: Readonly<Record<string, Polarity>> = {
  dcep: 'dcep',
  'dc+': 'dcep',
  reverse: 'dcep',
  dcen: 'dcen',
  'dc-': 'dcen',
  straight: 'dcen',
  ac: 'ac',
};

const asIs = <T extends string>(words: readonly T[]): Readonly<Record<string, T>> =>
  Object.fromEntries(words.map((word) => [word, word])) as Record<string, T>;

/** The wanted mode from its usual names or its ISO 4063 letter. */
export function parseExpectedMode(raw: string): Mode {
  const text = raw.trim().toLowerCase().replaceAll(/[ _]/gu, '-');
  if (/rotat|buried|stream|^b$/u.test(text)) {
    throw refuse('unsupported-mode', {
      what: message('mode-not-given', { stated: raw }),
      expected: message('expected-choice', { choices: [...MODES] }),
      todo: message('unsure-never-label'),
    });
  }
  return choose('wanted mode', raw, modeWord(text), MODE_WORDS);
}

/** The word without what may stand around it: `dip transfer`, `spray arc`, `ISO 4063-135-D`. */
function modeWord(text: string): string {
  const process = /^(?:iso-?4063-?)?13[158]?-([dgsp])$/u.exec(text)?.[1];
  if (process !== undefined) return process;
  const bare = text.replace(/-(?:metal-)?(?:transfer|arc|mode|welding)$/u, '');
  return Object.hasOwn(MODE_WORDS, text) ? text : bare;
}

export function parsePolarity(raw: string): Polarity {
  return choose('polarity', raw, raw.trim().toLowerCase(), POLARITY_WORDS);
}

export function parseVoltsAt(raw: string): VoltsAt {
  return choose('place of the voltage', raw, raw.trim().toLowerCase(), asIs(VOLTS_AT));
}

export function parseSourceKind(raw: string): SourceKind {
  return choose('source', raw, raw.trim().toLowerCase(), asIs(SOURCE_KINDS));
}
