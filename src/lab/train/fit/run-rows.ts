import { MODES, type Mode, type Random } from '../../../core/index.js';
import {
  type FittedModel,
  RunVector,
  runScores,
  score,
  WindowOpinions,
} from '../../../model/index.js';
import type { LabelledRun } from '../data/labelled-run.js';
import type { Rows } from './rows.js';

/** Shorter spans cut from each run, so that a run of a second or two is known ground too. */
const SPANS = 2;

/**
 * Vectors of whole runs and of shorter spans of them, for the scorer of runs. Only windows that teach
 * a mode count, and only spans of one mode.
 */
export function runRows(runs: readonly LabelledRun[], random: Random): Rows {
  const rows: { values: Float64Array; label: number; weight: number; run: number }[] = [];
  for (const [number, run] of runs.entries()) {
    const taught = run.windows.filter((window) => window.mode !== null);
    if (taught.length === 0) continue;
    const spans = [[0, taught.length]];
    for (let i = 0; i < SPANS; i++) {
      const length = random.integer(1, taught.length);
      const from = random.integer(0, taught.length - length);
      spans.push([from, from + length]);
    }
    for (const [from, to] of spans) {
      const part = taught.slice(from, to);
      const mode = part[0]!.mode!;
      if (part.some((window) => window.mode !== mode)) continue;
      const weight = (run.unambiguous ? 1 : 0.4) / spans.length;
      rows.push({
        values: vectorOf(part.map(({ window }) => window.values)),
        label: MODES.indexOf(mode),
        weight,
        run: number,
      });
    }
  }
  return {
    values: rows.map((row) => row.values),
    label: Uint8Array.from(rows, (row) => row.label),
    weight: Float64Array.from(rows, (row) => row.weight),
    run: Int32Array.from(rows, (row) => row.run),
  };
}

/** The vector of a run from the vectors of its windows. */
export function vectorOf(windows: readonly Float64Array[]): Float64Array {
  const vector = new RunVector(windows[0]!.length);
  for (const values of windows) vector.add(values);
  return vector.values();
}

/** Centred scores of a run by all of its windows that teach `mode`; null without any. */
export function scoreRun(
  run: LabelledRun,
  mode: Mode,
  model: Pick<FittedModel, 'modeScorer' | 'runScorer'>,
): Float64Array | null {
  const windows = run.windows.flatMap((one) => (one.mode === mode ? [one.window.values] : []));
  if (windows.length === 0) return null;
  const opinions = new WindowOpinions(windows[0]!.length);
  for (const values of windows) opinions.add(score(model.modeScorer, values));
  return runScores(model, vectorOf(windows), opinions.scores());
}
