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
  const place = placeOf(c);
  const { modes } = c;
  const high = c.losses.find((loss) => loss.from === 'set' && loss.volts < -1);
  if (high !== undefined && c.voltageAstray) {
    const { fromV: setV, toV: measuredV } = high;
    return answered('disagrees', message('measured-above-dial', { setV, measuredV }));
  }
  const outside = modes.filter((mode) => c.permitted[mode] === 'no');
  if (outside.length > 0) {
    const lies = outside.map((mode) => ({ mode, where: said(sayBoundary(mode, c.bounds)) }));
    return answered('disagrees', message('setup-forbids', { place, modes, outside: lies }));
  }
  const others = MODES.filter((mode) => !modes.includes(mode) && c.permitted[mode] !== 'no');
  if (expects(c)) return answered('agrees', message('setup-permits', { place, modes }));
  return cannotTell(message('setup-leaves-open', { place, modes, others }));
}

/** Share of the time that the modes seen have to be expected to take together. */
const EXPECTED_SHARE = 0.75;

function expects({ modes, permitted, shares }: Context): boolean {
  if (modes.every((mode) => permitted[mode] === 'yes')) return true;
  if (shares === null) {
    const others = MODES.filter((mode) => !modes.includes(mode) && permitted[mode] !== 'no');
    return others.every((mode) => mode === 'pulsed-spray') && modes.length === 1;
  }
  return modes.reduce((sum, mode) => sum + shares[mode], 0) >= EXPECTED_SHARE;
}

/** A trace alone states no setting: nothing can disagree with it. A gas counts where it forbids what was seen. */
function nothingStated({ setup, bounds, modes }: Context): boolean {
  const sprays = modes.some((mode) => mode === 'spray' || mode === 'pulsed-spray');
  const gasForbids = setup.gas !== null && bounds.spray === 'no' && sprays;
  const stated = [
    setup.setVoltageV,
    setup.wireFeedMPerMin,
    setup.sourceVoltsV,
    setup.feederVoltsV,
    setup.arcVoltsV,
    setup.measuredCurrentA,
    setup.source,
  ];
  return stated.every((one) => one === null) && !gasForbids && !wireAndGas(setup);
}

/** Wire and gas together say what a measured trace should give. */
function wireAndGas({ wireDiameterMm, gas }: Context['setup']): boolean {
  return wireDiameterMm !== null && gas !== null;
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

function placeOf({ judged, setup, voltsBy }: Context): Place {
  return {
    feederV: judged.voltageV,
    voltsBy,
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
