/** How far two or more people agree beyond chance. */
export interface Kappa {
  /** 1 full agreement, 0 that of chance; null where chance alone gives full agreement (one label only). */
  kappa: number | null;
  /** Share of pairs of judgements that agree. */
  observed: number;
  units: number;
}

/** Cohen's kappa of two labellers (J. Cohen, Educ. Psychol. Meas. 20 (1960) 37); null without pairs. */
export function cohenKappa(pairs: readonly (readonly [string, string])[]): Kappa | null {
  if (pairs.length === 0) return null;
  const n = pairs.length;
  const labels = [...new Set(pairs.flat())];
  const observed = pairs.filter(([a, b]) => a === b).length / n;
  const share = (side: 0 | 1, label: string) =>
    pairs.filter((pair) => pair[side] === label).length / n;
  const expected = labels.reduce((sum, label) => sum + share(0, label) * share(1, label), 0);
  return { kappa: beyondChance(observed, expected), observed, units: n };
}

/**
 * Fleiss' kappa of any number of labellers (J. L. Fleiss, Psychol. Bull. 76 (1971) 378), each unit
 * being the list of labels that it was given. Units with fewer than two labels say nothing. Where
 * units have unlike numbers of labels, each unit still counts once. Null without units.
 */
export function fleissKappa(units: readonly (readonly string[])[]): Kappa | null {
  const judged = units.filter((labels) => labels.length >= 2);
  if (judged.length === 0) return null;
  const totals = new Map<string, number>();
  let all = 0;
  let agreement = 0;
  for (const labels of judged) {
    const n = labels.length;
    const counts = new Map<string, number>();
    for (const label of labels) counts.set(label, (counts.get(label) ?? 0) + 1);
    const squares = [...counts.values()].reduce((sum, count) => sum + count * count, 0);
    agreement += (squares - n) / (n * (n - 1));
    for (const [label, count] of counts) totals.set(label, (totals.get(label) ?? 0) + count);
    all += n;
  }
  const observed = agreement / judged.length;
  const expected = [...totals.values()].reduce((sum, count) => sum + (count / all) ** 2, 0);
  return { kappa: beyondChance(observed, expected), observed, units: judged.length };
}

function beyondChance(observed: number, expected: number): number | null {
  return expected > 1 - 1e-12 ? null : (observed - expected) / (1 - expected);
}
