import { capital, type Mode, type UnitSystem } from '../../../core/index.js';
import { TERM_SETS, withTerms, withUnits } from '../../../messages/index.js';
import type { HeatCount, Words } from './words.js';

/** What a reader goes by; what is left out stays as it is. */
export interface Reader {
  units?: UnitSystem | undefined;
  terms?: keyof typeof TERM_SETS | undefined;
  heat?: HeatCount | undefined;
}

/** The same language in the units and with the names of the modes that a reader goes by. */
export function wordsFor(words: Words, { units, terms, heat }: Reader): Words {
  const inUnits: Words = {
    ...words,
    heat: heat ?? words.heat,
    ...(units !== undefined &&
      units !== words.units && { units, sentences: withUnits(words.sentences, units) }),
  };
  if (terms === undefined) return inUnits;
  const names = namesOf(inUnits, terms);
  const { result, sentences } = inUnits;
  return {
    ...inUnits,
    sentences: withTerms(sentences, names),
    mode: (mode) => names[mode],
    result: {
      ...result,
      // The letter stands beside the headline.
      transfer: (mode) =>
        mode === 'mixed' ? result.transfer(mode) : capital(names[mode].replace(/ \([^)]+\)$/u, '')),
    },
  };
}

/** The terms are English; other languages keep their names and add the letters. */
function namesOf(words: Words, terms: keyof typeof TERM_SETS): Record<Mode, string> {
  const set = TERM_SETS[terms];
  if (words.lang === 'en') return set;
  const named = (mode: Mode): string =>
    [words.mode(mode), /\([^)]+\)$/u.exec(set[mode])?.[0]].filter(Boolean).join(' ');
  return {
    'short-circuit': named('short-circuit'),
    globular: named('globular'),
    spray: named('spray'),
    'pulsed-spray': named('pulsed-spray'),
  };
}
