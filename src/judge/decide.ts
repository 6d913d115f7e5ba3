import { type ArcInterval, MODES, type Mode, type Segment } from '../core/index.js';
import type { FeatureSet } from '../features/index.js';
import { type Made, message } from '../messages/index.js';
import type { Classifier } from '../model/index.js';
import { rankReasons } from './reasons.js';
import { freeDrops, oneOf, type RemainingModes, remainingModes } from './remaining.js';
import type { RunEvidence } from './run-evidence.js';
import { type Shares, shareOfArcTime } from './shares.js';
import type { PlainRefusal } from './signs/index.js';
import { because, type Judged, type Verdict } from './verdict.js';

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
  /** Highest arc score of the arc intervals, see `arc-classifier.ts`. */
  bestScore: number;
}

/**
 * Part of the score that is taken back when the two estimates of the event rate contradict each other
 * in every window: half of the certainty, in log-odds, that the scores alone would give.
 */
const CONFLICT_COST = 0.5;

/** One answer from what was gathered over the run; `refusal` says what was heard where it plainly was no arc. */
export function decide(
  accepted: JudgedIntervals,
  doubtful: JudgedIntervals,
  classifier: Classifier,
  featureSet: FeatureSet,
  settings: DecisionSettings,
  refusal: PlainRefusal | null = null,
): Verdict {
  if (accepted.arcIntervals.length > 0)
    return decideArc(accepted, classifier, featureSet, settings);
  if (doubtful.arcIntervals.length > 0) return decideDoubtful(doubtful, classifier, featureSet);
  return {
    ...empty(),
    status: 'no-arc',
    ...because(refusal ? message('plainly-no-arc', { heard: refusal }) : message('no-arc-shown')),
  };
}

function decideDoubtful(
  doubtful: JudgedIntervals,
  classifier: Classifier,
  set: FeatureSet,
): Verdict {
  const { evidence } = doubtful;
  const arc = classifier.arcProbability(doubtful.bestScore);
  return {
    ...empty(),
    arcStretches: arc >= 0.5 ? doubtful.arcIntervals : [],
    status: 'unsure',
    ...because(message('may-be-an-arc', { probability: arc })),
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
    return { ...base, status: 'unsure', ...because(message('arc-too-short')) };
  const probabilities = runProbabilities(evidence, classifier);
  const reasons = rankReasons(evidence, classifier, set);
  const judged = { ...base, probabilities, reasons };
  if (isUnlike(evidence, classifier))
    return {
      ...judged,
      status: 'unsure',
      ...because(message('arc-unlike-model')),
    };
  return classifier.findsArcs
    ? byEar(judged, shares, evidence, classifier, settings)
    : nameMode(judged, shares, probabilities, settings);
}

/** What sound can tell: a mode, else the modes that remain, else the likeliest. */
function byEar(
  judged: Judged,
  shares: Shares,
  evidence: RunEvidence,
  classifier: Classifier,
  settings: DecisionSettings,
): Verdict {
  const probabilities = judged.probabilities!;
  const verdict = nameMode(judged, shares, probabilities, settings);
  const { dropsHeard } = classifier.run(evidence);
  const sizeHeard = dropsHeard === null || dropsHeard >= classifier.leastDropsHeard;
  if (!sizeHeard && verdict.mode !== 'mixed') {
    const free = freeDrops(probabilities, settings.answerThreshold);
    const size = free && message('drop-size-not-audible', { probability: free.probability });
    if (free && size) return open(verdict, free, size, evidence);
  }
  if (verdict.mode !== null) return verdict;
  const set = remainingModes(probabilities);
  return set
    ? open(verdict, set, oneOf(set, probabilities), evidence)
    : settleable(verdict, evidence);
}

/** An answer that leaves several modes. */
function open(
  verdict: Verdict,
  remaining: RemainingModes,
  reason: Made,
  evidence: RunEvidence,
): Verdict {
  const left = { ...verdict, status: 'unsure' as const, mode: null, confidence: null };
  return settleable({ ...left, ...because(reason), remainingModes: remaining }, evidence);
}

/** With what would settle the question. */
function settleable(verdict: Verdict, { clipped, windows }: RunEvidence): Verdict {
  const tooLoud = windows > 0 && clipped / windows > CLIPPED;
  const { text, code, params } = message('would-settle', { tooLoud });
  return { ...verdict, wouldSettle: text, wouldSettleMessage: { code, params } };
}

/** Share of samples at the rails from which the level is to be turned down (common practice, no source). */
const CLIPPED = 0.001;

export function nameMode(
  judged: Judged,
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
      ...because(
        message('modes-mixed', {
          modes: [main, ...others].map((mode) => ({ mode, shareOfTime: shares[mode] })),
        }),
      ),
    };
  if (confidence < settings.answerThreshold)
    return {
      ...judged,
      status: 'unsure',
      ...because(message('mode-not-sure', { mode: likeliest, probability: confidence })),
    };
  if (likeliest !== main)
    return {
      ...judged,
      status: 'unsure',
      ...because(message('run-against-moments', { run: likeliest, moments: main })),
    };
  return {
    ...judged,
    status: 'ok',
    mode: likeliest,
    confidence,
    ...because(message('mode-held', { mode: likeliest, shareOfTime: shares[likeliest] })),
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

/** Whether a run is unlike all that its model was made from. */
export function isUnlike(evidence: RunEvidence, classifier: Classifier): boolean {
  const { novelty } = classifier.model;
  if (!novelty) return false;
  const ofRun = classifier.run(evidence).novelty;
  return (ofRun ?? evidence.novelty / evidence.windows) > novelty.limit;
}

/** Calibrated probabilities of the run; contradicting estimates of the event rate flatten them. */
export function runProbabilities(
  evidence: RunEvidence,
  classifier: Classifier,
): Record<Mode, number> {
  const conflict = evidence.windows > 0 ? evidence.rateConflicts / evidence.windows : 0;
  const p = classifier.run(evidence, 1 - CONFLICT_COST * conflict).probabilities;
  return Object.fromEntries(MODES.map((mode, k) => [mode, p[k]!])) as Record<Mode, number>;
}

function empty(): Judged {
  return {
    mode: null,
    confidence: null,
    probabilities: null,
    shareOfArcTime: null,
    arcStretches: [],
    segments: [],
    reasons: [],
    remainingModes: null,
    wouldSettle: null,
  };
}
