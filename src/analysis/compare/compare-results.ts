import { MODES } from '../../core/index.js';
import {
  type Made,
  message,
  messagesOf,
  type SpreadBy,
  said,
  textsOf,
} from '../../messages/index.js';
import type { Result } from '../result/index.js';
import { meanError } from './block-bootstrap.js';
import { COMPARED_FIGURES, type ComparedFigure, reader } from './compared-figures.js';
import { modeShares, shareDifference, shareZ } from './mode-shares.js';
import { comparisonNotes } from './notes.js';
import { type Change, COMPARISON_VERSION, type Comparison } from './schema.js';
import { normalQuantile, type Trend, twoSided } from './stability/index.js';
import { bySecond, type RateTrack, rateTrend } from './tracks.js';

/** Level of every interval. */
export const LEVEL = 0.95;
const Z = normalQuantile((1 + LEVEL) / 2);
/** No rate is known better than this, Hz: the finest line the analysis resolves. */
const FINEST_RATE_HZ = 0.25;
/** Figures for which the rates by window are the better evidence of spread. */
const BY_TRACK: readonly string[] = ['eventRateHz', 'shortCircuitRateHz'];

/** Event rates by window, where the caller has kept them. */
export interface Tracks {
  before: RateTrack | null;
  after: RateTrack | null;
}

/**
 * What changed from one result to another, with intervals, and whether each change is more than
 * chance within the two recordings (level 95 %, Holm's correction over the figures compared).
 * Chance from weld to weld is not in it: two recordings cannot show that.
 */
export function compareResults(
  before: Result,
  after: Result,
  tracks: Tracks = { before: null, after: null },
): Comparison {
  const usable = before.status === 'ok' && after.status === 'ok';
  const sameKind = before.source.kind === after.source.kind;
  const figures = sameKind
    ? COMPARED_FIGURES.map((figure) => figureChange(figure, before, after, tracks))
    : [];
  const notes = comparisonNotes(before, after);
  const changes = [...figures, ...shareChanges(before, after)].filter((one) => one !== null);
  return {
    schemaVersion: COMPARISON_VERSION,
    before: sideOf(before),
    after: sideOf(after),
    mode: modeAnswer(before, after, usable),
    changes: corrected(changes),
    trends: {
      before: perMinute(rateTrend(tracks.before)),
      after: perMinute(rateTrend(tracks.after)),
    },
    condition: ratings(before, after),
    notes: textsOf(notes),
    noteMessages: messagesOf(notes),
  };
}

const sideOf = ({ source, status, mode, confidence }: Result): Comparison['before'] => ({
  path: source.path,
  status,
  mode,
  confidence,
});

/** Ratings of what was looked at in either run, in the order of the first. */
function ratings(before: Result, after: Result): NonNullable<Comparison['condition']> {
  const of = ({ arcCondition }: Result) =>
    new Map((arcCondition?.findings ?? []).map(({ name, rating }) => [name, rating]));
  const [old, now] = [of(before), of(after)];
  return [...new Set([...old.keys(), ...now.keys()])].map((name) => ({
    name,
    before: old.get(name) ?? null,
    after: now.get(name) ?? null,
  }));
}

function modeAnswer(before: Result, after: Result, usable: boolean): Comparison['mode'] {
  const [a, b] = [before.mode, after.mode];
  if (!usable || a === null || b === null) {
    const status = { before: before.status, after: after.status };
    return { answer: 'cannot-tell', ...message('compare-mode-unknown', status) };
  }
  if (a === b) return { answer: 'same', ...message('compare-mode-same', { mode: a }) };
  const sure = Math.min(before.confidence ?? 0, after.confidence ?? 0) >= 0.75;
  return sure
    ? { answer: 'changed', ...message('compare-mode-changed', { before: a, after: b }) }
    : { answer: 'cannot-tell', ...message('compare-mode-not-sure', { before: a, after: b }) };
}

