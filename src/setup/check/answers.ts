import { MODES, type Mode } from '../../core/index.js';
import { boundaryText, rangeText } from '../index.js';
import type { Context } from './context.js';
import type { Answer } from './schema.js';

/** Below this the label is too weak to contradict anybody. */
export const SURE_ENOUGH = 0.6;
/** Share of the judged time that has to be in the wanted mode. */
const WANTED_SHARE = 0.85;

/** An answer with its reason. */
export interface Answered {
  answer: Answer;
  text: string;
}

const cannotTell = (text: string): Answered => ({ answer: 'cannot-tell', text });

/** Why neither question can be answered, or null. */
function noVerdict({ seen, modes }: Context): string | null {
  if (seen.status === 'no-arc') return 'No arc was found in the recording.';
  if (seen.status === 'failed') return 'The recording could not be analysed.';
  if (seen.status === 'unsure' || modes.length === 0) return 'The recording names no mode.';
  if (seen.confidence !== null && seen.confidence < SURE_ENOUGH) {
    return `The mode is named with a confidence of only ${percent(seen.confidence)}.`;
  }
  return null;
}

/** Do the settings permit what was seen? */
export function answerSettings(c: Context): Answered {
  const why = noVerdict(c);
  if (why !== null) return cannotTell(why);
  if (nothingStated(c)) return cannotTell('No setting was stated to compare with.');
  if (c.setup.polarity === 'dcen' || c.setup.polarity === 'ac') {
    return cannotTell(
      'The bands held here are for electrode positive; they say nothing about this polarity.',
    );
  }
  const words = c.modes.map((mode) => c.permitted[mode]);
  const what = c.modes.join(' and ');
  const place = placeText(c);
  if (words.includes('no')) {
    const outside = c.modes.filter((mode) => c.permitted[mode] === 'no');
    const lies = outside.map((mode) => `${mode} lies ${boundaryText(mode, c.bounds)}`);
    return { answer: 'disagrees', text: `${place} does not permit ${what}: ${lies.join('; ')}.` };
  }
  const others = MODES.filter((mode) => !c.modes.includes(mode) && c.permitted[mode] !== 'no');
  const alone = others.every((mode) => mode === 'pulsed-spray') && c.modes[0] !== 'pulsed-spray';
  if (words.every((word) => word === 'yes') || (alone && c.modes.length === 1)) {
    return { answer: 'agrees', text: `${place} permits ${what}.` };
  }
  return cannotTell(`${place} may give ${what}, but also ${others.join(' or ') || 'others'}.`);
}

function nothingStated({ judged, setup, bounds }: Context): boolean {
  const gasForbids = setup.gas !== null && bounds.spray === 'no';
  return (
    judged.voltageV === null && judged.currentA === null && !gasForbids && setup.source === null
  );
}

/** Is it the mode that was wanted? Null where none was stated. */
export function answerIntended(c: Context): Answered | null {
  const wanted = c.setup.expectedMode;
  if (wanted === null) return null;
  const why = noVerdict(c);
  if (why !== null) return cannotTell(why);
  const share =
    c.seen.mode === 'mixed'
      ? (c.seen.shareOfArcTime?.[wanted] ?? 0)
      : c.seen.mode === wanted
        ? 1
        : 0;
  if (share >= WANTED_SHARE) return { answer: 'agrees', text: `${wanted} was wanted and seen.` };
  const part = share > 0 ? ` (${wanted} for ${percent(share)} of the time)` : '';
  const seen = c.modes.join(' and ');
  return { answer: 'disagrees', text: `${wanted} was wanted; ${seen} was seen${part}.` };
}

/** The judged working point in words. */
export function placeText({ judged, setup }: Context): string {
  const parts = [
    judged.voltageV === null ? null : `${rangeText(judged.voltageV)} V at the feeder`,
    judged.currentA === null ? null : `${rangeText(judged.currentA, 0)} A`,
    setup.gas?.text ?? null,
    setup.source === null ? null : `a source said to run ${setup.source}`,
  ];
  return parts.filter((part) => part !== null).join(', ') || 'The set-up';
}

export const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** From cold to hot; pulsed spray counts as spray. */
const HEAT: Readonly<Record<Mode, number>> = {
  'short-circuit': 0,
  globular: 1,
  spray: 2,
  'pulsed-spray': 2,
};

/** True where the first mode needs less voltage and current than the second. */
export const colder = (a: Mode, b: Mode): boolean => HEAT[a] < HEAT[b];
