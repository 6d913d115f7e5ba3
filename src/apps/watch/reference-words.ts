import { hardToSee } from '../../analysis/index.js';
import { MODES, type Mode } from '../../core/index.js';
import type { Words } from '../view/index.js';
import type { GoodWelds } from './reference-welds.js';

/** What was learned from good welds, in lines for a person. */
export function sayLearned(good: GoodWelds, words: Words): string[] {
  return [...allowed(good, words), ...contradictions(good, words)];
}

function allowed({ recordings, kind, modeBias }: GoodWelds, words: Words): string[] {
  const { expected, windows, taken, off } = modeBias;
  const { good } = words.watch;
  const count = recordings.length;
  const wanted = words.mode(expected);
  const others = MODES.filter((mode) => off[mode] > 0).map((mode) =>
    good.other(words.mode(mode), words.numbers.percent(taken[mode])),
  );
  if (others.length === 0) return [good.recognised(count, windows, wanted)];
  const missed = hardToSee(modeBias, kind).map((mode) => words.mode(mode));
  const learned = good.takenFor(count, windows, wanted, others);
  return missed.length === 0 ? [learned] : [learned, good.missed(missed)];
}

/** Welds of one mode should be taken for one, right or wrong; those taken for none say nothing. */
function contradictions({ recordings, takenFor }: GoodWelds, words: Words): string[] {
  const modes = new Set(takenFor.filter((mode) => mode !== null));
  if (modes.size < 2) return [];
  const { good } = words.watch;
  const of = (mode: Mode): string => {
    const names = recordings.filter((_, i) => takenFor[i] === mode);
    return good.each(names, words.mode(mode));
  };
  return [good.unlike([...modes].map(of))];
}
