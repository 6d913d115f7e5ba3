import { MODES } from '../core/index.js';
import type { FeatureSet } from '../features/index.js';
import type { Classifier } from '../model/index.js';
import type { RunEvidence } from './run-evidence.js';
import type { Reason } from './verdict.js';

const LEAST_WEIGHT = 0.05;
const MOST = 8;

/** The features that moved the scores most, strongest first: for the likeliest mode and for its rivals. */
export function rankReasons(
  evidence: RunEvidence,
  classifier: Classifier,
  featureSet: FeatureSet,
): Reason[] {
  const contributions = classifier.explainRun(evidence.vector, evidence.opinions);
  return featureSet.features
    .map((feature, i) => {
      let best = 0;
      for (let k = 1; k < MODES.length; k++)
        if (contributions[k]![i]! > contributions[best]![i]!) best = k;
      const value = evidence.vector.mean(i);
      return {
        feature: feature.id,
        value: Number.isNaN(value) ? null : value,
        unit: feature.unit,
        speaksFor: MODES[best]!,
        weight: contributions[best]![i]!,
        text: `${feature.meaning}: ${sayValue(value, feature.unit)}`,
      };
    })
    .filter((reason) => reason.weight >= LEAST_WEIGHT)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST);
}

/** Logarithms are for the model; people read the number itself. */
function sayValue(value: number, unit: string): string {
  if (Number.isNaN(value)) return 'not shown here';
  if (unit === 'log10') return `${digits(10 ** value)} (ratio)`;
  if (unit === 'log2 Hz') return `${digits(2 ** value)} Hz`;
  return unit === '1' ? digits(value) : `${digits(value)} ${unit}`;
}

function digits(value: number): string {
  return Number(value.toPrecision(3)).toString();
}
