import type { Note } from '../../core/index.js';
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
  const seconds = (bytes: number): string =>
    `${(((bytes / format.blockBytes) * format.blockFrames) / format.sampleRateHz).toPrecision(4)} s`;
  const { declaredBytes: declared, dataBytes, dataOffset } = data;
  if (declared !== undefined && declared > dataBytes) {
    notes.push({
      code: 'truncated',
      message: `The file declares ${seconds(declared)} of sound but holds ${seconds(dataBytes)}; it was cut off.`,
    });
  }
  const rest = dataBytes % format.blockBytes;
  if (rest > 0) {
    notes.push({
      code: 'partial-frame',
      message: `The last ${rest} bytes are not a whole frame and were left out.`,
    });
  }
  const after = source.size - dataOffset - dataBytes;
  if (declared !== undefined && after >= 2 * format.blockBytes * format.sampleRateHz) {
    notes.push({
      code: 'bytes-after-sound',
      message: `${after} bytes after the declared end of the sound were left out; if the recorder was interrupted, they may be sound.`,
    });
  }
}
