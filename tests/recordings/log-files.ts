import { readFileSync } from 'node:fs';
import { LOG_READERS } from '../../src/recording/logs/index.js';
import { bufferSource } from '../../src/recording/sources/buffer.js';
import type { ByteSource, ReadOptions } from '../../src/recording/types.js';
import { drain, type ReadLog } from '../unit/recording/logs/read-log.js';

/** The samples of fixtures/logs (formulas in make_logs.py): one IEEE operation at a time. */
export const SAMPLES = 400;
export const RATE_HZ = 10_000;
const index = Array.from({ length: SAMPLES }, (_, i) => i);
export const TIME = index.map((i) => i / 10_000);
export const VOLTAGE = index.map((i) => 20 + (((i * 7919) % 10_007) / 512) * 0.1);
export const CURRENT = index.map((i) => 150 + ((i * 104_729) % 10_009) / 3);

export function fixture(name: string): Uint8Array {
  return new Uint8Array(readFileSync(new URL(`../../fixtures/logs/${name}`, import.meta.url)));
}

/** Chooses the reader by content, as the registry does, and reads everything. */
export async function readLog(
  input: Uint8Array | ByteSource,
  options: ReadOptions = {},
): Promise<ReadLog> {
  const source = input instanceof Uint8Array ? bufferSource(input, 'log') : input;
  const head = (await source.read(0, Math.min(65_536, source.size))).slice();
  const reader = LOG_READERS.find((candidate) => candidate.sniff(head, source));
  if (reader === undefined) throw new Error('no reader takes it');
  return drain(await reader.open(source, options, { decoders: [] }));
}
