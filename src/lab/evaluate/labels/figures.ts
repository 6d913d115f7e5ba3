import { createRandom, MODES } from '../../../core/index.js';
import { median, quantile } from '../../../dsp/index.js';
import { bootstrapAll, type Interval } from '../score/bootstrap.js';
import { confusionOf, summarise } from '../score/confusion.js';
import {
  brierScore,
  calibrationError,
  type ForecastCase,
  logLoss,
  type ReliabilityBin,
  reliability,
} from '../score/proper-scores.js';
import type { SpanCounts } from '../score/spans.js';
import type { JudgedRun } from './judged-run.js';
import { ANSWERS, isDecided, LABELS } from './vocabulary.js';

/** Fewest runs for a calibration error: the figure is noise below. */
const CALIBRATION_RUNS = 300;
const SEED = 'evaluate';

type Figures = Record<string, Interval | null>;

/** Runs whose truth is one label. */
export function decided(runs: readonly JudgedRun[]): (JudgedRun & { truth: string })[] {
  return runs.flatMap((run) => {
    const { truth } = run;
    return truth !== null && isDecided(truth) ? [{ ...run, truth }] : [];
  });
}

/** Counts of answers by truth, over runs whose truth is one label. */
export function confusionOfRuns(runs: readonly JudgedRun[]) {
  return confusionOf(decided(runs), LABELS, ANSWERS);
}

/** Recall and precision of each label, accuracy, coverage and macro figures, with intervals over runs. */
export function answerFigures(runs: readonly JudgedRun[]): Figures {
  return bootstrapAll(decided(runs), flatSummary, createRandom(`${SEED} answers`));
}

function flatSummary(runs: readonly { truth: string; answer: string }[]) {
  const { labels, ...all } = summarise(confusionOf(runs, LABELS, ANSWERS));
  const each = labels.flatMap(({ label, recall, precision }) => [
    [`recall ${label}`, recall],
    [`precision ${label}`, precision],
  ]);
  return { ...all, ...Object.fromEntries(each) } as Record<string, number | null>;
}

export interface ProbabilityFigures {
  /** Runs that truly are of one mode, and those of them for which the tool gave no probabilities. */
  runs: number;
  withoutOpinion: number;
  brier: Interval | null;
  logLoss: Interval | null;
  /** Over runs with probabilities; null below 300. */
  calibrationError: Interval | null;
  reliability: ReliabilityBin[];
}

/**
 * Scores of the probabilities on runs that truly are of one mode. A run without probabilities (no arc
 * found, file not read) counts as no opinion: every mode a quarter. Leaving it out would flatter.
 */
export function probabilityFigures(runs: readonly JudgedRun[]): ProbabilityFigures {
  const own = decided(runs).filter((run) => (MODES as readonly string[]).includes(run.truth));
  const none = MODES.map(() => 1 / MODES.length);
  const toCase = (run: { truth: string; probabilities: number[] | null }): ForecastCase => ({
    probabilities: run.probabilities ?? none,
    truth: (MODES as readonly string[]).indexOf(run.truth),
  });
  const given = own.filter((run) => run.probabilities !== null).map(toCase);
  const random = createRandom(`${SEED} probabilities`);
  const scores = bootstrapAll(
    own.map(toCase),
    (cases) => ({ brier: brierScore(cases), logLoss: logLoss(cases) }),
    random,
  );
  const enough = given.length >= CALIBRATION_RUNS;
  const error = (cases: readonly ForecastCase[]) => ({ error: calibrationError(cases) });
  return {
    runs: own.length,
    withoutOpinion: own.length - given.length,
    ...scores,
    calibrationError: enough ? bootstrapAll(given, error, random).error : null,
    reliability: reliability(given),
  };
}

export interface RateFigures {
  /** Runs with a stated rate, and those of them for which the tool found one. */
  stated: number;
  found: number;
  /** Relative errors |found − stated| / stated of the runs with both. */
  medianError: number | null;
  p90Error: number | null;
  /** Share of all stated runs within 2 % and 10 %: a rate that was not found counts as outside. */
  within2: number;
  within10: number;
}

/** Errors of the event rate; null where no rate is stated. */
export function rateFigures(runs: readonly JudgedRun[]): RateFigures | null {
  const stated = runs.flatMap((run) => run.rate ?? []);
  if (stated.length === 0) return null;
  const errors = stated.flatMap(({ statedHz, foundHz }) =>
    foundHz === null ? [] : [Math.abs(foundHz - statedHz) / statedHz],
  );
  const within = (most: number) =>
    errors.filter((error) => error <= most + 1e-12).length / stated.length;
  return {
    stated: stated.length,
    found: errors.length,
    medianError: errors.length > 0 ? median(errors) : null,
    p90Error: errors.length > 0 ? quantile(errors, 0.9) : null,
    within2: within(0.02),
    within10: within(0.1),
  };
}

export interface SpanFigures {
  /** Labellings of parts (a run by each person), and the labelled time, s. */
  labellings: number;
  labelledS: number;
  segments: { truths: number; founds: number; matches: number };
  changes: { truths: number; founds: number; matches: number };
  /** `timeRight`, and recall, precision and F1 of segments and changes, with intervals over labellings. */
  figures: Figures;
}

/** Scores of segments and of the changes between them; null where no parts were labelled. */
export function spanFigures(runs: readonly JudgedRun[]): SpanFigures | null {
  const own = runs.flatMap((run) => run.spans);
  if (own.length === 0) return null;
  const sums = sumOf(own);
  return {
    labellings: own.length,
    labelledS: sums.labelledS,
    segments: { truths: sums.truths, founds: sums.founds, matches: sums.matches },
    changes: { truths: sums.truthEdges, founds: sums.foundEdges, matches: sums.edgeMatches },
    figures: bootstrapAll(own, flatSpans, createRandom(`${SEED} spans`)),
  };
}

function flatSpans(runs: readonly SpanCounts[]): Record<string, number | null> {
  const s = sumOf(runs);
  const ratio = (hits: number, all: number) => (all > 0 ? hits / all : null);
  return {
    timeRight: ratio(s.rightS, s.labelledS),
    segmentRecall: ratio(s.matches, s.truths),
    segmentPrecision: ratio(s.matches, s.founds),
    segmentF1: ratio(2 * s.matches, s.truths + s.founds),
    changeRecall: ratio(s.edgeMatches, s.truthEdges),
    changePrecision: ratio(s.edgeMatches, s.foundEdges),
    changeF1: ratio(2 * s.edgeMatches, s.truthEdges + s.foundEdges),
  };
}

function sumOf(counts: readonly SpanCounts[]): SpanCounts {
  const keys = Object.keys(counts[0]!) as (keyof SpanCounts)[];
  const total = (key: keyof SpanCounts) => counts.reduce((sum, one) => sum + one[key], 0);
  return Object.fromEntries(keys.map((key) => [key, total(key)])) as unknown as SpanCounts;
}
