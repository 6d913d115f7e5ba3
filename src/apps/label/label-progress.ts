import type { Status } from '../../core/index.js';

/** Says on stderr how far a batch is. */
export interface LabelProgress {
  /** One input is done; `fresh` false for one that was labelled by an earlier run. */
  count(status: Status | 'skipped', fresh: boolean): void;
  /** Takes the line away, before anything else is said. */
  clear(): void;
}

export interface ProgressOptions {
  /** Undefined where the inputs are not known beforehand. */
  total: number | undefined;
  stream: { isTTY?: boolean; columns?: number; write(text: string): unknown };
  /** Milliseconds since some moment. */
  now: () => number;
}

const TERMINAL_EVERY_MS = 200;
const PLAIN_EVERY_MS = 10_000;

/** {@link createLabelProgress} on stderr; `total` undefined where the inputs are not known beforehand. */
export function progressOnStderr(total: number | undefined): LabelProgress {
  return createLabelProgress({ total, stream: process.stderr, now: () => performance.now() });
}

/** One line that is written over on a terminal; elsewhere a plain line every ten seconds. */
export function createLabelProgress(options: ProgressOptions): LabelProgress {
  const { total, stream, now } = options;
  const terminal = stream.isTTY === true;
  const every = terminal ? TERMINAL_EVERY_MS : PLAIN_EVERY_MS;
  const startMs = now();
  let saidMs = startMs;
  let shown = false;
  const seen = { done: 0, failed: 0, fresh: 0 };
  return {
    count: (status, fresh) => {
      seen.done += 1;
      if (status === 'failed') seen.failed += 1;
      if (fresh) seen.fresh += 1;
      const atMs = now();
      if (atMs - saidMs < every) return;
      saidMs = atMs;
      const text = progressText(seen, total, (atMs - startMs) / 1000);
      if (terminal)
        stream.write(`\r\x1b[2K${text.slice(0, Math.max(20, (stream.columns || 80) - 1))}`);
      else stream.write(`${text}\n`);
      shown = terminal;
    },
    clear: () => {
      if (shown) stream.write('\r\x1b[2K');
      shown = false;
    },
  };
}

/** `120 of 400 done, 2 failed, 14.2 a second, 20 s left`. The rate counts only what this run labelled. */
export function progressText(
  seen: { done: number; failed: number; fresh: number },
  total: number | undefined,
  elapsedS: number,
): string {
  const of = total === undefined ? '' : ` of ${total}`;
  const rate = elapsedS > 0 ? seen.fresh / elapsedS : 0;
  const parts = [
    `${seen.done}${of} done`,
    `${seen.failed} failed`,
    `${rate.toPrecision(3)} a second`,
  ];
  if (total !== undefined && rate > 0) parts.push(`${duration((total - seen.done) / rate)} left`);
  return parts.join(', ');
}

function duration(seconds: number): string {
  const whole = Math.ceil(seconds);
  if (whole < 100) return `${whole} s`;
  if (whole < 6000) return `${Math.round(whole / 60)} min`;
  return `${(whole / 3600).toFixed(1)} h`;
}