function figureChange(
  figure: ComparedFigure,
  before: Result,
  after: Result,
  tracks: Tracks,
): Change | null {
  const [a, b] = [before.features[figure.key] ?? null, after.features[figure.key] ?? null];
  if (a === null || b === null) return null;
  const error = Math.hypot(
    errorOf(figure, before, tracks.before, 'before'),
    errorOf(figure, after, tracks.after, 'after'),
  );
  const byTrack = tracks.before !== null && tracks.after !== null && BY_TRACK.includes(figure.key);
  const how = byTrack ? 'block-bootstrap' : figure.how;
  return {
    ...changeOf(figure.key, message('compared-figure', { figure: figure.key }), figure.unit, a, b),
    ...judged(b - a, error, how),
  };
}

/** The wider of the two errors at hand; NaN where there is none. */
function errorOf(
  figure: ComparedFigure,
  result: Result,
  track: RateTrack | null,
  seed: string,
): number {
  const analytic = figure.error(reader(result.features));
  if (track === null || !BY_TRACK.includes(figure.key)) return analytic;
  const drawn = meanError(Float64Array.from(bySecond(track).ratesHz), seed);
  if (Number.isNaN(drawn)) return analytic;
  return Math.max(drawn, FINEST_RATE_HZ, Number.isNaN(analytic) ? 0 : analytic);
}

type Judged = Pick<Change, 'interval' | 'p' | 'moreThanChance'>;

function judged(difference: number, error: number, by: SpreadBy): Judged {
  if (!Number.isFinite(error)) return { interval: null, p: null, moreThanChance: null };
  const how = message('spread-by', { how: by });
  const z = error === 0 ? (difference === 0 ? 0 : Infinity) : difference / error;
  return {
    interval: {
      low: difference - Z * error,
      high: difference + Z * error,
      level: LEVEL,
      how: how.text,
      howMessage: said(how),
    },
    p: twoSided(z),
    moreThanChance: null,
  };
}

function shareChanges(before: Result, after: Result): Change[] {
  const [a, b] = [modeShares(before.segments), modeShares(after.segments)];
  if (a === null || b === null) return [];
  return MODES.filter((mode) => a.shares[mode] > 0 || b.shares[mode] > 0).map((mode) => {
    const [old, now] = [
      { share: a.shares[mode], looks: a.looks },
      { share: b.shares[mode], looks: b.looks },
    ];
    const how = message('spread-by', { how: 'newcombe' });
    return {
      ...changeOf(`share.${mode}`, message('compared-share', { mode }), '1', old.share, now.share),
      interval: {
        ...shareDifference(old, now, Z),
        level: LEVEL,
        how: how.text,
        howMessage: said(how),
      },
      p: twoSided(shareZ(old, now)),
      moreThanChance: null,
    };
  });
}

function changeOf(name: string, label: Made, unit: string, before: number, after: number) {
  const difference = after - before;
  return {
    name,
    label: label.text,
    labelMessage: said(label),
    unit,
    before,
    after,
    difference,
    relative: before === 0 ? null : difference / before,
  };
}

/** Holm's step-down correction: with fifteen figures, one in twenty is not news. */
export function corrected(changes: readonly Change[]): Change[] {
  const ranked = changes.filter((one) => one.p !== null).sort((a, b) => a.p! - b.p!);
  const adjusted = new Map<string, number>();
  let floor = 0;
  for (const [i, one] of ranked.entries()) {
    floor = Math.max(floor, Math.min(1, one.p! * (ranked.length - i)));
    adjusted.set(one.name, floor);
  }
  return changes.map((one) => {
    const p = adjusted.get(one.name);
    return p === undefined ? { ...one } : { ...one, p, moreThanChance: p < 1 - LEVEL };
  });
}

function perMinute(trend: Trend | null): Comparison['trends']['before'] {
  if (trend === null) return null;
  const { slopePerS, lowPerS, highPerS, clear } = trend;
  return { slopePerMin: slopePerS * 60, lowPerMin: lowPerS * 60, highPerMin: highPerS * 60, clear };
}
