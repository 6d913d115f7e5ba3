import { type ArcInterval, MODES, type Mode } from '../../core/index.js';
import {
  because,
  isUnlike,
  type Judged,
  type JudgedIntervals,
  nameMode,
  type Reason,
  type RunEvidence,
  rankReasons,
  runProbabilities,
  shareOfArcTime,
  type Verdict,
} from '../../judge/index.js';
import { type Made, message } from '../../messages/index.js';
import { classifierFor } from '../../model/index.js';
import type { Settings } from '../settings.js';
import { evidenceWithin, type PlacedWindow, type Source } from './both-source.js';
import { type PoolWeights, pool } from './index.js';

type Probabilities = Record<Mode, number>;

/** Confidence from which two witnesses that name different modes contradict each other. */
const CERTAIN = 0.8;
/** Reasons shown of each source. */
const REASONS_EACH = 5;

/**
 * One verdict from a sound and a trace of one run. The trace says where the arc burns (`arc intervals`, already
 * in the sound's time); both say how the metal crosses, pooled window by window and for the run.
 */
export function judgeBoth(
  arcIntervals: readonly ArcInterval[],
  sound: Source,
  trace: Source,
  by: PoolWeights,
  settings: Settings,
): { verdict: Verdict; accepted: JudgedIntervals } {
  const heard = evidenceWithin(
    { ...sound, windows: pooled(sound, trace, by) },
    arcIntervals,
    settings,
  );
  const seen = evidenceWithin(trace, arcIntervals, settings);
  const { ignitionMaskS, craterMaskS } = settings;
  const shares = shareOfArcTime(arcIntervals, heard.segments, ignitionMaskS, craterMaskS);
  const accepted = { ...heard, arcIntervals: [...arcIntervals], bestScore: Infinity };
  const base: Judged = {
    mode: null,
    confidence: null,
    probabilities: null,
    shareOfArcTime: shares,
    arcStretches: [...arcIntervals],
    segments: heard.segments,
    reasons: [],
    remainingModes: null,
    wouldSettle: null,
  };
  if (!shares || heard.evidence.windows === 0 || seen.evidence.windows === 0)
    return { accepted, verdict: unsure(base, message('too-little-in-both')) };
  const ofSound = opinion(heard.evidence, sound);
  const ofTrace = opinion(seen.evidence, trace);
  const probabilities = named(pool(list(ofSound), list(ofTrace), by));
  const reasons = [...reasonsOf(seen.evidence, trace), ...reasonsOf(heard.evidence, sound)];
  const judged = { ...base, probabilities, reasons };
  const doubt = doubtOf(ofSound, ofTrace, seen.evidence, trace);
  const verdict = doubt ? unsure(judged, doubt) : nameMode(judged, shares, probabilities, settings);
  return { accepted, verdict };
}

function doubtOf(
  ofSound: Probabilities,
  ofTrace: Probabilities,
  evidence: RunEvidence,
  trace: Source,
): Made | null {
  if (isUnlike(evidence, classifierFor(trace.model))) return message('trace-unlike-model');
  const [heard, seen] = [likeliest(ofSound), likeliest(ofTrace)];
  if (heard === seen || Math.min(ofSound[heard], ofTrace[seen]) < CERTAIN) return null;
  return message('sound-against-trace', { sound: heard, trace: seen });
}

/** The sound's windows with the opinion of the trace's window nearest in time pooled in. */
function pooled(sound: Source, trace: Source, by: PoolWeights): PlacedWindow[] {
  let next = 0;
  const middle = ({ window }: PlacedWindow): number => (window.startS + window.endS) / 2;
  return sound.windows.map((one) => {
    const { windows } = trace;
    const away = (i: number): number => Math.abs(middle(windows[i]!) - middle(one));
    while (next + 1 < windows.length && away(next + 1) <= away(next)) next++;
    if (windows.length === 0 || away(next) > trace.windowS) return one;
    const probabilities = pool(
      one.judgement.probabilities,
      windows[next]!.judgement.probabilities,
      by,
    );
    return { window: one.window, judgement: { ...one.judgement, probabilities } };
  });
}

function opinion(evidence: RunEvidence, { model }: Source): Probabilities {
  return runProbabilities(evidence, classifierFor(model));
}

function reasonsOf(evidence: RunEvidence, { model, featureSet }: Source): Reason[] {
  return rankReasons(evidence, classifierFor(model), featureSet).slice(0, REASONS_EACH);
}

function unsure(judged: Judged, reason: Made): Verdict {
  return { ...judged, status: 'unsure', ...because(reason) };
}

function likeliest(probabilities: Probabilities): Mode {
  return MODES.reduce((a, b) => (probabilities[b] > probabilities[a] ? b : a));
}

function list(probabilities: Probabilities): number[] {
  return MODES.map((mode) => probabilities[mode]);
}

function named(probabilities: Float64Array): Probabilities {
  return Object.fromEntries(MODES.map((mode, k) => [mode, probabilities[k]!])) as Probabilities;
}
