import { cohenKappa, fleissKappa, type Kappa } from '../score/kappa.js';
import { labelOfSpans, type TruthRun } from './truth-runs.js';

/** How far the people who labelled agree with one another. */
export interface Agreement {
  labellers: string[];
  /** Every two people, on what both of them labelled. */
  pairs: { first: string; second: string; cohen: Kappa | null }[];
  /** All of them together. */
  fleiss: Kappa | null;
}

/**
 * Agreement on runs, and on parts where all people of a run labelled the very same parts; otherwise
 * each person's parts are first made into one label of the run. Null for a single labeller.
 */
export function agreementOf(runs: readonly TruthRun[], mixedShare: number): Agreement | null {
  const labellers = [...new Set(runs.flatMap((run) => run.labellings.map((one) => one.labeller)))];
  labellers.sort();
  if (labellers.length < 2) return null;
  const units = runs.flatMap((run) => unitsOf(run, mixedShare));
  const pairs = labellers.flatMap((first, i) =>
    labellers.slice(i + 1).map((second) => {
      const both = units.flatMap((unit) => {
        const [a, b] = [unit.get(first), unit.get(second)];
        return a !== undefined && b !== undefined ? [[a, b] as const] : [];
      });
      return { first, second, cohen: cohenKappa(both) };
    }),
  );
  return { labellers, pairs, fleiss: fleissKappa(units.map((unit) => [...unit.values()])) };
}

/** What was judged, each with the label of every person who judged it. */
function unitsOf(run: TruthRun, mixedShare: number): Map<string, string>[] {
  const { labellings } = run;
  if (labellings.length < 2) return [];
  const keys = labellings.map(({ whole, spans }) =>
    whole === null
      ? spans.map(({ startS, endS }) => `${startS.toFixed(3)} ${endS.toFixed(3)}`)
      : [],
  );
  const same = keys[0]!.length > 0 && keys.every((one) => one.join() === keys[0]!.join());
  if (same)
    return keys[0]!.map(
      (_, i) => new Map(labellings.map(({ labeller, spans }) => [labeller, spans[i]!.label])),
    );
  return [
    new Map(
      labellings.map(({ labeller, whole, spans }) => [
        labeller,
        whole ?? labelOfSpans(spans, mixedShare),
      ]),
    ),
  ];
}
