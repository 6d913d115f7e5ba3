import { MODES } from '../core/index.js';
import type { FeatureDefinition, FeatureSet } from '../features/index.js';
import { type Message, message } from '../messages/index.js';
import type { Classifier } from '../model/index.js';
import type { RunEvidence } from './run-evidence.js';
import { signReasons } from './signs/index.js';
import type { Reason } from './verdict.js';

const LEAST_WEIGHT = 0.05;
const MOST = 8;

/** The features that moved the scores most, strongest first: for the likeliest mode and for its rivals. */
export function rankReasons(
  evidence: RunEvidence,
  classifier: Classifier,
  featureSet: FeatureSet,
): Reason[] {
  const contributions = classifier.explainRun(evidence);
  if (!contributions) {
    const probabilities = classifier.run(evidence).probabilities;
    const likeliest = MODES[probabilities.indexOf(Math.max(...probabilities))]!;
    return signReasons(evidence, featureSet, likeliest);
  }
  return featureSet.features
    .map((feature, i) => {
      let best = 0;
      for (let k = 1; k < MODES.length; k++)
        if (contributions[k]![i]! > contributions[best]![i]!) best = k;
      const mean = evidence.vector.mean(i);
      const value = Number.isNaN(mean) ? null : mean;
      return {
        feature: feature.id,
        value,
        unit: feature.unit,
        speaksFor: MODES[best]!,
        weight: contributions[best]![i]!,
        ...message('sign', { feature: inWords(feature), value, unit: feature.unit }),
      };
    })
    .filter((reason) => reason.weight >= LEAST_WEIGHT)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST);
}

function inWords({ said, meaning }: FeatureDefinition): Message {
  return said ?? message('in-words', { text: meaning });
}
