import { csvReader } from '../../../../src/recording/logs/csv/reader.js';
import { bufferSource } from '../../../../src/recording/sources/buffer.js';
import type { ReadOptions, Recording } from '../../../../src/recording/types.js';

/** A recording read to its end. */
export interface ReadLog {
  recording: Recording;
  channels: number[][];
  codes: string[];
  /** Text of the first note of that code. */
  note(code: string): string;
}

/** Reads all blocks and checks on the way that they follow each other. */
export async function drain(recording: Recording): Promise<ReadLog> {
  const channels: number[][] = recording.channels.map(() => []);
  for await (const block of recording.blocks()) {
    if (block.startSample !== channels[0]?.length)
      throw new Error('blocks do not follow each other');
    block.channels.forEach((samples, c) => {
      for (const value of samples) channels[c]?.push(value);
    });
  }
  return {
    recording,
    channels,
    codes: recording.notes.map(({ code }) => code),
    note: (wanted) => recording.notes.find(({ code }) => code === wanted)?.message ?? '',
  };
}

/** Reads a text as a log called `trace.csv`. */
export async function readCsv(
  text: string | Uint8Array,
  options: ReadOptions = {},
): Promise<ReadLog> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  return drain(await csvReader.open(bufferSource(bytes, 'trace.csv'), options, { decoders: [] }));
}

/** The error code that reading ends in, or `none`. */
export async function errorOf(read: Promise<unknown>): Promise<{ code: string; message: string }> {
  try {
    await read;
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return { code, message };
  }
  return { code: 'none', message: '' };
}
