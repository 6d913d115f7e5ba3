import type { Result } from '../../analysis/result/index.js';
import { MODES, type Mode, totalS } from '../../core/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import { CONFIDENCE_BOUNDS } from './confidence.js';
import { tell, tellAll } from './tell.js';
import type { LocalizedText, RateName, Words } from './words/words.js';

type CrossCheck = NonNullable<Result['crossCheck']>;
type Answer = CrossCheck['settings']['answer'];

/** The verdict: what a person reads first. */
export interface VerdictView {
  status: Result['status'];
  /** The one mode that is named; null for a mix and where none is. */
  mode: Mode | null;
  /** Letter of the mode, or a sign: `M` mixed, `?` unsure, `–` no arc, `!` failed. */
  letter: string;
  /** "Spray transfer", "Unsure: no mode is named". */
  headline: string;
  /** "very likely, 94 %"; null where no mode is named. */
  sure: string | null;
  why: LocalizedText;
  /** Over how much of the arc and since when; empty without an arc. */
  where: string;
  /** How many events a second; empty where none are shown. */
  rates: string;
  /** The modes by probability; null unless the answer is unsure. */
  leaning: string | null;
  /** Each mode with its probability; empty where there was too little to judge. */
  chances: { mode: Mode; letter: string; name: string; share: number; percent: string }[];
}

/** One question to the set-up, with its answer. */
export interface CheckView {
  answer: Answer;
  /** "✓ Agrees" */
  words: string;
  text: LocalizedText;
  /** Which voltage was compared; null where the question does not ask for one. */
  compared: LocalizedText | null;
}

/** What to look at next, and what speaks for and against its being the cause. */
export interface AdviceView {
  check: LocalizedText;
  because: LocalizedText;
  speaksFor: LocalizedText[];
  speaksAgainst: LocalizedText[];
}

export interface ReasonView {
  mode: Mode | null;
  /** "for spray", "against globular", "for any mode". */
  side: string;
  text: LocalizedText;
}

/** One thing looked at in the arc beside its mode. */
export interface ConditionItem {
  name: string;
  rating: 'good' | 'watch' | 'bad';
  /** The rating in words. */
  words: string;
  text: LocalizedText;
  usual: LocalizedText;
}

/** How the arc behaved: what is off first, in the order of the result. */
export interface ConditionView {
  items: ConditionItem[];
  /** "7 of 9 things looked at are as usual." */
  good: string;
  notJudged: LocalizedText[];
}

/**
 * A result in the words of one language, in the order in which it is read. Terminal, report and page lay it
 * out, each in its way, and say nothing of the result that does not stand here.
 */
export interface ResultView {
  lang: string;
  /** File as named, then kind, format, rate and length as far as known. */
  file: string;
  facts: string[];
  verdict: VerdictView;
  /** Strongest first. */
  reasons: ReasonView[];
  doubts: { text: LocalizedText; share: string }[];
  notes: LocalizedText[];
  /** Null without an arc, and for documents from before it was looked at. */
  condition: ConditionView | null;
  settings: CheckView | null;
  wanted: CheckView | null;
  qualification: LocalizedText[];
  /** What else goes with what was stated: position, plate, heat input. */
  remarks: LocalizedText[];
  /** What to change to come to the wanted mode. */
  change: LocalizedText[];
  /** Likeliest first. */
  next: AdviceView[];
  /** Those of the advice where advice is given, else those of the result. */
  cautions: LocalizedText[];
  /** Those of the result itself, whether or not advice is given. */
  ownCautions: LocalizedText[];
  steps: { step: string; detail: LocalizedText }[];
}

export function viewResult(result: Result, words: Words): ResultView {
  const { source, crossCheck } = result;
  return {
    lang: words.lang,
    file: source.path,
    facts: factsOf(result, words),
    verdict: viewVerdict(result, words),
    reasons: rankReasons(result.reasons).map((one) => viewReason(one, words)),
    doubts: result.quality.map((one) => ({
      text: tell(one.message, one, words),
      share: words.result.ofIt(words.numbers.percent(one.share)),
    })),
    notes: source.notes.map((one) => tell(one.message, one, words)),
    condition: viewCondition(result, words),
    settings: crossCheck && viewCheck(crossCheck.settings, words),
    wanted: crossCheck?.intended ? viewCheck(crossCheck.intended, words) : null,
    qualification: tellAll(
      crossCheck?.qualification ?? [],
      crossCheck?.qualificationMessages,
      words,
    ),
    remarks: crossCheck ? remarksOf(crossCheck, words) : [],
    change: tellAll(crossCheck?.advice ?? [], crossCheck?.adviceMessages, words),
    next: (crossCheck?.explanations ?? [])
      .toSorted((a, b) => a.rank - b.rank)
      .map((one) => viewAdvice(one, words)),
    cautions: viewCautions(result, words),
    ownCautions: tellAll(result.cautions, result.cautionMessages, words),
    steps: result.steps.map((one) => ({ step: one.step, detail: tell(one.detail, one, words) })),
  };
}

