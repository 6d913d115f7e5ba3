import type { StepParams } from '../rooms/steps.js';
import type { CatalogueOf } from '../writer.js';

export const STEPS: CatalogueOf<StepParams> = {
  'step-read': ({ quantities, sampleRateHz }, write) =>
    `${quantities.join(', ')} at ${write.plain(sampleRateHz)} Hz`,
  'step-features': ({ featureSet, version, of }, write) => {
    const band =
      of === 'sound'
        ? '1.5 kHz to 12 kHz or 0.45 of the rate, envelope at 4,000 a second'
        : 'the trace as sampled';
    return `${featureSet} version ${write.plain(version)}, ${band}`;
  },
  'step-arc': ({ arcIntervals }, write) =>
    `${write.plain(arcIntervals)} stretch(es) taken as an arc`,
  'step-classify': ({ windows, model, version }, write) =>
    `${write.plain(windows)} steady windows by ${model} ${version}`,
  'step-align': ({ delayS, peakOverRms, nextBest }, write) => {
    const peak = `peak ${write.fixed(peakOverRms, 1)} times the rms of all lags, next best ${write.percent(nextBest)} of it`;
    return delayS === null
      ? `not found; ${peak}`
      : `sound ${write.fixed(delayS, 4)} s after the trace; ${peak}`;
  },
  'step-pool': ({ soundWeight, traceWeight, featureSet }, write) =>
    `weights: sound ${write.plain(soundWeight)}, trace (${featureSet}) ${write.plain(traceWeight)}`,
};
