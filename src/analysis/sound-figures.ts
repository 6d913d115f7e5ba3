import type { ExtractorSummary } from '../features/index.js';
import type { RunEvidence, Verdict } from '../judge/index.js';

/** Windows with a clear line, as a share of all, from which the run has an event rate. */
const RATE_SHARE = 0.3;
/** Share of the clear windows that must agree on the rate. */
const AGREEMENT = 0.5;

/**
 * What sound shows of the run in figures: the rate of the arc's acoustic events, and under the name of
 * the mode where the mode is known. Null where no line stands clear.
 */
export function soundFigures(evidence: RunEvidence, verdict: Verdict): ExtractorSummary['figures'] {
  const found = evidence.rates.rate();
  const clear =
    found !== null &&
    evidence.rates.windows >= RATE_SHARE * evidence.windows &&
    found.share >= AGREEMENT;
  const rateHz = clear ? found.rateHz : null;
  const mode = verdict.mode;
  return {
    eventRateHz: rateHz,
    shortCircuitRateHz: mode === 'short-circuit' ? rateHz : null,
    dropRateHz: mode === 'spray' || mode === 'globular' ? rateHz : null,
    pulseRateHz: mode === 'pulsed-spray' ? rateHz : null,
    eventRateAgreementShare: evidence.ratePairs
      ? 1 - evidence.rateConflicts / evidence.ratePairs
      : null,
  };
}
