/** Length of all stretches together, s; they may not overlap. */
export const totalS = (stretches: readonly { startS: number; endS: number }[]): number =>
  stretches.reduce((sum, { startS, endS }) => sum + endS - startS, 0);
