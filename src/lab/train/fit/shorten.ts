import type { FittedModel, Scorer } from '../../../model/index.js';

/**
 * Digits of a threshold. It lies half way between two values that were met, so that the rest of its digits
 * say nothing; they were a third of a document.
 */
const DIGITS = 6;

/** The same model with thresholds of {@link DIGITS} digits. */
export function shortened(model: FittedModel): FittedModel {
  const { modeScorer, runScorer, gate } = model;
  return {
    ...model,
    modeScorer: shortScorer(modeScorer),
    runScorer: shortScorer(runScorer),
    gate: gate && {
      ...gate,
      scorer: shortScorer(gate.scorer),
      stretch: shortScorer(gate.stretch),
    },
  };
}

function shortScorer(scorer: Scorer): Scorer {
  if (scorer.kind !== 'trees') return scorer;
  const trees = scorer.trees.map((rounds) =>
    rounds.map((tree) => ({
      ...tree,
      threshold: tree.threshold.map((one) => Number(one.toPrecision(DIGITS))),
    })),
  );
  return { ...scorer, trees };
}
