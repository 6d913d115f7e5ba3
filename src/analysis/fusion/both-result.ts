import type { Note } from '../../core/index.js';
import { modelFingerprint } from '../../model/index.js';
import type { Recording } from '../../recording/index.js';
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
  if (!fused) notes.push({ code: 'not-fused', message: NOT_FUSED });
  else if (!alignment.found) notes.push({ code: 'alignment-not-shown', message: NOT_SHOWN });
  if (
    fused &&
    sources.some(
      ({ model, featureSet }) => pooling.models[featureSet.id] !== modelFingerprint(model),
    )
  )
    notes.push({
      code: 'pooling-of-other-models',
      message: 'The weights of sound and trace were fitted with other models than those used here.',
    });
  return notes;
}

const NOT_FUSED =
  'Sound and trace do not seem to be of one run, or share too few clear events to show it; they were not judged together. The answer rests on the sound; what the trace alone says stands beside it.';
const NOT_SHOWN =
  'No common events stand out; that both are of one run and of one clock was taken from what was stated.';

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
  const peak = `peak ${score.toFixed(1)} times the rms of all lags, next best ${Math.round(100 * rival)} % of it`;
  const id = seen.featureSet.id;
  const aligned = {
    step: 'align',
    detail: found ? `sound ${delayS!.toFixed(4)} s after the trace; ${peak}` : `not found; ${peak}`,
  };
  if (!fused) return [aligned];
  return [aligned, { step: 'pool', detail: `weights: sound ${sound}, trace (${id}) ${trace}` }];
}
