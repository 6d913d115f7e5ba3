import { MODES, type Mode } from '../core/index.js';
import { type Made, message } from '../messages/index.js';

/** The modes that remain where no single one can be named. */
export interface RemainingModes {
  /** In the order of `MODES`; at least two, and not all. */
  modes: Mode[];
  /** Probability that the mode is one of them. */
  probability: number;
}

/** Probability from which a set of modes is an answer: higher than for one mode, since it says less. Own choice. */
const TOGETHER = 0.85;
/** Probability below which a mode outside the set is ruled out in so many words. Own choice. */
const RULED_OUT = 0.05;
/** Modes in which drops cross free, told apart by their size alone. */
const FREE_DROPS: readonly Mode[] = ['globular', 'spray'];

/** The smallest set of likeliest modes that together are likely enough; null where that takes all of them. */
export function remainingModes(probabilities: Record<Mode, number>): RemainingModes | null {
  const ranked = MODES.toSorted((a, b) => probabilities[b] - probabilities[a]);
  for (let count = 2; count < MODES.length; count++) {
    const set = ranked.slice(0, count);
    const probability = sumOf(set, probabilities);
    if (probability >= TOGETHER)
      return { modes: MODES.filter((mode) => set.includes(mode)), probability };
  }
  return null;
}

/** Drops that cross free, of a size that is not audible; null where they are less likely than `least`. */
export function freeDrops(
  probabilities: Record<Mode, number>,
  least: number,
): RemainingModes | null {
  const probability = sumOf(FREE_DROPS, probabilities);
  return probability >= least ? { modes: [...FREE_DROPS], probability } : null;
}

/** The answer in words: what it may be, and what it is not. */
export function oneOf({ modes, probability }: RemainingModes, of: Record<Mode, number>): Made {
  const not = MODES.filter((mode) => !modes.includes(mode) && of[mode] < RULED_OUT);
  return message('one-of-modes', { modes, probability, not });
}

function sumOf(modes: readonly Mode[], probabilities: Record<Mode, number>): number {
  return modes.reduce((sum, mode) => sum + probabilities[mode], 0);
}
