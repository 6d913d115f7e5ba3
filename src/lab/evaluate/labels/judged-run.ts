import type { Result } from '../../../analysis/result/index.js';
import type { FigureName } from '../../../features/index.js';
import { countSpans, type SpanCounts, type SpanRules } from '../score/spans.js';
import { coveredShare, decidedSpans, foundSpans, SILENT } from './found-spans.js';
import { labelOfSpans, majority, type TruthRun } from './truth-runs.js';
import type { ANSWERS } from './vocabulary.js';

/** A recording with what people and what the tool said of it. */
export interface JudgedRun {
  file: string;
  group: string;
  /** Label of the run by most of the people; null where only a part of it was labelled. */
  truth: string | null;
  answer: (typeof ANSWERS)[number];
  confidence: number | null;
  /** Calibrated, in the order of `MODES`; null where the tool gave none. */
  probabilities: number[] | null;
  /** Stated and found rate of events, Hz. */
  rate: { statedHz: number; foundHz: number | null } | null;
  /** Sums over the labelled parts, one for each person who labelled parts. */
  spans: SpanCounts[];
  error: string | null;
}

/** Two labelled segments match from half of their joint time, two changes within half a second. */
export const SPAN_RULES: SpanRules = { overlap: 0.5, toleranceS: 0.5, silent: SILENT };
/** Share of the arc time that parts must cover to stand for the whole run. */
const WHOLE = 0.9;

/** Puts truth and answer side by side. @param mixedShare see the setting of that name */
export function judgeRun(truth: TruthRun, result: Result, mixedShare: number): JudgedRun {
  const { probabilities } = result;
  const statedHz = truth.eventRateHz;
  return {
    file: truth.file,
    group: truth.group,
    truth: truthOf(truth, result, mixedShare),
    answer: result.mode ?? (result.status === 'ok' ? 'unsure' : result.status),
    confidence: result.confidence,
    probabilities: probabilities && Object.values(probabilities),
    rate: statedHz === null ? null : { statedHz, foundHz: foundRateHz(result) },
    spans: truth.labellings.flatMap(({ spans }) => {
      const decided = decidedSpans(spans);
      return decided.length > 0 ? [countSpans(decided, foundSpans(result), SPAN_RULES)] : [];
    }),
    error: result.error?.message ?? null,
  };
}

/** One label for the run by each person, and the one that most gave. */
function truthOf(truth: TruthRun, result: Result, mixedShare: number): string | null {
  const labels = truth.labellings.flatMap(({ whole, spans }) => {
    if (whole !== null) return [whole];
    return coveredShare(spans, result) >= WHOLE ? [labelOfSpans(spans, mixedShare)] : [];
  });
  return labels.length > 0 ? majority(labels) : null;
}

/** Rates by what they speak of: the one of the mode first, events of any kind last. */
const RATES: Record<string, readonly FigureName[]> = {
  'short-circuit': ['shortCircuitRateHz', 'eventRateHz'],
  'pulsed-spray': ['pulseRateHz', 'eventRateHz'],
  globular: ['dropRateHz', 'eventRateHz'],
  spray: ['dropRateHz', 'eventRateHz'],
};
const ANY_RATE: readonly FigureName[] = [
  'eventRateHz',
  'shortCircuitRateHz',
  'pulseRateHz',
  'dropRateHz',
];

/** The rate of the events of the mode that was named. */
function foundRateHz({ features, mode }: Result): number | null {
  for (const key of RATES[mode ?? ''] ?? ANY_RATE) {
    const value = features[key];
    if (value !== undefined && value !== null && value > 0) return value;
  }
  return null;
}
