import type { Result } from '../../analysis/result/index.js';
import { MODES, type Mode, totalS } from '../../core/index.js';
import { CONFIDENCE_BOUNDS } from './confidence.js';
import { tell } from './tell.js';
import type { GlanceKind, PlainTodo } from './words/glance-words.js';
import type { LocalizedText, Words } from './words/words.js';

/** Whether the wanted mode came. */
export type WantedAnswer = 'right' | 'wrong' | 'open';

/** The answer for somebody who stands two metres away: a name, how sure, wanted or not, what to do. */
export interface GlanceView {
  kind: GlanceKind;
  /** The name in lines of large letters; two names where two modes are left. */
  name: readonly string[];
  /** One word and one figure; null where no mode is named. */
  sure: { word: string; figure: string } | null;
  /** Null where no mode was stated as wanted. */
  wanted: { mode: Mode; name: string; answer: WantedAnswer; sign: string } | null;
  todo: LocalizedText;
  /** Said below what could be acted on; null where nothing could be. */
  procedure: string | null;
  /** All of it as one text, to be read out. */
  spoken: string;
}

/** Two modes that together have this much are said as "one or the other" (own choice). */
const EITHER_SHARE = 0.9;
/** Doubts that mean "too loud". */
const CUT_OFF: readonly string[] = ['clipping'];
/** Less arc than this is too little to blame anything else, s (own choice; a window of sound is about 1 s). */
const LITTLE_ARC_S = 3;
/** Advice that says which way to turn, in the order in which it is preferred. */
const WITH_DIRECTION = ['move-volts', 'move-both', 'move-feed'];

/** `wanted`: the mode stated as wanted, as the set-up names it; null where none was. */
export function viewGlance(result: Result, wanted: Mode | null, words: Words): GlanceView {
  const kind = kindOf(result);
  const left = kind === 'open' ? eitherOf(result) : null;
  const name = left ? words.glance.either(left) : words.glance.names[kind];
  const answer = wanted && answerOf(result, wanted, left);
  const todo = todoOf(result, answer, words);
  const sure = sureOf(result, words);
  return {
    kind,
    name,
    sure,
    wanted: wanted &&
      answer && {
        mode: wanted,
        name: words.glance.wantedName[wanted],
        answer,
        sign: words.glance.signs[answer],
      },
    todo: todo.text,
    procedure: todo.acts ? words.glance.procedure : null,
    spoken: words.glance.spoken({
      name: left
        ? words.sentences.write.or(left.map((mode) => words.mode(mode)))
        : nameOf(result, words),
      sure,
      wanted: wanted && answer && { name: words.mode(wanted), answer },
      todo: todo.acts ? `${todo.text.text} ${words.glance.procedure}` : todo.text.text,
    }),
  };
}

function kindOf({ status, mode }: Result): GlanceKind {
  if (status === 'failed' || status === 'no-arc') return status;
  return status === 'unsure' || mode === null ? 'open' : mode;
}

function nameOf(result: Result, words: Words): string {
  const { status, mode } = result;
  if (status === 'ok' && mode !== null && mode !== 'mixed') return words.mode(mode);
  return status === 'ok' ? words.result.transfer('mixed') : words.result.headlines[status].short;
}

/** The two modes that are left of an answer that names none; null where it is not down to two. */
export function eitherOf({ status, probabilities }: Result): readonly [Mode, Mode] | null {
  if (status !== 'unsure' || !probabilities) return null;
  const [first, second] = MODES.toSorted(
    (a, b) => (probabilities[b] ?? 0) - (probabilities[a] ?? 0),
  );
  if (first === undefined || second === undefined) return null;
  const both = (probabilities[first] ?? 0) + (probabilities[second] ?? 0);
  if (both < EITHER_SHARE) return null;
  // In the order of all modes, so that no order of likeliness is read into it.
  return MODES.indexOf(first) < MODES.indexOf(second) ? [first, second] : [second, first];
}

function sureOf({ confidence }: Result, { result, numbers }: Words): GlanceView['sure'] {
  if (confidence === null) return null;
  const row = CONFIDENCE_BOUNDS.findIndex((bound) => confidence >= bound);
  return { word: result.confidence[row < 0 ? 4 : row] ?? '', figure: numbers.percent(confidence) };
}

/** The document's own answer; where the set-up was not held against it, by the name alone. */
function answerOf(
  { status, mode, crossCheck }: Result,
  wanted: Mode,
  left: readonly Mode[] | null,
): WantedAnswer {
  if (status !== 'ok') return left && !left.includes(wanted) ? 'wrong' : 'open';
  const said = crossCheck?.intended?.answer;
  if (said !== undefined)
    return ({ agrees: 'right', disagrees: 'wrong', 'cannot-tell': 'open' } as const)[said];
  if (mode === 'mixed' || mode === null) return 'open';
  return mode === wanted ? 'right' : 'wrong';
}

interface Todo {
  text: LocalizedText;
  /** Somebody could turn a knob on it. */
  acts: boolean;
}

function todoOf(result: Result, answer: WantedAnswer | null, words: Words): Todo {
  const plainly = (which: PlainTodo): Todo => ({
    text: { text: words.glance.todo[which], lang: words.lang },
    acts: false,
  });
  if (result.status === 'failed') return plainly('unreadable');
  if (result.status === 'no-arc') return plainly('no-arc');
  if (result.status === 'unsure') return plainly(whyOpen(result));
  if (answer === null) return plainly('state-wanted');
  // The wanted mode by settings that should not give it: something is not as stated.
  const explained = result.crossCheck?.settings.answer !== 'disagrees';
  if (answer === 'right') return (explained ? null : adviceOf(result, words)) ?? plainly('keep');
  return adviceOf(result, words) ?? plainly(answer === 'wrong' ? 'state-setup' : 'again');
}

function whyOpen({ quality, arcStretches }: Result): PlainTodo {
  if (quality.some(({ code }) => CUT_OFF.includes(code))) return 'too-loud';
  const arcS = totalS(arcStretches);
  return arcS < LITTLE_ARC_S ? 'too-short' : 'again';
}

/** The first advice with a direction, else the first at all, else what to check first. */
function adviceOf({ crossCheck }: Result, words: Words): Todo | null {
  const advice = crossCheck?.advice ?? [];
  const codes = crossCheck?.adviceMessages ?? [];
  const turning = WITH_DIRECTION.map((code) => codes.findIndex((one) => one.code === code));
  const at = turning.find((k) => k >= 0) ?? 0;
  const text = advice[at];
  if (text !== undefined) return { text: tell(text, codes[at], words), acts: true };
  const [first] = (crossCheck?.explanations ?? []).toSorted((a, b) => a.rank - b.rank);
  if (!first) return null;
  const short = words.glance.checks[first.checkMessage?.code ?? ''];
  const whole = (): LocalizedText => tell(first.check, first.checkMessage, words);
  return { text: short === undefined ? whole() : { text: short, lang: words.lang }, acts: true };
}
