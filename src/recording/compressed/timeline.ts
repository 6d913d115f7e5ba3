import { ArcError, isArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { DecodedSound, PacketDecoder } from '../reader.js';
import type { PacketStream } from './stream.js';

/** Counts of what went wrong on the way, for the notes. */
export interface DecodeLog {
  packets: number;
  damagedPackets: number;
  damagedS: number;
  /** Message of the container's error when it ended before its time. */
  cutOff?: string;
  delivered: number;
}

/** Frames of silence made at once for a damaged packet or a missing lead. */
const MAX_FILL_S = 10;
/** Less than this missing at the end is not worth a note. */
const MISSING_S = 0.1;

/**
 * Decodes all packets in order and trims what belongs to the encoder: sample 0 of the output is the start of
 * the recording. A packet that can't be decoded becomes silence of its length, so that later times stay
 * right; an error of the container after the first sound ends the stream.
 *
 * @throws ArcError `rate-changes`, and errors of the source.
 */
export async function* decodeTimeline(
  stream: PacketStream,
  decoder: PacketDecoder,
  log: DecodeLog,
): AsyncGenerator<DecodedSound> {
  const window = createWindow(stream, decoder, log);
  const waiting: number[] = [];
  for await (const packet of untilBroken(stream, log)) {
    log.packets++;
    const sound = await decodeOne(decoder, packet.data);
    if (sound === DAMAGED || (!sound && window.started() && !decoder.delayed)) {
      log.damagedPackets++;
      log.damagedS += packet.durationS;
      if (window.started()) yield* window.silence(packet.durationS);
      else waiting.push(packet.durationS);
      continue;
    }
    if (!sound) continue;
    if (!window.started()) {
      window.start(sound);
      yield* window.lead();
      for (const durationS of waiting) yield* window.silence(durationS);
    }
    yield* window.take(sound);
  }
  const rest = await decoder.flush();
  if (!rest) return;
  if (!window.started()) {
    window.start(rest);
    yield* window.lead();
  }
  yield* window.take(rest);
}

const DAMAGED = 'damaged';

async function decodeOne(
  decoder: PacketDecoder,
  data: Uint8Array,
): Promise<DecodedSound | typeof DAMAGED | undefined> {
  try {
    return await decoder.push(data);
  } catch (error) {
    if (isArcError(error)) throw error;
    return DAMAGED;
  }
}

async function* untilBroken(
  stream: PacketStream,
  log: DecodeLog,
): ReturnType<PacketStream['packets']> {
  try {
    yield* stream.packets();
  } catch (error) {
    if (isArcError(error)) throw error;
    log.cutOff = error instanceof Error ? error.message : String(error);
  }
}

/** Cuts the decoder's output to the recording. */
function createWindow(stream: PacketStream, decoder: PacketDecoder, log: DecodeLog) {
  let rateHz = 0;
  let channels = 0;
  let skip = 0;
  let left = Number.POSITIVE_INFINITY;
  function* take(sound: DecodedSound): Generator<DecodedSound> {
    if (sound.sampleRateHz !== rateHz || sound.channels.length !== channels) {
      throw rateChanges(rateHz, channels, sound);
    }
    const frames = sound.channels[0]!.length;
    const from = Math.min(skip, frames);
    skip -= from;
    const to = Math.min(frames, from + left);
    left -= to - from;
    if (to <= from) return;
    log.delivered += to - from;
    yield { sampleRateHz: rateHz, channels: sound.channels.map((c) => c.subarray(from, to)) };
  }
  function* silence(durationS: number): Generator<DecodedSound> {
    const frames = Math.round(Math.min(durationS, MAX_FILL_S) * rateHz);
    const empty = Array.from({ length: channels }, () => new Float32Array(frames));
    yield* take({ sampleRateHz: rateHz, channels: empty });
  }
  return {
    started: () => rateHz > 0,
    start(sound: DecodedSound): void {
      rateHz = sound.sampleRateHz;
      channels = sound.channels.length;
      skip = stream.skipFrames(rateHz) - (decoder.leadFrames?.(rateHz) ?? 0);
      if (stream.totalS !== undefined) left = Math.round(stream.totalS * rateHz);
    },
    *lead(): Generator<DecodedSound> {
      // The decoder withheld more than is to be skipped: silence keeps the time.
      if (skip >= 0) return;
      const missing = -skip / rateHz;
      skip = 0;
      yield* silence(missing);
    },
    take,
    silence,
  };
}

/** Notes on what {@link DecodeLog} gathered, once the stream is over. */
export function decodeNotes(log: DecodeLog, rateHz: number, totalS: number | undefined): Note[] {
  const notes: Note[] = [];
  const gotS = log.delivered / rateHz;
  if (log.damagedPackets > 0) {
    const { damagedPackets: damaged, packets, damagedS } = log;
    notes.push(note('damaged-packets', { damaged, packets, damagedS }));
  }
  if (log.cutOff !== undefined) {
    notes.push(note('truncated', { how: 'breaks-off', readS: gotS, cause: String(log.cutOff) }));
  } else if (totalS !== undefined && gotS < totalS - MISSING_S) {
    notes.push(note('truncated', { how: 'decoded-less', declaredS: totalS, readS: gotS }));
  }
  return notes;
}

function rateChanges(rateHz: number, channels: number, sound: DecodedSound): ArcError {
  return new ArcError({
    code: 'rate-changes',
    what: `The sound changes from ${channels} channels at ${rateHz} Hz to ${sound.channels.length} at ${sound.sampleRateHz} Hz.`,
    expected: 'one recording with one rate',
    todo: 'Split the file where it changes.',
  });
}
