/**
 * Size of a maximum matching between two lists: the most pairs that can be made when each item is used
 * once (augmenting paths, H. W. Kuhn, Naval Res. Logist. Quart. 2 (1955) 83). Greedy pairing can
 * fall short of it.
 */
export function maximumMatching<A, B>(
  left: readonly A[],
  right: readonly B[],
  fits: (a: A, b: B) => boolean,
): number {
  const choices = left.map((a) => right.flatMap((b, j) => (fits(a, b) ? [j] : [])));
  const partner = new Int32Array(right.length).fill(-1);
  let size = 0;
  for (let i = 0; i < left.length; i++) {
    if (augment(i, choices, partner, new Set())) size++;
  }
  return size;
}

function augment(
  i: number,
  choices: readonly number[][],
  partner: Int32Array,
  tried: Set<number>,
): boolean {
  for (const j of choices[i]!) {
    if (tried.has(j)) continue;
    tried.add(j);
    if (partner[j]! < 0 || augment(partner[j]!, choices, partner, tried)) {
      partner[j] = i;
      return true;
    }
  }
  return false;
}
