import { MODES, type Mode, totalS } from '../../core/index.js';
import { mean } from '../../dsp/index.js';
import type { Result } from '../result/index.js';
import { compareResults } from './compare-results.js';

/** One run of a person on a day. `day` as YYYY-MM-DD, so that days sort as text. */
export interface PersonRun {
  name: string;
  day: string;
  result: Result;
}

/** The runs of one person on one day; a mean is null where no run shows the figure. */
export interface ProgressRow {
  name: string;
  day: string;
  runs: number;
  /** Runs with a mode. */
  named: number;
  /** Share of the judged arc time in the wanted mode, or in the mode of each run where none is wanted. */
  modeShare: number | null;
  /** Share of the things looked at in the arc that are as usual. */
  goodShare: number | null;
  /** Long shorts, arc-outs, burn-backs, long arcs and dips in a minute of arc. */
  disturbancesPerMin: number | null;
  /** Spreads of short time and arc time over their means, added; of the short-circuit runs. */
  irregularity: number | null;
  /** Figures that differ from the reference by more than chance, of those compared; null without one. */
  differing: { mean: number; of: number } | null;
}

/** Rows by name, then by day. */
export function progressRows(
  runs: readonly PersonRun[],
  wanted: Mode | null,
  reference: Result | null = null,
): ProgressRow[] {
  const groups = new Map<string, PersonRun[]>();
  for (const run of runs) {
    const key = JSON.stringify([run.name, run.day]);
    groups.set(key, [...(groups.get(key) ?? []), run]);
  }
  return [...groups.values()]
    .map((group) => rowOf(group, wanted, reference))
    .sort((a, b) => compare(a.name, b.name) || compare(a.day, b.day));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function rowOf(
  group: readonly PersonRun[],
  wanted: Mode | null,
  reference: Result | null,
): ProgressRow {
  const results = group.map((one) => one.result);
  const compared = reference === null ? [] : results.map((one) => differing(reference, one));
  const judged = compared.filter((one) => one.of > 0);
  return {
    name: group[0]!.name,
    day: group[0]!.day,
    runs: results.length,
    named: results.filter((one) => one.status === 'ok').length,
    modeShare: meanOf(results.map((one) => shareIn(one, wanted))),
    goodShare: meanOf(results.map(goodShare)),
    disturbancesPerMin: meanOf(results.map(disturbancesPerMin)),
    irregularity: meanOf(
      results.map((one) =>
        one.mode === 'short-circuit' ? (one.features.stabilityIndex ?? null) : null,
      ),
    ),
    differing:
      judged.length === 0
        ? null
        : {
            mean: mean(judged.map((one) => one.count)),
            of: Math.max(...judged.map((one) => one.of)),
          },
  };
}

function differing(reference: Result, result: Result): { count: number; of: number } {
  const { changes } = compareResults(reference, result);
  return {
    count: changes.filter((one) => one.moreThanChance === true).length,
    of: changes.filter((one) => one.moreThanChance !== null).length,
  };
}

function shareIn({ shareOfArcTime, mode }: Result, wanted: Mode | null): number | null {
  if (!shareOfArcTime) return null;
  const of = wanted ?? MODES.find((one) => one === mode);
  return of ? (shareOfArcTime[of] ?? 0) : null;
}

function goodShare({ arcCondition }: Result): number | null {
  const findings = arcCondition?.findings ?? [];
  if (findings.length === 0) return null;
  return findings.filter((one) => one.rating === 'good').length / findings.length;
}

function disturbancesPerMin({ arcCondition, arcStretches, source }: Result): number | null {
  // Of a sound only pauses are known: no figure to set beside that of a trace.
  if (!arcCondition || source.kind === 'sound') return null;
  const arcS = totalS(arcStretches);
  return arcS > 0 ? (60 * arcCondition.marks.length) / arcS : null;
}

function meanOf(values: readonly (number | null)[]): number | null {
  const known = values.filter((one) => one !== null);
  return known.length === 0 ? null : mean(known);
}
