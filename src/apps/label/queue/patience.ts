import { ArcError } from '../../../core/index.js';
import { type QueueAddress, sayAddress } from './address.js';

/** The longest that a command in the queue library waits on purpose is 10 s; later the line is dead. */
const SILENT_MS = 30_000;
const FIRST_RETRY_MS = 200;
const LAST_RETRY_MS = 5000;

/** How the connections of one process are kept, and when they are given up. */
export interface Patience {
  /** What the client of the queue library is made with. */
  connection: QueueAddress & {
    socketTimeout: number;
    retryStrategy: (times: number) => number | null;
  };
  /** Rejects (`queue-lost`) when Redis has not answered for as long as told; otherwise waits for ever. */
  lost: Promise<never>;
  /** From now on no connection is made again; what waits for one is let go. */
  giveUp(): void;
}

/**
 * Lets a connection that broke be made again, but not for ever: a Redis that stays away for `patienceS`
 * ends the work with an error. All connections of the process are then given up together.
 */
export function createPatience(
  address: QueueAddress,
  patienceS: number,
  now: () => number = () => performance.now(),
): Patience {
  let fail: (error: ArcError) => void = () => {};
  const lost = new Promise<never>((_, reject) => {
    fail = reject;
  });
  // Whoever waits for it hears of it; it must not end the process before.
  lost.catch(() => {});
  let over = false;
  let sinceMs = 0;
  const retryStrategy = (times: number): number | null => {
    // The count begins again with each connection that came about.
    if (times === 1) sinceMs = now();
    if (!over && now() - sinceMs >= patienceS * 1000) {
      over = true;
      fail(queueLost(address, patienceS));
    }
    return over ? null : Math.min(FIRST_RETRY_MS * 2 ** Math.min(times - 1, 10), LAST_RETRY_MS);
  };
  const connection = { ...address, socketTimeout: SILENT_MS, retryStrategy };
  const giveUp = (): void => {
    over = true;
  };
  return { connection, lost, giveUp };
}

function queueLost(address: QueueAddress, patienceS: number): ArcError {
  return new ArcError({
    code: 'queue-lost',
    what: `${sayAddress(address)} has not answered for ${patienceS} s.`,
    expected: 'a Redis that comes back within that time',
    todo: 'See to the Redis and run the same again (nothing is lost), or allow more by --queue-patience.',
  });
}

/** Waits for something at most so long; what is then still open is left alone. */
export async function atMost(ms: number, work: Promise<unknown>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const time = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, ms);
  });
  await Promise.race([work.catch(() => {}), time]);
  clearTimeout(timer);
}
