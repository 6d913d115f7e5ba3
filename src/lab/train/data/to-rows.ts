import { MODES } from '../../../core/index.js';
import { isSilent } from '../../../model/index.js';
import type { Rows } from '../fit/rows.js';
import type { LabelledRun, LabelledWindow } from './labelled-run.js';

/** Ambiguous runs (two mechanisms, or drops near the wire's size) teach less. */
const AMBIGUOUS_WEIGHT = 0.4;

/** Windows that teach the mode; each run weighs the same. */
export function modeRows(runs: readonly LabelledRun[]): Rows {
  return collect(runs, ({ mode }) => (mode === null ? null : MODES.indexOf(mode)));
}

/** Windows that teach arc (1) or no arc (0); windows across an edge, and digital silence, teach nothing. */
export function arcRows(runs: readonly LabelledRun[]): Rows {
  return collect(runs, ({ arc, window }) => {
    if (arc === 'edge' || isSilent(window.values)) return null;
    return arc === 'on' ? 1 : 0;
  });
}

function collect(
  runs: readonly LabelledRun[],
  labelOf: (window: LabelledWindow) => number | null,
): Rows {
  const values: Float64Array[] = [];
  const labels: number[] = [];
  const weights: number[] = [];
  const numbers: number[] = [];
  for (const [number, run] of runs.entries()) {
    const taught = run.windows.flatMap((window) => {
      const label = labelOf(window);
      return label === null ? [] : [{ window, label }];
    });
    const weight = (run.unambiguous || run.mode === null ? 1 : AMBIGUOUS_WEIGHT) / taught.length;
    for (const { window, label } of taught) {
      values.push(window.window.values);
      labels.push(label);
      weights.push(weight);
      numbers.push(number);
    }
  }
  return {
    values,
    label: Uint8Array.from(labels),
    weight: Float64Array.from(weights),
    run: Int32Array.from(numbers),
  };
}
