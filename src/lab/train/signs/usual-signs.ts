import { MODES, type Mode } from '../../../core/index.js';
import { quantile } from '../../../dsp/index.js';
import { SOUND_FEATURES } from '../../../features/index.js';
import { MEASURED_SIGNS, type UsualSigns } from '../../../judge/index.js';
import { RunVector } from '../../../model/index.js';
import type { LabelledRun } from '../data/labelled-run.js';
import { arcCount, makeArc } from '../data/make-runs.js';
import type { TrainingRecipe } from '../data/recipe.js';

/** Figures of a sign are told to so many digits. */
const DIGITS = 2;

/**
 * In which range each measured sign lies in drawn arcs of each mode: 10th, 50th and 90th percentile over runs, and the
 * share of runs that show it. Arcs whose mode is in doubt by itself are left out.
 */
export function usualSigns(recipe: TrainingRecipe, onArc: (done: number) => void): UsualSigns {
  const values = new Map<string, number[]>();
  for (let index = 0; index < arcCount(recipe); index++) {
    for (const run of makeArc(recipe, index).sound) add(values, run);
    onArc(index + 1);
  }
  const of = (sign: string, mode: Mode) => {
    const all = values.get(`${sign} ${mode}`) ?? [];
    const shown = all.filter(Number.isFinite).sort((a, b) => a - b);
    const at = (share: number): number => Number(quantile(shown, share).toPrecision(DIGITS));
    const share = shown.length / Math.max(1, all.length);
    return { low: at(0.1), middle: at(0.5), high: at(0.9), shown: Number(share.toFixed(2)) };
  };
  return Object.fromEntries(
    MEASURED_SIGNS.map(({ id }) => [
      id,
      Object.fromEntries(MODES.map((mode) => [mode, of(id, mode)])),
    ]),
  ) as UsualSigns;
}

function add(values: Map<string, number[]>, { mode, unambiguous, windows }: LabelledRun): void {
  if (!unambiguous || mode === null) return;
  const vector = new RunVector(SOUND_FEATURES.features.length);
  for (const one of windows) if (one.mode !== null) vector.add(one.window.values);
  const mean = (feature: string): number =>
    vector.mean(SOUND_FEATURES.features.findIndex(({ id }) => id === feature));
  for (const sign of MEASURED_SIGNS) {
    const key = `${sign.id} ${mode}`;
    const list = values.get(key) ?? [];
    values.set(key, list);
    list.push(sign.value(mean));
  }
}
