import type { ChannelPick } from '../channels.js';
import type { DecodedSound } from '../reader.js';
import type { SampleBlock } from '../types.js';

/** Frames in one delivered block. */
const BLOCK_FRAMES = 64 * 1024;

/** A block of the chosen channels, and the last packet's other channels for the silence watch. */
export interface Chunk {
  block: SampleBlock;
  others(): Generator<Float64Array>;
}

/** Gathers packets of any length into blocks of 64 Ki frames; the last one is shorter. */
export async function* rechunk(
  first: DecodedSound,
  rest: AsyncIterable<DecodedSound>,
  picks: readonly ChannelPick[],
): AsyncGenerator<Chunk> {
  const buffers = picks.map(() => new Float64Array(BLOCK_FRAMES));
  let filled = 0;
  let startSample = 0;
  let latest = first;
  const others = function* (): Generator<Float64Array> {
    for (const channel of latest.channels.slice(1)) yield Float64Array.from(channel);
  };
  const cut = (): Chunk => {
    const block = { startSample, channels: buffers.map((buffer) => buffer.subarray(0, filled)) };
    startSample += filled;
    filled = 0;
    return { block, others };
  };
  for await (const sound of joined(first, rest)) {
    latest = sound;
    const frames = sound.channels[0]!.length;
    for (let done = 0; done < frames; ) {
      const some = Math.min(frames - done, BLOCK_FRAMES - filled);
      for (const [c, { index }] of picks.entries()) {
        buffers[c]!.set(sound.channels[index]!.subarray(done, done + some), filled);
      }
      done += some;
      filled += some;
      if (filled === BLOCK_FRAMES) yield cut();
    }
  }
  if (filled > 0) yield cut();
}

async function* joined(
  first: DecodedSound,
  rest: AsyncIterable<DecodedSound>,
): AsyncGenerator<DecodedSound> {
  yield first;
  yield* rest;
}
