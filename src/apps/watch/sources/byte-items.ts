import { ArcError, isArcError } from '../../../core/index.js';
import {
  describeContent,
  looksLikeText,
  openRecording,
  type ReadOptions,
} from '../../../recording/index.js';
import { ByteFeed } from './byte-feed.js';
import { openEnded } from './open-ended.js';
import { RowReader } from './rows.js';
import type { LiveItem, Losses } from './types.js';

/** Bytes looked at to tell WAV from rows. */
const LOOK = 12;

/** A stream of bytes as items: bare samples where a layout is stated, else WAV or rows by content. */
export async function* byteItems(
  name: string,
  chunks: AsyncIterable<Uint8Array>,
  reading: ReadOptions,
  losses: Losses,
): AsyncGenerator<LiveItem> {
  const iterator = chunks[Symbol.asyncIterator]();
  try {
    const first: Uint8Array[] = [];
    let length = 0;
    while (length < LOOK) {
      const { value, done } = await iterator.next();
      if (done) break;
      first.push(value);
      length += value.length;
    }
    const head = Buffer.concat(first);
    const all = rest(head, iterator);
    const wav = /^(RIFF|RIFX|RF64|BW64)/.test(head.toString('latin1'));
    if (reading.raw !== undefined || wav) yield* soundItems(name, all, reading, losses);
    else if (looksLikeText(head)) yield* rowItems(all, reading, losses);
    else throw notLive(name, head);
  } finally {
    // Files and lines behind it are closed, also where nobody read to the end.
    await iterator.return?.();
  }
}

async function* rest(
  head: Uint8Array,
  iterator: AsyncIterator<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  if (head.length > 0) yield new Uint8Array(head);
  for (;;) {
    const { value, done } = await iterator.next();
    if (done) return;
    yield value;
  }
}

/** Rows of text; one reader may go on over several connections. */
export async function* rowItems(
  chunks: AsyncIterable<Uint8Array>,
  reading: ReadOptions,
  losses: Losses,
  reader = new RowReader(losses, reading),
): AsyncGenerator<LiveItem> {
  const decoder = new TextDecoder();
  for await (const chunk of chunks) yield* reader.push(decoder.decode(chunk, { stream: true }));
  yield* reader.end();
}

async function* soundItems(
  name: string,
  chunks: AsyncIterable<Uint8Array>,
  reading: ReadOptions,
  losses: Losses,
): AsyncGenerator<LiveItem> {
  const feed = new ByteFeed(name, reading.raw ? chunks : openEnded(chunks));
  const recording = await openRecording(feed, reading);
  yield { type: 'format', format: recording };
  try {
    for await (const block of recording.blocks())
      yield { type: 'samples', channels: block.channels.map((samples) => samples.slice()) };
  } catch (error) {
    // A stream may end anywhere: what is less than one frame is counted, not an error.
    if (!(feed.ended && isArcError(error) && error.code === 'file-shrank')) throw error;
    losses.looseBytes += feed.waiting;
  }
}

function notLive(name: string, head: Uint8Array): ArcError {
  const what = head.length === 0 ? 'ended without a byte' : `gives ${describeContent(head)}`;
  return new ArcError({
    code: 'not-live',
    what: `${name} ${what}.`,
    expected: 'WAV, rows of time,voltage,current, or bare samples with --format and --sample-rate',
    todo: 'Have the recorder write one of these, such as arecord -t wav or -t raw.',
  });
}