function viewCondition({ arcCondition }: Result, words: Words): ConditionView | null {
  if (!arcCondition) return null;
  const { condition } = words.result;
  const names: Readonly<Record<string, string>> = condition.names;
  const items = arcCondition.findings.map((one) => ({
    name: names[one.name] ?? one.name,
    rating: one.rating,
    words: condition.ratings[one.rating],
    text: tell(one.text, one, words),
    usual: tell(one.usual, one.usualMessage, words),
  }));
  const rank = { bad: 0, watch: 1, good: 2 };
  const good = items.filter((one) => one.rating === 'good').length;
  return {
    items: items.toSorted((a, b) => rank[a.rating] - rank[b.rating]),
    good: condition.good(good, items.length),
    notJudged: tellAll(arcCondition.notJudged, arcCondition.notJudgedMessages, words),
  };
}

function factsOf({ source }: Result, { result, numbers }: Words): string[] {
  const { kind, format, sampleRateHz, durationS } = source;
  return [
    kind && result.kinds[kind],
    format,
    sampleRateHz === null ? null : numbers.rate(sampleRateHz),
    durationS === null ? null : numbers.time(durationS),
  ].filter((one) => one !== null);
}

export function viewVerdict(result: Result, words: Words): VerdictView {
  const { status, confidence } = result;
  // Where nothing was recorded at all, that is why.
  const silent = status === 'no-arc' && result.quality.find(({ code }) => code === 'silent');
  const mode = result.mode === 'mixed' ? null : result.mode;
  return {
    status,
    mode,
    letter: letterOf(result),
    headline:
      status === 'ok'
        ? words.result.transfer(result.mode ?? 'mixed')
        : words.result.headlines[status].whole,
    sure: confidence === null ? null : sayConfidence(confidence, words),
    // The message of an error says what was expected and what to do, too.
    why: result.error
      ? { text: result.error.message, lang: 'en' }
      : silent
        ? tell(silent.message, silent, words)
        : tell(result.statusReason, result.statusReasonMessage, words),
    where: sayWhere(result, words),
    rates: sayRates(result, words),
    leaning: status === 'unsure' ? sayLeaning(result, words) : null,
    chances: chancesOf(result, words),
  };
}

function letterOf({ status, mode }: Result): string {
  if (status === 'failed') return '!';
  if (status === 'no-arc') return '–';
  if (status === 'unsure' || mode === null) return '?';
  return mode === 'mixed' ? 'M' : MODE_LETTERS[mode];
}

/** `very likely, 94 %`: words always with their number. */
export function sayConfidence(confidence: number, { result, numbers }: Words): string {
  const row = CONFIDENCE_BOUNDS.findIndex((bound) => confidence >= bound);
  return `${result.confidence[row < 0 ? 4 : row]}, ${numbers.percent(confidence)}`;
}

/** Over what share of the arc and since when; empty without an arc. */
function sayWhere(result: Result, words: Words): string {
  const { numbers } = words;
  const first = result.arcStretches[0];
  const last = result.arcStretches.at(-1);
  if (!first || !last) return '';
  const arcS = totalS(result.arcStretches);
  return words.result.where({
    // All of it in one mode is said by the headline.
    shares: Object.values(result.shareOfArcTime ?? {}).some((one) => one === 1)
      ? ''
      : sayShares(result.shareOfArcTime ?? {}, words),
    length: numbers.time(arcS),
    count: result.arcStretches.length,
    from: first.openStart ? null : numbers.time(first.startS),
    to: last.openEnd ? null : numbers.time(last.endS),
  });
}

/** Shares of the judged arc time in words: `short-circuit 62 %, globular 38 %`, largest first. */
function sayShares(shares: Record<string, number>, words: Words): string {
  const nameOf = (name: string): string => {
    const mode = MODES.find((one) => one === name);
    return mode ? words.mode(mode) : words.notClear;
  };
  return Object.entries(shares)
    .filter(([, share]) => share > 0)
    .sort(([, a], [, b]) => b - a)
    .map(([name, share]) => `${nameOf(name)} ${words.numbers.percent(share)}`)
    .join(', ');
}

