import type { VerdictParams } from '../rooms/verdict.js';
import type { CatalogueOf } from '../writer.js';
import { capital } from './words.js';

export const VERDICT: CatalogueOf<VerdictParams> = {
  'no-arc-shown': () => 'Nothing in the recording shows a burning arc.',
  'plainly-no-arc': ({ heard }) =>
    heard === 'nothing-recorded'
      ? 'Nothing louder than the recorder itself was recorded: the microphone may be off, covered or far too low.'
      : `No arc: only a ${heard === 'tone' ? 'steady tone' : 'hum or buzz'} stands out.`,
  'may-be-an-arc': ({ probability }, write) =>
    `It may be an arc (${write.percent(probability)}), but rain, fire, engines or tools can sound like this; no mode is named.`,
  'arc-too-short': () => 'The arc is too short to be judged.',
  'arc-unlike-model': () => 'The arc is unlike anything the model was fitted on; no mode is named.',
  'modes-mixed': ({ modes }, write) =>
    `The run mixes ${write.and(modes.map(({ mode, shareOfTime }) => `${write.mode(mode)} (${write.percent(shareOfTime)})`))}.`,
  'mode-not-sure': ({ mode, probability }, write) =>
    `The likeliest mode, ${write.mode(mode)}, reaches only ${write.percent(probability)}.`,
  'one-of-modes': ({ modes, probability, not }, write) => {
    const out = not.length === 0 ? '' : `; not ${write.or(not.map((mode) => write.mode(mode)))}`;
    return `${capital(write.or(modes.map((mode) => write.mode(mode))))} (${write.percent(probability)} together)${out}.`;
  },
  'drop-size-not-audible': ({ probability }, write) =>
    `Free flight, drop size not audible: globular or spray (${write.percent(probability)} together).`,
  'would-settle': ({ tooLoud }) =>
    `To settle it: ${tooLoud ? 'turn the recording level down' : 'hold the microphone nearer the arc'}, switch gain control and noise suppression off, or log the voltage.`,
  'run-against-moments': ({ run, moments }, write) =>
    `The run as a whole looks like ${write.mode(run)}, but most moments like ${write.mode(moments)}.`,
  'mode-held': ({ mode, shareOfTime }, write) =>
    `${write.mode(mode)} over ${write.percent(shareOfTime)} of the judged arc time.`,
  'mode-implausible': ({ why }, write) => `No mode is named. ${write.say(why)}`,
  'input-failed': ({ text }) => text,
};
