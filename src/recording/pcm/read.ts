import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import { type ChannelChoice, chooseChannels } from '../channels.js';
import { createSampleGuard } from '../guard.js';
import { Sides } from '../one-sided.js';
import { createSilenceWatch, type SilenceWatch } from '../silence.js';
import type { ByteSource, CodecInfo, ReadOptions, Recording, SampleBlock } from '../types.js';
import { type BlockDecoder, blockDecoder } from './decode.js';
import type { PcmData, PcmFormat } from './format.js';
import { countFrames, noteSizes } from './sizes.js';

/** Frames in one delivered block. */
const BLOCK_FRAMES = 64 * 1024;
/** No single read is larger, whatever the header says a frame holds. */
const MAX_READ_BYTES = 4 * 1024 * 1024;

/** A container of plain samples, once its header has been understood. */
export interface PcmFile {
  source: ByteSource;
  /** Name of the container, for the result and for messages: `wav`, `aiff`, `caf`. */
  container: string;
  format: PcmFormat;
  data: PcmData;
  notes: Note[];
}

/**
 * Reads interleaved samples block by block. Integers are scaled by half their range (16 bits by 32768), so
 * that full scale is 1; floats are taken as they are.
 *
 * @throws ArcError `no-samples`, `file-shrank`, `not-finite`, and what {@link chooseChannels} refuses.
 */
export async function openPcm(file: PcmFile, options: ReadOptions): Promise<Recording> {
  const { source, format, data, notes } = file;
  const choice = chooseChannels(format.channels, options);
  notes.push(...choice.notes);
  const frames = countFrames(data, format);
  if (frames === 0) throw noSamples(source.name, file.container);
  noteSizes(data, format, source, notes);
  const decode = await blockDecoder(format, data.bigEndian);
  const assumed = choice.notes.some((note) => note.code === 'channel-assumed');
  return {
    kind: choice.kind,
    format: file.container,
    sampleRateHz: format.sampleRateHz,
    channels: choice.picks.map((pick) => pick.channel),
    expectedSamples: frames,
    codec: codecInfo(format),
    notes,
    blocks: () => guarded(file, choice, decode, frames, assumed ? createSilenceWatch() : undefined),
  };
}

async function* guarded(
  file: PcmFile,
  choice: ChannelChoice,
  decode: BlockDecoder,
  frames: number,
  watch: SilenceWatch | undefined,
): AsyncGenerator<SampleBlock> {
  const { encoding, sampleRateHz } = file.format;
  // Integers are finite and within full scale by their nature.
  const float = encoding === 'f32' || encoding === 'f64';
  const guard = float ? createSampleGuard(choice.picks, sampleRateHz, file.notes) : undefined;
  const sides = choice.picks[0]?.assumed ? new Sides() : undefined;
  const indices = choice.picks.map((pick) => pick.index);
  for await (const block of readBlocks(file, decode, indices, frames, watch)) {
    guard?.check(block.channels, block.startSample);
    sides?.add(block.channels[0]!);
    for (const [c, { factor }] of choice.picks.entries()) scale(block.channels[c]!, factor);
    yield block;
  }
  guard?.finish();
  if (sides?.oneSided) file.notes.push(note('one-sided-sound'));
  watch?.finish(file.notes);
}

async function* readBlocks(
  { source, data, format }: PcmFile,
  decode: BlockDecoder,
  indices: readonly number[],
  frames: number,
  watch: SilenceWatch | undefined,
): AsyncGenerator<SampleBlock> {
  const { blockBytes, blockFrames, channels } = format;
  const total = Math.floor(data.dataBytes / blockBytes);
  const byFrames = Math.floor(BLOCK_FRAMES / blockFrames);
  const byBytes = Math.floor(MAX_READ_BYTES / blockBytes);
  const atOnce = Math.max(1, Math.min(byFrames, byBytes, total));
  const buffers = indices.map(() => new Float64Array(atOnce * blockFrames));
  for (let done = 0; done < total; ) {
    const wanted = Math.min(atOnce, total - done);
    const bytes = await source.read(data.dataOffset + done * blockBytes, wanted * blockBytes);
    const got = Math.floor(bytes.length / blockBytes);
    if (got === 0) throw shrank(source.name);
    const outs = buffers.map((buffer) => buffer.subarray(0, got * blockFrames));
    for (const [c, index] of indices.entries()) decode(bytes, index, outs[c]!);
    if (watch?.wanted()) watch.observe(outs[0]!, otherChannels(bytes, channels, outs[0]!, decode));
    const kept = Math.min(got * blockFrames, frames - done * blockFrames);
    yield { startSample: done * blockFrames, channels: outs.map((out) => out.subarray(0, kept)) };
    done += got;
  }
}

function* otherChannels(
  bytes: Uint8Array,
  channels: number,
  like: Float64Array,
  decode: BlockDecoder,
): Generator<Float64Array> {
  const out = new Float64Array(like.length);
  for (let channel = 1; channel < channels; channel++) {
    decode(bytes, channel, out);
    yield out;
  }
}

function scale(samples: Float64Array, factor: number): void {
  if (factor === 1) return;
  for (let i = 0; i < samples.length; i++) samples[i] = samples[i]! * factor;
}

function codecInfo({ encoding, blockFrames }: PcmFormat): CodecInfo {
  const lossy = encoding === 'a-law' || encoding === 'mu-law' || encoding === 'ima-adpcm';
  if (encoding === 'ima-adpcm') return { name: encoding, lossy, frameSamples: blockFrames };
  return { name: lossy ? encoding : `pcm-${encoding}`, lossy };
}

function noSamples(name: string, container: string): ArcError {
  return new ArcError({
    code: 'no-samples',
    what: `${name} is a ${container.toUpperCase()} file without a single sample.`,
    expected: 'a recording with sound in it',
    todo: 'Check that the recorder was running and the file was closed.',
  });
}

function shrank(name: string): ArcError {
  return new ArcError({
    code: 'file-shrank',
    what: `${name} became shorter while it was read.`,
    expected: 'a file that stays as it is',
    todo: 'Wait until nothing writes to it, then run again.',
  });
}
