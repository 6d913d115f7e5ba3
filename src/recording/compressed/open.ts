import { isArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import { type ChannelChoice, chooseChannels } from '../channels.js';
import { createSampleGuard } from '../guard.js';
import { checkRate } from '../pcm-checks.js';
import type { DecodedSound, PacketDecoder, ReaderContext } from '../reader.js';
import { createSilenceWatch } from '../silence.js';
import type { ReadOptions, Recording, SampleBlock } from '../types.js';
import { codecInfo, codecNote } from './codec.js';
import { startDecoder } from './decoders/index.js';
import { undecodable } from './errors.js';
import { rechunk } from './rechunk.js';
import type { PacketStream } from './stream.js';
import { type DecodeLog, decodeNotes, decodeTimeline } from './timeline.js';

/**
 * Opens a demultiplexed sound track as a recording. The first packets are decoded at once, because only the
 * decoder knows the true rate and channels.
 *
 * @throws ArcError `no-decoder`, `undecodable`, and what {@link chooseChannels} refuses.
 */
export async function openStream(
  stream: PacketStream,
  name: string,
  options: ReadOptions,
  context: ReaderContext,
): Promise<Recording> {
  const started = await startDecoder(stream.config, context).catch((error: unknown) => {
    stream.close();
    throw error;
  });
  const { decoder } = started;
  if (started.host) {
    stream.notes.push(note('host-decoder', { decoder: started.host }));
  }
  let closed = false;
  // Both the end of the samples and the caller close; a decoder freed twice is an error.
  const close = (): void => {
    if (closed) return;
    closed = true;
    decoder.close();
    stream.close();
  };
  try {
    const log: DecodeLog = { packets: 0, damagedPackets: 0, damagedS: 0, delivered: 0 };
    const sound = decodeTimeline(stream, decoder, log);
    const first = await sound.next();
    if (first.done) throw undecodable(name, stream.config.codec, log.cutOff);
    return recording({ stream, sound, first: first.value, log, close, options, decoder });
  } catch (error) {
    close();
    throw isArcError(error) ? error : undecodable(name, stream.config.codec, error);
  }
}

interface Opened {
  stream: PacketStream;
  sound: AsyncGenerator<DecodedSound>;
  first: DecodedSound;
  log: DecodeLog;
  decoder: PacketDecoder;
  options: ReadOptions;
  close(): void;
}

function recording(opened: Opened): Recording {
  const { stream, first, options, close } = opened;
  // The same array: a stream adds to it while it is read.
  const { notes } = stream;
  const sampleRateHz = checkRate(first.sampleRateHz, options.sampleRateHz, stream.container, notes);
  const choice = chooseChannels(first.channels.length, options);
  const codec = codecInfo(stream.config, sampleRateHz);
  notes.push(...choice.notes, ...codecNote(codec, sampleRateHz));
  const expected =
    stream.totalS === undefined ? undefined : Math.round(stream.totalS * sampleRateHz);
  return {
    kind: choice.kind,
    format: stream.container,
    sampleRateHz,
    channels: choice.picks.map((pick) => pick.channel),
    ...(expected === undefined ? {} : { expectedSamples: expected }),
    codec,
    notes,
    blocks: () => blocks(opened, choice, sampleRateHz, notes),
    close: async () => close(),
  };
}

async function* blocks(
  { sound, first, log, stream, close }: Opened,
  choice: ChannelChoice,
  rateHz: number,
  notes: Note[],
): AsyncGenerator<SampleBlock> {
  const assumed = choice.notes.some((note) => note.code === 'channel-assumed');
  const watch = assumed ? createSilenceWatch() : undefined;
  const guard = createSampleGuard(choice.picks, rateHz, notes);
  try {
    for await (const { block, others } of rechunk(first, sound, choice.picks)) {
      guard.check(block.channels, block.startSample);
      if (watch?.wanted()) watch.observe(block.channels[0]!, others());
      for (const [c, { factor }] of choice.picks.entries()) scale(block.channels[c]!, factor);
      yield block;
    }
  } finally {
    close();
  }
  guard.finish();
  watch?.finish(notes);
  notes.push(...decodeNotes(log, rateHz, longest(stream)));
}

/** The longest that the container claims; undefined when it claims nothing. */
function longest({ totalS, statedS }: PacketStream): number | undefined {
  if (totalS === undefined) return statedS;
  return Math.max(totalS, statedS ?? 0);
}

function scale(samples: Float64Array, factor: number): void {
  if (factor === 1) return;
  for (let i = 0; i < samples.length; i++) samples[i] = samples[i]! * factor;
}
