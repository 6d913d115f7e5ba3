import type { RunMode } from '../../core/index.js';
import type { PairParams } from '../rooms/pair.js';
import type { CatalogueOf, Writer } from '../writer.js';

const run = (mode: RunMode, write: Writer): string => (mode === 'mixed' ? mode : write.mode(mode));

export const PAIR: CatalogueOf<PairParams> = {
  'too-little-in-both': () => 'Too little of the arc is in both recordings.',
  'trace-unlike-model': () =>
    'The trace is unlike anything the model was fitted on; no mode is named.',
  'sound-against-trace': ({ sound, trace }, write) =>
    `Sound and trace contradict each other: ${write.mode(sound)} by the sound, ${write.mode(trace)} by the trace.`,
  'not-of-one-run': ({ sound, trace }, write) =>
    `Sound and trace do not seem to be of one run: ${run(sound, write)} by the sound, ${run(trace, write)} by the trace.`,
  'not-fused': () =>
    'Sound and trace do not seem to be of one run, or share too few clear events to show it; they were not judged together. The answer rests on the sound; what the trace alone says stands beside it.',
  'alignment-not-shown': () =>
    'No common events stand out; that both are of one run and of one clock was taken from what was stated.',
  'pooling-of-other-models': () =>
    'The weights of sound and trace were fitted with other models than those used here.',
};
