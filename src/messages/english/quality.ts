import type { QualityParams } from '../rooms/quality.js';
import type { CatalogueOf } from '../writer.js';

const missing = (samples: string, name: string): string =>
  `${samples} samples of the ${name} were not numbers and were replaced by the one before.`;
const clipped = (name: string): string =>
  `The ${name} rests at the end of its range: peaks are cut off.`;
const held = (name: string): string =>
  `The ${name} stands still for milliseconds at a time: a slow or frozen reading.`;

export const QUALITY: CatalogueOf<QualityParams> = {
  clipping: ({ shareOfSamples }, write) =>
    `${write.fixed(100 * shareOfSamples, 1)} % of the samples stand at the rails: move the microphone away or lower the gain.`,
  'sample-rate-low': (params, write) =>
    params.of === 'sound'
      ? `At ${write.plain(params.sampleRateHz)} samples a second the band above ${write.plain(Math.round(params.sampleRateHz / 2))} Hz is missing; 44,100 or 48,000 hears the whole arc.`
      : `At ${write.plain(params.sampleRateHz)} Hz a short circuit of 1 ms has fewer than five samples; short and drop figures are rough below ${write.plain(params.enoughHz)} Hz.`,
  'short-recording': ({ durationS }, write) =>
    `${write.fixed(durationS, 2)} s is little to judge by; record 5 s of steady arc or more.`,
  silent: () =>
    'The recording is silent from end to end: the microphone was off, blocked or not allowed.',
  'voltage-missing-samples': ({ samples }, write) => missing(write.plain(samples), 'voltage'),
  'current-missing-samples': ({ samples }, write) => missing(write.plain(samples), 'current'),
  'voltage-clipped': () => clipped('voltage'),
  'current-clipped': () => clipped('current'),
  'voltage-held': () => held('voltage'),
  'current-held': () => held('current'),
  'voltage-negative': () =>
    'The voltage is below −9 V for much of the time: an arc with the leads swapped looks so. State a negative scale if that is the case.',
};
