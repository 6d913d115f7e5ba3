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
  /** The modes that remain where no single one is named. */
  remaining: readonly string[];
}

/** What is said of a sound by `classify` as it is, and with the word that somebody surely welded. */
export interface Answers {
  untold: Answer;
  told: Answer;
}

/** The shipped model for sound, or another. */
export async function answersOfTool(
  samples: Float32Array,
  rateHz: number,
  loadModel: (featureSet: string) => Promise<unknown> = loadShippedModel,
): Promise<Answers> {
  const answer = async (arcPrior: number): Promise<Answer> => {
    const extractor = extractorFor({
      kind: 'sound',
      sampleRateHz: rateHz,
      channels: [...CHANNELS.sound],
    });
    const model = parseModel(await loadModel(extractor.featureSet.id), extractor.featureSet);
    const pipeline = new Pipeline(extractor, rateHz, model, { ...defaultSettings(), arcPrior });
    pipeline.push([Float64Array.from(samples)]);
    pipeline.flush();
    const { status, mode, probabilities, remainingModes } = pipeline.verdict();
    return {
      says: status === 'no-arc' ? 'no arc' : (mode ?? 'unsure'),
      remaining: remainingModes?.modes ?? [],
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
