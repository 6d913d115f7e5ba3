/** Probabilities of one run, in the order of its labels, and the number of the true label. */
export interface ForecastCase {
  probabilities: readonly number[];
  truth: number;
}

/** Share of the cases whose likeliest label is the true one; null without any. */
export function accuracyOf(cases: readonly ForecastCase[]): number | null {
  return meanOf(cases, ({ probabilities, truth }) =>
    probabilities.indexOf(Math.max(...probabilities)) === truth ? 1 : 0,
  );
}

/** Mean of Σ (p − outcome)² over the labels (Brier, Mon. Weather Rev. 78 (1950) 1): 0 best, 2 worst. */
export function brierScore(cases: readonly ForecastCase[]): number | null {
  return meanOf(cases, ({ probabilities, truth }) =>
    probabilities.reduce((sum, p, k) => sum + (p - (k === truth ? 1 : 0)) ** 2, 0),
  );
}

/** Smallest probability that counts, so that one certain error does not make the mean infinite. */
export const LOG_LOSS_FLOOR = 1e-6;

/** Mean of −ln p of what happened; probabilities are floored at {@link LOG_LOSS_FLOOR}. */
export function logLoss(cases: readonly ForecastCase[]): number | null {
  return meanOf(
    cases,
    ({ probabilities, truth }) => -Math.log(Math.max(LOG_LOSS_FLOOR, probabilities[truth] ?? 0)),
  );
}

/** One row of a reliability table. */
export interface ReliabilityBin {
  from: number;
  to: number;
  count: number;
  /** Mean confidence of the named label, and how often it was right; null for an empty bin. */
  confidence: number | null;
  accuracy: number | null;
}

/** Confidence of the likeliest label against how often it is right, in equal bins of confidence. */
export function reliability(cases: readonly ForecastCase[], bins = 10): ReliabilityBin[] {
  const sums = Array.from({ length: bins }, () => ({ count: 0, confidence: 0, hits: 0 }));
  for (const one of cases) {
    const confidence = Math.max(...one.probabilities);
    const bin = sums[Math.min(bins - 1, Math.floor(confidence * bins))]!;
    bin.count++;
    bin.confidence += confidence;
    if (one.probabilities.indexOf(confidence) === one.truth) bin.hits++;
  }
  return sums.map(({ count, confidence, hits }, i) => ({
    from: i / bins,
    to: (i + 1) / bins,
    count,
    confidence: count > 0 ? confidence / count : null,
    accuracy: count > 0 ? hits / count : null,
  }));
}

/** Mean gap between confidence and accuracy over the bins, weighted by count; null without cases. */
export function calibrationError(cases: readonly ForecastCase[], bins = 10): number | null {
  if (cases.length === 0) return null;
  return reliability(cases, bins).reduce(
    (sum, bin) =>
      bin.count > 0
        ? sum + (bin.count / cases.length) * Math.abs(bin.confidence! - bin.accuracy!)
        : sum,
    0,
  );
}

function meanOf(
  cases: readonly ForecastCase[],
  value: (one: ForecastCase) => number,
): number | null {
  if (cases.length === 0) return null;
  return cases.reduce((sum, one) => sum + value(one), 0) / cases.length;
}