const RATES: readonly RateName[] = [
  'shortCircuitRateHz',
  'dropRateHz',
  'pulseRateHz',
  'eventRateHz',
];

/** Event rates that the recording shows; empty where it shows none. */
function sayRates({ features }: Result, { result, numbers }: Words): string {
  const known = RATES.flatMap((key) => {
    const value = features[key];
    return typeof value === 'number' ? [{ value, name: result.rates[key] }] : [];
  });
  // The event rate often is one of the others under its general name.
  return known
    .filter(({ value }, k) => known.findIndex((one) => one.value === value) === k)
    .map(({ value, name }) => result.aSecond(numbers.figure(value), name))
    .join(', ');
}

function chancesOf({ probabilities }: Result, words: Words): VerdictView['chances'] {
  if (!probabilities) return [];
  return MODES.map((mode) => {
    const share = probabilities[mode] ?? 0;
    const percent = words.numbers.percent(share);
    return { mode, letter: MODE_LETTERS[mode], name: words.mode(mode), share, percent };
  });
}

/** The modes by probability, for an answer that names none; empty without probabilities. */
function sayLeaning(result: Result, words: Words): string {
  const ranked = chancesOf(result, words).toSorted((a, b) => b.share - a.share);
  if (ranked.length === 0) return '';
  return words.result.leaning(ranked.map(({ name, percent }) => `${name} ${percent}`));
}

/** Strongest first, whichever way it speaks. */
export function rankReasons(reasons: Result['reasons']): Result['reasons'] {
  return reasons.toSorted((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
}

export function viewReason(reason: Result['reasons'][number], words: Words): ReasonView {
  const { speaksFor: mode, weight } = reason;
  return {
    mode,
    side: words.reasons.side(weight < 0, mode ? words.mode(mode) : words.reasons.anyMode),
    text: tell(reason.text, reason, words),
  };
}

function viewCheck(
  part: NonNullable<CrossCheck['intended']> & Partial<CrossCheck['settings']>,
  words: Words,
): CheckView {
  const { answer, text, comparedVoltage, comparedVoltageMessage } = part;
  return {
    answer,
    words: words.result.answers[answer],
    text: tell(text, part, words),
    compared: comparedVoltage ? tell(comparedVoltage, comparedVoltageMessage, words) : null,
  };
}

function remarksOf(check: CrossCheck, words: Words): LocalizedText[] {
  const { plateNote, plateNoteMessage, heatNote, heatNoteMessage, heatInput } = check;
  const { modeUse = [], modeUseMessages, positionWarning, positionWarningMessage } = check;
  const { heat, lang, result, sentences } = words;
  const energy = (span: { min: number; max: number }): string =>
    sentences.write.inUnits(span, 'energy');
  return [
    ...(positionWarning === undefined
      ? []
      : [tell(positionWarning, positionWarningMessage, words)]),
    ...tellAll(modeUse, modeUseMessages, words),
    ...(plateNote === undefined ? [] : [tell(plateNote, plateNoteMessage, words)]),
    ...(heatInput === undefined
      ? []
      : [
          {
            text: result.heatInput(
              heat === 'efficiency' ? null : energy(heatInput.arcEnergyKjPerMm),
              heat === 'no-efficiency' ? null : energy(heatInput.heatInputKjPerMm),
            ),
            lang,
          },
        ]),
    ...(heatNote === undefined ? [] : [tell(heatNote, heatNoteMessage, words)]),
  ];
}

function viewAdvice(one: CrossCheck['explanations'][number], words: Words): AdviceView {
  return {
    check: tell(one.check, one.checkMessage, words),
    because: tell(one.text, one, words),
    speaksFor: tellAll(one.evidenceFor, one.evidenceForMessages, words),
    speaksAgainst: tellAll(one.evidenceAgainst, one.evidenceAgainstMessages, words),
  };
}

/** What must be said with this result: the cautions of the advice where advice is given, else its own. */
export function viewCautions({ crossCheck, ...result }: Result, words: Words): LocalizedText[] {
  const given = crossCheck && crossCheck.explanations.length + (crossCheck.advice ?? []).length > 0;
  return given && crossCheck.cautions
    ? tellAll(crossCheck.cautions, crossCheck.cautionMessages, words)
    : tellAll(result.cautions, result.cautionMessages, words);
}
