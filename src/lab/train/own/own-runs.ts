import { ArcError, MODES, type Mode } from '../../../core/index.js';
import type { FeatureWindow } from '../../../features/index.js';
import { steadyPart } from '../../../judge/index.js';
import type { RecordedWindows } from '../../evaluate/index.js';
import { majority, type TruthRun } from '../../evaluate/index.js';
import type { LabelledRun } from '../data/labelled-run.js';

/** Fewest recordings of each mode that a model is fitted on. */
export const LEAST_RUNS = 20;
/** Groups that are made where none are stated. */
const FOLDS = 5;
/** Ignition and crater teach nothing, s. */
const EDGE_S = 0.3;

/**
 * Labelled windows of a recording, one run for each mode in it. A label of the whole counts where the
 * arc burns steadily (everywhere, where no arc was found); a label of a part counts in all of that part.
 * Of several people the label that most gave counts; undecided and mixed ones teach nothing.
 */
export function ownRuns(truth: TruthRun, recorded: RecordedWindows, family: string): LabelledRun[] {
  const steady = recorded.arcs.map((arc) => steadyPart(arc, EDGE_S, EDGE_S));
  const inArc = ({ startS, endS }: FeatureWindow): boolean =>
    steady.length === 0 ||
    steady.some(({ fromS, toS }) => fromS <= startS + 1e-9 && toS >= endS - 1e-9);
  const byMode = new Map<Mode, LabelledRun>();
  for (const window of recorded.windows) {
    if (window.values.every((value) => Number.isNaN(value))) continue;
    const labels = truth.labellings.flatMap(({ whole, spans }) => {
      const part = spans.find(
        (one) => one.startS <= window.startS + 1e-9 && one.endS >= window.endS - 1e-9,
      );
      if (part) return [part.label];
      return whole !== null && inArc(window) ? [whole] : [];
    });
    const mode = labels.length > 0 ? MODES.find((one) => one === majority(labels)) : undefined;
    if (!mode) continue;
    const run = byMode.get(mode) ?? emptyRun(truth.file, mode, family);
    byMode.set(mode, run);
    run.windows.push({ window, mode, arc: 'on' });
  }
  return [...byMode.values()];
}

function emptyRun(file: string, mode: Mode, family: string): LabelledRun {
  return {
    id: `${file} ${mode}`,
    family,
    conditions: ['own'],
    mode,
    unambiguous: true,
    windows: [],
  };
}

/**
 * The fold of each recording: its stated group, or one of five made so that every mode is spread evenly.
 * @throws ArcError `group-missing` where some recordings have a group and others none
 */
export function foldsOf(truths: readonly TruthRun[]): Map<string, string> {
  const without = truths.filter((one) => one.group === '');
  if (without.length > 0 && without.length < truths.length)
    throw new ArcError({
      code: 'group-missing',
      what: `${without.length} of ${truths.length} recordings have no group (${without[0]!.file} first).`,
      expected: 'a group for every recording, or for none',
      todo: 'Fill in the column "group", or leave it out to keep each recording apart.',
    });
  if (without.length === 0) return new Map(truths.map((one) => [one.file, one.group]));
  const counts = new Map<string, number>();
  return new Map(
    truths.map(({ file, labellings }) => {
      const label = labellings[0]!.whole ?? labellings[0]!.spans[0]?.label ?? '';
      const count = counts.get(label) ?? 0;
      counts.set(label, count + 1);
      return [file, `fold ${1 + (count % FOLDS)}`];
    }),
  );
}

/** Recordings of each mode, and groups that hold it. */
export function countRuns(runs: readonly LabelledRun[]) {
  return MODES.map((mode) => {
    const own = runs.filter((run) => run.mode === mode);
    return { mode, runs: own.length, groups: new Set(own.map((run) => run.family)).size };
  }).filter((one) => one.runs > 0);
}

/** @throws ArcError `too-few-runs` with the counts, where a model could only be a guess */
export function checkEnough(runs: readonly LabelledRun[]): void {
  const counts = countRuns(runs);
  const groups = new Set(runs.map((run) => run.family)).size;
  const said = counts.map((one) => `${one.mode} ${one.runs} in ${one.groups} group(s)`).join(', ');
  const enough =
    counts.length >= 2 &&
    groups >= 2 &&
    counts.every((one) => one.runs >= LEAST_RUNS && one.groups >= 2);
  if (enough) return;
  throw new ArcError({
    code: 'too-few-runs',
    what: `There are recordings to learn from: ${said || 'none'}.`,
    expected: `at least two modes, each with ${LEAST_RUNS} recordings in two groups or more`,
    todo: 'Record and label more, take the labels of rare modes out, or use the shipped model.',
  });
}
