import { type ArcInterval, MODES, type Mode, type Segment } from '../core/index.js';
import type { FeatureSet } from '../features/index.js';
import { type Classifier, calibrateBinary } from '../model/index.js';
import { rankReasons } from './reasons.js';
import type { RunEvidence } from './run-evidence.js';
import { type Shares, shareOfArcTime } from './shares.js';
import type { Verdict } from './verdict.js';

export interface DecisionSettings {
  ignitionMaskS: number;
  craterMaskS: number;
  answerThreshold: number;
  mixedShare: number;
}

/** Arc intervals of one kind (accepted, or doubtful) with their segments and evidence. */
export interface JudgedIntervals {
  arcIntervals: ArcInterval[];
  segments: Segment[];
  evidence: RunEvidence;
  /** Highest arc score of the arc intervals, see `arc interval-gate.ts`. */
  bestScore: number;
}

/**
 * Part of the score that is taken back when the two estimates of the event rate contradict each other
 * in every window: half of the certainty, in log-odds, that the scores alone would give.
 */
const CONFLICT_COST = 0.5;

/** One answer from what was gathered over the run. */
export function decide(
  accepted: JudgedIntervals,
  doubtful: JudgedIntervals,
  classifier: Classifier,
  featureSet: FeatureSet,
  settings: DecisionSettings,
): Verdict {
  if (accepted.arcIntervals.length > 0)
    return decideArc(accepted, classifier, featureSet, settings);
  if (doubtful.arcIntervals.length > 0) return decideDoubtful(doubtful, classifier, featureSet);
  return {
    ...empty(),
    status: 'no-arc',
    statusReason: 'Nothing in the recording shows a burning arc.',
  };
}

function decideDoubtful(
  doubtful: JudgedIntervals,
  classifier: Classifier,
  set: FeatureSet,
): Verdict {
  const { evidence } = doubtful;
  const gate = classifier.model.gate!;
  const arc = calibrateBinary(gate.calibration, doubtful.bestScore);
  return {
    ...empty(),
    arcStretches: arc >= 0.5 ? doubtful.arcIntervals : [],
    status: 'unsure',
    statusReason: `It may be an arc (${percent(arc)}), but rain, fire, engines or tools can sound like this; no mode is named.`,
    probabilities: runProbabilities(evidence, classifier),
    reasons: rankReasons(evidence, classifier, set),
  };
}

function decideArc(
  { arcIntervals, segments, evidence }: JudgedIntervals,
  classifier: Classifier,
  set: FeatureSet,
  settings: DecisionSettings,
): Verdict {
  const shares = shareOfArcTime(
    arcIntervals,
    segments,
    settings.ignitionMaskS,
    settings.craterMaskS,
  );
  const base = { ...empty(), arcStretches: arcIntervals, segments, shareOfArcTime: shares };
  if (evidence.windows === 0 || !shares)
    return { ...base, status: 'unsure', statusReason: 'The arc is too short to be judged.' };
  const probabilities = runProbabilities(evidence, classifier);
  const reasons = rankReasons(evidence, classifier, set);
  const judged = { ...base, probabilities, reasons };
  if (evidence.novelty / evidence.windows > classifier.model.novelty.limit)
    return {
      ...judged,
      status: 'unsure',
      statusReason: 'The arc is unlike anything the model was fitted on; no mode is named.',
    };
  const verdict = nameMode(judged, shares, probabilities, settings);
  const doubtful = probabilities['short-circuit'] >= RIVAL && isShallow(evidence, set);
  if (verdict.mode !== 'pulsed-spray' || !doubtful) return verdict;
  return {
    ...verdict,
    status: 'unsure',
    mode: null,
    confidence: null,
    segments: segments.map((one) => (one.mode === 'pulsed-spray' ? { ...one, mode: null } : one)),
    statusReason:
      'The sound beats evenly but faintly: a pulsed current or a dip controlled by the source; sound alone cannot tell which. Log the voltage to know.',
  };
}

/**
 * Power that swings several-fold with each pulse must be heard to swing: a beat below a fifth of the
 * loudness in every band from 25 to 400 Hz is no proof of pulsed current.
 */
function isShallow(evidence: RunEvidence, set: FeatureSet): boolean {
  if (set.id !== 'sound') return false;
  const depths = ['modulation25to60', 'modulation60to150', 'modulation150to400'].map((name) =>
    evidence.vector.mean(set.features.findIndex((feature) => feature.id === name)),
  );
  return Math.max(...depths) < SHALLOW;
}

/** Probability of the rival from which a faint beat leaves the question open. */
const RIVAL = 0.1;
/** log10 of the squared beat over the squared mean. */
const SHALLOW = -1.6;

export function nameMode(
  judged: Omit<Verdict, 'status' | 'statusReason'>,
  shares: Shares,
  probabilities: Record<Mode, number>,
  settings: DecisionSettings,
): Verdict {
  const main = MODES.reduce((a, b) => (shares[b] > shares[a] ? b : a));
  const likeliest = MODES.reduce((a, b) => (probabilities[b] > probabilities[a] ? b : a));
  const confidence = probabilities[likeliest];
  const others = MODES.filter((mode) => mode !== main && shares[mode] >= 0.1);
  const named = 1 - shares.undetermined;
  const parts = mixedConfidence(judged.segments);
  const mixes =
    shares[main] < settings.mixedShare && others.length > 0 && named >= settings.mixedShare;
  if (mixes && parts >= MIXED_CONFIDENCE)
    return {
      ...judged,
      status: 'ok',
      mode: 'mixed',
      confidence: parts,
      statusReason: `The run mixes ${[main, ...others].map((mode) => `${mode} (${percent(shares[mode])})`).join(' and ')}.`,
    };
  if (confidence < settings.answerThreshold)
    return {
      ...judged,
      status: 'unsure',
      statusReason: `The likeliest mode, ${likeliest}, reaches only ${percent(confidence)}.`,
    };
  if (likeliest !== main)
    return {
      ...judged,
      status: 'unsure',
      statusReason: `The run as a whole looks like ${likeliest}, but most moments like ${main}.`,
    };
  return {
    ...judged,
    status: 'ok',
    mode: likeliest,
    confidence,
    statusReason: `${likeliest} over ${percent(shares[likeliest])} of the judged arc time.`,
  };
}

/** Below it the parts are doubtful rather than different. */
const MIXED_CONFIDENCE = 0.75;

/** Mean confidence of the named segments, by time. */
function mixedConfidence(segments: readonly Segment[]): number {
  let weighted = 0;
  let total = 0;
  for (const { startS, endS, mode, confidence } of segments) {
    if (!mode) continue;
    weighted += (endS - startS) * confidence;
    total += endS - startS;
  }
  return total > 0 ? weighted / total : 0;
}

/** Calibrated probabilities of the run; contradicting estimates of the event rate flatten them. */
export function runProbabilities(
  evidence: RunEvidence,
  classifier: Classifier,
): Record<Mode, number> {
  const conflict = evidence.windows > 0 ? evidence.rateConflicts / evidence.windows : 0;
  const { vector, opinions } = evidence;
  const p = classifier.runProbabilities(vector, opinions, 1 - CONFLICT_COST * conflict);
  return Object.fromEntries(MODES.map((mode, k) => [mode, p[k]!])) as Record<Mode, number>;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

function empty(): Omit<Verdict, 'status' | 'statusReason'> {
  return {
    mode: null,
    confidence: null,
    probabilities: null,
    shareOfArcTime: null,
    arcStretches: [],
    segments: [],
    reasons: [],
  };
}
