import { defaultSettings, extractorFor, Pipeline } from '../../src/analysis/index.js';
import { MODES } from '../../src/core/index.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import { parseModel } from '../../src/model/parse/index.js';
import { CHANNELS } from './judge.js';

/** Chance of an arc that is stated where somebody says that there was one. */
const TOLD_PRIOR = 0.95;

export interface Answer {
  /** A mode, `mixed`, `unsure` or `no arc`. */
  says: string;
  likeliest: string | null;
}

/** What is said of a sound without and with the word that somebody welded. */
export interface Answers {
  untold: Answer;
  told: Answer;
}

/** The shipped model for sound. */
export async function answersOfTool(samples: Float32Array, rateHz: number): Promise<Answers> {
  const answer = async (arcPrior: number): Promise<Answer> => {
    const extractor = extractorFor({
      kind: 'sound',
      sampleRateHz: rateHz,
      channels: [...CHANNELS.sound],
    });
    const model = parseModel(await loadShippedModel(extractor.featureSet.id), extractor.featureSet);
    const pipeline = new Pipeline(extractor, rateHz, model, { ...defaultSettings(), arcPrior });
    pipeline.push([Float64Array.from(samples)]);
    pipeline.flush();
    const { status, mode, probabilities } = pipeline.verdict();
    return {
      says: status === 'no-arc' ? 'no arc' : (mode ?? 'unsure'),
      likeliest: probabilities && largestMode(MODES.map((one) => probabilities[one])),
    };
  };
  return { untold: await answer(defaultSettings().arcPrior), told: await answer(TOLD_PRIOR) };
}

/** Whether one mode is named. */
export const isNamed = ({ says }: Answer): boolean => (MODES as readonly string[]).includes(says);

/** Whether a sound without an arc is taken for one of some mode, or of several. */
export const getsMode = ({ says }: Answer): boolean => says !== 'no arc' && says !== 'unsure';

export function largestMode(shares: readonly number[]): string {
  return MODES[shares.indexOf(Math.max(...shares))]!;
}
