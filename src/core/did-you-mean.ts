/**
 * ` Did you mean "…"?` when a known word is near what was typed, else the empty string. Near means a
 * third of the letters changed at most (Damerau-Levenshtein, neighbours swapped count once).
 */
export function didYouMean(typed: string, known: readonly string[]): string {
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const word of known) {
    const distance = editDistance(typed.toLowerCase(), word.toLowerCase());
    if (distance < bestDistance) {
      best = word;
      bestDistance = distance;
    }
  }
  const near = best !== undefined && bestDistance <= Math.max(1, Math.floor(best.length / 3));
  return near ? ` Did you mean "${best}"?` : '';
}

/** Edits (insert, delete, replace, swap of neighbours) that turn one word into the other. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const steps = [row[j - 1]! + 1, previous[j]! + 1, previous[j - 1]! + (same ? 0 : 1)];
      if (swapped) steps.push(before[j - 2]! + 1);
      row.push(Math.min(...steps));
    }
    before = previous;
    previous = row;
  }
  return previous[b.length]!;
}
