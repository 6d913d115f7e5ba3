import { hardToSee } from '../../analysis/index.js';
import { MODES, type Mode } from '../../core/index.js';
import { MODE_WORDS, percent } from '../view/index.js';
import type { GoodWelds } from './reference-welds.js';

/** What was learned from good welds, in lines for a person. */
export function sayLearned(good: GoodWelds): string[] {
  return [...allowed(good), ...contradictions(good)];
}

function allowed({ recordings, kind, modeBias }: GoodWelds): string[] {
  const { expected, windows, taken, off } = modeBias;
  const wanted = MODE_WORDS[expected].name;
  const from = `${recordings.length} good recording(s), ${windows} windows: ${wanted}`;
  const others = MODES.filter((mode) => off[mode] > 0).map(
    (mode) => `${MODE_WORDS[mode].name} at ${percent(taken[mode])}`,
  );
  if (others.length === 0) return [`${from} was recognised; nothing to allow for`];
  const missed = hardToSee(modeBias, kind).map((mode) => MODE_WORDS[mode].name);
  const learned = `${from} was taken for ${others.join(' and ')}; the alarm allows for it`;
  if (missed.length === 0) return [learned];
  return [
    learned,
    `So much is allowed for that most departures to ${missed.join(' and ')} will raise no alarm.`,
  ];
}

/** Welds of one mode should be taken for one, right or wrong; those taken for none say nothing. */
function contradictions({ recordings, takenFor }: GoodWelds): string[] {
  const modes = new Set(takenFor.filter((mode) => mode !== null));
  if (modes.size < 2) return [];
  const of = (mode: Mode): string => {
    const names = recordings.filter((_, i) => takenFor[i] === mode);
    return `${names.join(', ')} for ${MODE_WORDS[mode].name}`;
  };
  const each = [...modes].map(of).join('; ');
  return [
    `The good welds are not alike: ${each}. Look at them again: one may not be in the mode it is vouched for.`,
  ];
}
