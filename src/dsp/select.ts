/**
 * The value of rank `rank` (0 the smallest) among the first `count` values, by quickselect (Hoare, Comm.
 * ACM 4 (1961) 321); the values are reordered. Much cheaper than sorting where one rank is wanted.
 * `count` must be above `rank`; NaN has no place among the values.
 */
export function selectRank(values: Float64Array, count: number, rank: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const pivot = values[(low + high) >> 1]!;
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const swap = values[i]!;
      values[i++] = values[j]!;
      values[j--] = swap;
    }
    if (rank <= j) high = j;
    else if (rank >= i) low = i;
    else break;
  }
  return values[rank]!;
}
