import type { Recording } from '../../recording/index.js';
import { ENGLISH } from '../view/index.js';

/** One line on stderr that says how far it is; only where stderr is a terminal and work takes long. */
export interface Progress {
  /** Counts the samples of a recording as they are read. */
  watch(recording: Recording, name: string): void;
  /** Takes the line away. */
  clear(): void;
}

const QUIET_MS = 700;
const EVERY_MS = 200;

/** A progress line for `total` inputs; does nothing where `stream` is no terminal. */
export function createProgress(
  total: number,
  stream: NodeJS.WriteStream = process.stderr,
): Progress {
  if (!stream.isTTY) return { watch: () => {}, clear: () => {} };
  const startMs = performance.now();
  let index = 0;
  let lastMs = startMs + QUIET_MS - EVERY_MS;
  let shown = false;
  const say = (text: string): void => {
    const now = performance.now();
    if (now - lastMs < EVERY_MS) return;
    lastMs = now;
    shown = true;
    stream.write(`\r\x1b[2K${text.slice(0, Math.max(20, (stream.columns || 80) - 1))}`);
  };
  return {
    watch: (recording, name) => {
      index += 1;
      const lead = total > 1 ? `${index} of ${total}  ` : '';
      const blocks = recording.blocks.bind(recording);
      recording.blocks = async function* () {
        let samples = 0;
        for await (const block of blocks()) {
          samples += block.channels[0]?.length ?? 0;
          const all = recording.expectedSamples;
          const seconds = (samples / recording.sampleRateHz).toFixed(0);
          say(
            `${lead}${name}  ${all ? ENGLISH.numbers.percent(Math.min(1, samples / all)) : `${seconds} s read`}`,
          );
          yield block;
        }
      };
    },
    clear: () => {
      if (shown) stream.write('\r\x1b[2K');
      shown = false;
    },
  };
}
