import type { BrowserStep, DoubtParams, LiveParams } from '../rooms/live.js';
import type { CatalogueOf } from '../writer.js';

const STEPS: Readonly<Record<BrowserStep, string>> = {
  autoGainControl: 'gain control',
  noiseSuppression: 'noise suppression',
  echoCancellation: 'echo cancellation',
};

function microphone({ off, stillOn, notTold }: LiveParams['microphone-as-asked']): string {
  const list = (head: string, steps: readonly BrowserStep[]): string[] =>
    steps.length === 0 ? [] : [`${head}: ${steps.map((step) => STEPS[step]).join(', ')}`];
  const parts = [...list('off', off), ...list('STILL ON', stillOn), ...list('not told', notTold)];
  return `Raw sound was asked for; the browser reports ${parts.join('; ')}.`;
}

export const LIVE: CatalogueOf<LiveParams> = {
  'microphone-as-asked': microphone,
  'microphone-processed': microphone,
  'browser-resampled': ({ deviceHz, usedHz }, write) =>
    `The microphone runs at ${write.plain(deviceHz)} Hz, but the browser hands its sound over at ${write.plain(usedHz)} Hz.`,
  'tone-in-recording': ({ toneHz, atS }, write) =>
    `Two tones of ${write.plain(toneHz)} Hz, below the band that is judged, were sounded at ${write.fixed(atS, 1)} s.`,
  'recording-interrupted': (params, write) => {
    if (params.by === 'too-long')
      return `The recording was ended after ${write.plain(params.longestS)} s.`;
    return params.by === 'call'
      ? 'A call or a locked screen ended the recording; what came before is kept and judged.'
      : 'The microphone was taken away while recording; what came before is kept and judged.';
  },
  'live-weld': ({ weld, startedAt }, write) =>
    `Weld ${write.plain(weld)} of a live signal; times count from its first sample, heard at ${startedAt}.`,
  'live-lost-samples': ({ samples }, write) =>
    `${write.plain(samples)} samples were lost in the line since the weld before.`,
  'live-rows': ({ rateHz, by }, write) =>
    `Rows at ${write.plain(rateHz)} Hz, ${by === 'stated' ? 'as stated' : 'from the times of the first rows'}.`,
};

export const DOUBTS: CatalogueOf<DoubtParams> = {
  'no-mode-stands-out': () => 'No mode stands out in this stretch.',
  'mode-in-doubt': ({ mode, confidence }, write) =>
    `The mode of this stretch is in doubt: ${write.mode(mode)} at ${write.fixed(confidence, 2)}.`,
};
