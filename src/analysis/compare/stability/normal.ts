/** Standard normal distribution function, absolute error below 1e-9 (West's form of Hart's rational fit). */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  const x = Math.abs(z);
  const tail = x > 37 ? 0 : upperTail(x);
  return z > 0 ? 1 - tail : tail;
}

const P = [
  220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165,
  0.700383064443688, 0.0352624965998911,
];
const Q = [
  440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461,
  16.064177579207, 1.75566716318264, 0.0883883476483184,
];

function upperTail(x: number): number {
  const bell = Math.exp((-x * x) / 2);
  if (x >= 7.07106781186547) {
    const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
    return bell / fraction / 2.506628274631;
  }
  const at = (terms: readonly number[]): number =>
    terms.reduceRight((sum, one) => sum * x + one, 0);
  return (bell * at(P)) / at(Q);
}

/** Quantile of the standard normal, by bisection of {@link normalCdf}; ±Infinity at 0 and 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) return p === 0 ? -Infinity : p === 1 ? Infinity : Number.NaN;
  let [low, high] = [-38, 38];
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Two-sided probability of a deviation as large as `z` by chance. */
export function twoSided(z: number): number {
  return 2 * normalCdf(-Math.abs(z));
}
