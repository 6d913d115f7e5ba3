export { adtsHeader } from './compressed/index.js';
export {
  type ChannelSamples,
  channelsOf,
  type Quantity,
  type Samples,
  type SamplesFormat,
  samplesFormat,
  samplesRecording,
} from './from-samples.js';
export {
  type InspectedSeries,
  type Inspection,
  inspectRecording,
  type SeriesFigures,
} from './inspect/index.js';
export { type LineReader, readLinesAs } from './logs/index.js';
export { openRecording } from './open.js';
export { parseRawFormat, type RawFormat } from './raw/index.js';
export type {
  DecodedSound,
  DecoderConfig,
  HostDecoder,
  PacketDecoder,
  Reader,
  ReaderContext,
} from './reader.js';
export { describeContent, hasAscii, hasBytes, looksLikeText } from './sniff.js';
export { blobSource } from './sources/blob.js';
export { bufferSource } from './sources/buffer.js';
export type {
  ByteSource,
  Channel,
  CodecInfo,
  ReadOptions,
  Recording,
  SampleBlock,
} from './types.js';
export { type WavBitDepth, writeWav } from './write-wav.js';
