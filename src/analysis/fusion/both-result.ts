import type { Note } from '../../core/index.js';
import { message, note } from '../../messages/index.js';
import { modelFingerprint } from '../../model/index.js';
import type { Recording } from '../../recording/index.js';
import { stepOf } from '../analyse.js';
import type { Result } from '../result/index.js';
import type { AnalyseBothOptions, HeardSource } from './both-options.js';
import type { Alignment, Pooling, PoolWeights } from './index.js';

/** Speed of sound in air of 20 °C, m/s (331.3 + 0.606·20; common practice, no source). */
const SOUND_M_PER_S = 343.4;

/** What must be said of the pair. */
export function notesOf(
  alignment: Alignment,
  fused: boolean,
  pooling: Pooling,
  sources: readonly HeardSource[],
): Note[] {
  const notes: Note[] = [];
  if (!fused) notes.push(note('not-fused'));
  else if (!alignment.found) notes.push(note('alignment-not-shown'));
  if (
    fused &&
    sources.some(
      ({ model, featureSet }) => pooling.models[featureSet.id] !== modelFingerprint(model),
    )
  )
    notes.push(note('pooling-of-other-models'));
  return notes;
}

/** The trace as it stands in the result. */
export function companionOf(
  trace: Recording,
  seen: HeardSource,
  { delayS, score, driftPpm, found }: Alignment,
  fused: boolean,
  options: AnalyseBothOptions,
): Omit<NonNullable<Result['companion']>, 'agreed'> {
  const { status, mode, confidence } = seen.pipeline.verdict();
  const known = options.sharedClock && found && delayS !== null && delayS >= 0;
  return {
    ...options.trace,
    kind: 'electrical',
    sampleRateHz: trace.sampleRateHz,
    durationS: seen.pipeline.durationS,
    delayS: found ? delayS : null,
    distanceM: known ? delayS * SOUND_M_PER_S : null,
    correlation: score,
    driftPpm,
    fused,
    alone: { status, mode, confidence },
  };
}

/** How the two were brought together. */
export function stepsOf(
  { found, delayS, score, rival }: Alignment,
  { sound, trace }: PoolWeights,
  seen: HeardSource,
  fused: boolean,
): Result['steps'] {
  const aligned = message('step-align', {
    delayS: found ? delayS : null,
    peakOverRms: score,
    nextBest: rival,
  });
  const steps = [stepOf('align', aligned)];
  if (!fused) return steps;
  const weights = { soundWeight: sound, traceWeight: trace, featureSet: seen.featureSet.id };
  return [...steps, stepOf('pool', message('step-pool', weights))];
}
