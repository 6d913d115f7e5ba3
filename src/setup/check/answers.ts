import { MODES, type Mode } from '../../core/index.js';
import { type Made, message, type Place, said } from '../../messages/index.js';
import { gasName, sayBoundary } from '../index.js';
import type { Context } from './context.js';
import type { Answer } from './schema.js';

/** Below this the label is too weak to contradict anybody. */
export const SURE_ENOUGH = 0.6;
/** Share of the judged time that has to be in the wanted mode. */
const WANTED_SHARE = 0.85;

/** An answer with its reason. */
export interface Answered extends Made {
  answer: Answer;
}

const answered = (answer: Answer, reason: Made): Answered => ({ answer, ...reason });
const cannotTell = (reason: Made): Answered => answered('cannot-tell', reason);

/** Why neither question can be answered, or null. */
function noVerdict({ seen, modes }: Context): Made | null {
  if (seen.status === 'no-arc') return message('nothing-found');
  if (seen.status === 'failed') return message('not-analysed');
  if (seen.status === 'unsure' || modes.length === 0) return message('no-mode-named');
  if (seen.confidence !== null && seen.confidence < SURE_ENOUGH) {
    return message('confidence-only', { confidence: seen.confidence });
  }
  return null;
}

/** Do the settings permit what was seen? */
export function answerSettings(c: Context): Answered {
  const why = noVerdict(c);
  if (why !== null) return cannotTell(why);
  if (nothingStated(c)) return cannotTell(message('no-setting-stated'));
  if (c.setup.polarity === 'dcen' || c.setup.polarity === 'ac') {
    return cannotTell(message('polarity-not-held'));
  }
  const words = c.modes.map((mode) => c.permitted[mode]);
  const place = placeOf(c);
  const { modes } = c;
  if (words.includes('no')) {
    const outside = modes
      .filter((mode) => c.permitted[mode] === 'no')
      .map((mode) => ({ mode, where: said(sayBoundary(mode, c.bounds)) }));
    return answered('disagrees', message('setup-forbids', { place, modes, outside }));
  }
  const others = MODES.filter((mode) => !modes.includes(mode) && c.permitted[mode] !== 'no');
  const alone = others.every((mode) => mode === 'pulsed-spray') && modes[0] !== 'pulsed-spray';
  if (words.every((word) => word === 'yes') || (alone && modes.length === 1)) {
    return answered('agrees', message('setup-permits', { place, modes }));
  }
  return cannotTell(message('setup-leaves-open', { place, modes, others }));
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
  if (share >= WANTED_SHARE) return answered('agrees', message('wanted-and-seen', { wanted }));
  const seen = { wanted, seen: c.modes, shareOfTime: share };
  return answered('disagrees', message('wanted-not-seen', seen));
}

function placeOf({ judged, setup }: Context): Place {
  return {
    feederV: judged.voltageV,
    currentA: judged.currentA,
    gas: setup.gas && gasName(setup.gas),
    source: setup.source,
  };
}

/** From cold to hot; pulsed spray counts as spray. */
const HEAT: Readonly<Record<Mode, number>> = {
  'short-circuit': 0,
  globular: 1,
  spray: 2,
  'pulsed-spray': 2,
};

/** True where the first mode needs less voltage and current than the second. */
export const colder = (a: Mode, b: Mode): boolean => HEAT[a] < HEAT[b];
