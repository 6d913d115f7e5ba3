import { MODES } from '../../../core/index.js';
import { calibrate } from '../../../model/index.js';
import type { FitOutcome } from '../fit/fit-model.js';

/** What is said of one drawn arc through one feature extractor, by scorers that had not seen its family. */
export interface Opinion {
  /** Of the labelled run; a sound's is its arc's with the number of the rendering behind it. */
  id: string;
  family: string;
  unambiguous: boolean;
  /** Place in {@link MODES}. */
  truth: number;
  probabilities: number[];
}

/** Both opinions of one rendering of one arc. */
export interface OpinionPair extends Pick<Opinion, 'family' | 'unambiguous' | 'truth'> {
  sound: number[];
  trace: number[];
}

/** The held-out opinions of a fit, calibrated as the model is. */
export function opinionsOf({ heldOut, model }: FitOutcome): Opinion[] {
  return heldOut.map(({ run: { id, family, unambiguous }, mode, scores }) => ({
    id,
    family,
    unambiguous,
    truth: MODES.indexOf(mode),
    probabilities: Array.from(calibrate(model.runCalibration, scores)),
  }));
}

/** Every sound of which there is a trace, with that trace. */
export function pairOpinions(
  sounds: readonly Opinion[],
  traces: readonly Opinion[],
): OpinionPair[] {
  const byArc = new Map(traces.map((one) => [one.id, one]));
  return sounds.flatMap(({ id, family, unambiguous, truth, probabilities }) => {
    const trace = byArc.get(id.slice(0, id.lastIndexOf('/')));
    return trace
      ? [{ family, unambiguous, truth, sound: probabilities, trace: trace.probabilities }]
      : [];
  });
}
