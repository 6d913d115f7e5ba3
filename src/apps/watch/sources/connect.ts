import { type Made, message } from '../../../messages/index.js';
import type { ReadOptions } from '../../../recording/index.js';
import { sayShort } from '../words.js';
import { byteItems, rowItems } from './byte-items.js';
import { RowReader } from './rows.js';
import { type LiveItem, type LiveSource, type Losses, noLosses } from './types.js';
import { pause, untilAborted } from './until-aborted.js';

/** Opens the way to a source once; the bytes end when it is lost. */
export type Connect = (signal: AbortSignal, losses: Losses) => AsyncIterable<Uint8Array>;

const FIRST_WAIT_MS = 200;
const LONGEST_WAIT_MS = 10_000;

/** A source that is simply over when its bytes are: stdin. */
export function onceSource(name: string, connect: Connect, reading: ReadOptions): LiveSource {
  const losses = noLosses();
  return {
    name,
    losses,
    items: (signal) =>
      untilAborted(byteItems(name, connect(signal, losses), reading, losses), signal),
  };
}

export interface ReconnectOptions {
  reading: ReadOptions;
  /** Rows, whose own times say what was lost; else each connection begins anew. */
  rows: boolean;
  /** False gives up at the first failure, before anything has come. */
  patient?: boolean;
}

/**
 * A source that is opened again whenever it is lost, with growing waits. Each loss is a gap and counted. The
 * first connection must succeed, since a wrong name would otherwise wait for ever.
 *
 * @throws whatever the first attempt threw.
 */
export function reconnecting(
  name: string,
  connect: Connect,
  options: ReconnectOptions,
): LiveSource {
  const losses = noLosses();
  return { name, losses, items: (signal) => attempts(name, connect, options, losses, signal) };
}

async function* attempts(
  name: string,
  connect: Connect,
  { reading, rows, patient = false }: ReconnectOptions,
  losses: Losses,
  signal: AbortSignal,
): AsyncGenerator<LiveItem> {
  const reader = new RowReader(losses, reading);
  let heard = patient;
  for (
    let waitMs = FIRST_WAIT_MS;
    !signal.aborted;
    waitMs = Math.min(LONGEST_WAIT_MS, 2 * waitMs)
  ) {
    let why: Made = message('watch-source-ended');
    try {
      const chunks = untilAborted(connect(signal, losses), signal);
      const items = rows
        ? rowItems(chunks, reading, losses, reader)
        : byteItems(name, chunks, reading, losses);
      for await (const item of untilAborted(items, signal)) {
        if (item.type === 'samples') {
          heard = true;
          waitMs = FIRST_WAIT_MS / 2;
        }
        yield item;
      }
    } catch (error) {
      if (!heard) throw error;
      why = message('in-words', { text: sayShort(error) });
    }
    if (signal.aborted) return;
    losses.reconnects++;
    yield { type: 'gap', lostS: null, why };
    await pause(waitMs, signal);
  }
}
