import type { Result } from '../../analysis/result/index.js';
import { capital, MODES, type Mode } from '../../core/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import { viewGlance, type WantedAnswer } from './glance.js';
import { type PlainReasons, viewPlainReasons } from './plain-reasons.js';
import { type StripView, viewStrip } from './strip.js';
import { tell } from './tell.js';
import { HARD_BY_EAR } from './words/answer-words.js';
import type { LocalizedText, Words } from './words/words.js';

/** The answer in the order in which it is read, the same for terminal, report and page. */
export interface AnswerView {
  /** "Globular, very likely (90 %)". */
  title: string;
  /** Wanted against what came; null where no mode was stated as wanted. */
  wanted: { mode: Mode; name: string; answer: WantedAnswer; sign: string; words: string } | null;
  /** The one thing to do; null where nothing is to be changed or said. */
  todo: { kind: 'change' | 'check'; text: LocalizedText; procedure: string } | null;
  /** Further advice, without what `todo` says. */
  rest: LocalizedText[];
  strip: StripView | null;
  reasons: PlainReasons;
  /** Everyday fractions, doubts, and what would settle it. */
  trust: LocalizedText[];
}

const SIGNS: Readonly<Record<WantedAnswer, string>> = { right: '✓', wrong: '✗', open: '?' };

export function viewAnswer(result: Result, words: Words): AnswerView {
  const wanted = wantedOf(result);
  const glance = viewGlance(result, wanted, words);
  const { procedure, todo: text } = glance;
  const kind = (result.crossCheck?.advice ?? []).length > 0 ? 'change' : 'check';
  const todo = procedure === null ? null : ({ kind, text, procedure } as const);
  return {
    title: words.answer.title(titleOf(result, words), glance.sure),
    wanted: glance.wanted && {
      mode: glance.wanted.mode,
      name: words.mode(glance.wanted.mode),
      answer: glance.wanted.answer,
      sign: SIGNS[glance.wanted.answer],
      words: glance.wanted.sign,
    },
    todo,
    rest: restOf(result, todo?.text.text, words),
    strip: viewStrip(result, words),
    reasons: viewPlainReasons(result, likeliest(result), words),
    trust: trustIn(result, words),
  };
}

/** The wanted mode by the letter of its process; null where none was stated. */
export function wantedOf({ crossCheck }: Result): Mode | null {
  const process = crossCheck?.intended ? crossCheck.process?.intended : null;
  return MODES.find((mode) => process?.endsWith(`-${MODE_LETTERS[mode]}`)) ?? null;
}

/** The advice but for what was said already, and the tie to the procedure with it. */
function restOf({ crossCheck }: Result, said: string | undefined, words: Words): LocalizedText[] {
  const codes = crossCheck?.adviceMessages;
  const kept = (crossCheck?.advice ?? [])
    .map((text, k) => ({ said: tell(text, codes?.[k], words), code: codes?.[k]?.code }))
    .filter((one) => one.said.text !== said);
  // The procedure is named below what to do; it stands again only below other advice.
  const acts = kept.some(({ code }) => code !== 'inside-procedure');
  return acts ? kept.map((one) => one.said) : [];
}

/** The mode that is named, or else the likeliest one. */
export function likeliest({ mode, probabilities }: Result): Mode | null {
  if (mode !== null && mode !== 'mixed') return mode;
  if (!probabilities) return null;
  return MODES.toSorted((a, b) => (probabilities[b] ?? 0) - (probabilities[a] ?? 0))[0] ?? null;
}

function titleOf({ status, mode }: Result, words: Words): string {
  if (status !== 'ok') return words.result.headlines[status].whole;
  return mode === null || mode === 'mixed'
    ? words.result.transfer('mixed')
    : capital(words.mode(mode).replace(/ \([^)]+\)$/u, ''));
}

function trustIn(result: Result, words: Words): LocalizedText[] {
  const { status, confidence, quality, source } = result;
  if (status === 'failed') return [];
  const { trust } = words.answer;
  const own = (text: string): LocalizedText => ({ text, lang: words.lang });
  // A silent recording is said by the answer itself.
  const said = status === 'no-arc' ? ['silent'] : [];
  const doubts = quality
    .filter(({ code }) => !said.includes(code))
    .map((one) => withShare(tell(one.message, one, words), one.share, words));
  const lines = doubts.length === 0 && status === 'ok' ? [own(trust.nothingAgainst)] : doubts;
  if (confidence !== null) lines.push(own(trust.tenths(tenthsOf(confidence))));
  if (source.kind === 'sound' && hardByEar(result)) {
    const [one, other] = HARD_BY_EAR;
    lines.push(own(trust.byEar([words.mode(one), words.mode(other)])));
  }
  if (source.kind === 'sound' && status !== 'no-arc') lines.push(own(trust.settle));
  return lines;
}

/** A doubt with how much of the recording it touches, where that is a part worth a number. */
function withShare(said: LocalizedText, share: number, { result, numbers }: Words): LocalizedText {
  if (share >= 1 || share < 0.01) return said;
  return { ...said, text: `${said.text} (${result.ofIt(numbers.percent(share))})` };
}

function hardByEar(result: Result): boolean {
  const mode = likeliest(result);
  return mode !== null && result.status !== 'no-arc' && HARD_BY_EAR.includes(mode);
}

function tenthsOf(confidence: number): number | null {
  return confidence > 0.95 ? null : Math.round(10 * confidence);
}
