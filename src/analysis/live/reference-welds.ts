import { MODES, type Mode, type RecordingKind } from '../../core/index.js';
import { mean } from '../../dsp/index.js';
import { type LiveBelief, liveBelief } from './live-mode.js';

/**
 * How far a model takes welds that a person vouches for, all in one mode, for another, and what an alarm
 * takes off for it. It says nothing of which mode is there.
 */
export interface ModeBias {
  expected: Mode;
  /** Windows of steady arc that it was learned from. */
  windows: number;
  /** Mean probability of each mode over them, each weld counting alike. */
  taken: Record<Mode, number>;
  /** Taken off the natural logarithm of the odds of each mode against the expected one; 0 for nothing. */
  off: Record<Mode, number>;
}

/** A lower probability counts as this one, so that no window outweighs all others. Own choice. */
const LEAST = 1e-4;
/**
 * Odds of another mode against the expected one down to which good welds are brought at one standard deviation
 * above their mean; the alarm begins to count at 19. By sound, on 60 drawn cells of families that the scorers
 * had not seen, this left 42 of 180 false alarms an hour, and 70 % of departures raised one; means brought to
 * 0.05, as a well-recognised weld has it, left 30 and 63 %; nothing at all, 62 % (own measurement).
 */
const LEFT = Math.log(3);
/**
 * Log-odds of the mode that is there against the expected one from 1.5 s after a departure: median over drawn
 * cells, 7.1 with voltage and current and 4.6 by sound where the scorers had not seen the family (own measurement).
 */
const DEPARTED: Record<RecordingKind, number> = { electrical: 7, sound: 4.5 };
/** Log-odds at which the expected mode is left the 5 % of the alarm, were there no third mode. */
const OUT = Math.log(19);

/** The beliefs at the windows of each good weld, at least one, in the order of {@link MODES}. */
type Welds = readonly (readonly Float64Array[])[];

/** Learns from good welds. A long one counts no more than a short one. */
export function learnModeBias(expected: Mode, welds: Welds): ModeBias {
  const at = MODES.indexOf(expected);
  const log = (p: number): number => Math.log(Math.max(LEAST, p));
  const odds = (k: number) => (p: Float64Array) => log(p[k]!) - log(p[at]!);
  return {
    expected,
    windows: welds.reduce((sum, beliefs) => sum + beliefs.length, 0),
    taken: each((k) => evenly(welds, (p) => p[k]!)),
    off: each((k) => (k === at ? 0 : Math.max(0, high(welds, odds(k)) - LEFT))),
  };
}

/** The mode that a weld is taken for by the beliefs at its windows; null where none is likelier than all the others together. */
export function takenFor(beliefs: readonly Float64Array[]): Mode | null {
  return liveBelief(Float64Array.from(MODES, (_, k) => mean(beliefs.map((p) => p[k]!)))).mode;
}

/** The belief by which an alarm judges: that of the model, less what is allowed for. */
export function allowFor(belief: LiveBelief, { off }: ModeBias): LiveBelief {
  const weights = belief.probabilities.map((p, k) => p * Math.exp(-off[MODES[k]!]));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return liveBelief(weights.map((weight) => weight / sum));
}

/** Modes to which a departure will more often than not raise no alarm, so much is taken off them. */
export function hardToSee({ off }: ModeBias, kind: RecordingKind): Mode[] {
  return MODES.filter((mode) => DEPARTED[kind] - off[mode] < OUT);
}

function each(value: (k: number) => number): Record<Mode, number> {
  return Object.fromEntries(MODES.map((mode, k) => [mode, value(k)])) as Record<Mode, number>;
}

type Value = (p: Float64Array) => number;

/** Mean over the windows, each weld counting alike. */
function evenly(welds: Welds, value: Value): number {
  return mean(welds.map((beliefs) => mean(beliefs.map(value))));
}

/** Mean and one standard deviation above it. */
function high(welds: Welds, value: Value): number {
  const middle = evenly(welds, value);
  return middle + Math.sqrt(evenly(welds, (p) => (value(p) - middle) ** 2));
}
