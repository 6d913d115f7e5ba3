import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { ByteSource } from '../types.js';
import type { PcmData, PcmFormat } from './format.js';

/** Frames to deliver: whole blocks, less the padding of the last one where the file tells. */
export function countFrames({ dataBytes, factFrames }: PcmData, format: PcmFormat): number {
  const frames = Math.floor(dataBytes / format.blockBytes) * format.blockFrames;
  const padding = frames - (factFrames ?? frames);
  return padding > 0 && padding < format.blockFrames ? frames - padding : frames;
}

/** Says where declared and present length differ: cut files, half frames, much behind the end. */
export function noteSizes(
  data: PcmData,
  format: PcmFormat,
  source: ByteSource,
  notes: Note[],
): void {
  const seconds = (bytes: number): number =>
    ((bytes / format.blockBytes) * format.blockFrames) / format.sampleRateHz;
  const { declaredBytes: declared, dataBytes, dataOffset } = data;
  if (declared !== undefined && declared > dataBytes) {
    const [declaredS, heldS] = [seconds(declared), seconds(dataBytes)];
    notes.push(note('truncated', { how: 'holds-less', declaredS, heldS }));
  }
  const rest = dataBytes % format.blockBytes;
  if (rest > 0) {
    notes.push(note('partial-frame', { restBytes: rest }));
  }
  const after = source.size - dataOffset - dataBytes;
  if (declared !== undefined && after >= 2 * format.blockBytes * format.sampleRateHz) {
    notes.push(note('bytes-after-sound', { bytes: after }));
  }
}
