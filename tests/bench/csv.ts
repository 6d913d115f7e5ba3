/**
 * Reads a two-column CSV of 10 million rows that is generated on the fly, and prints MB a second of CPU time and peak
 * resident memory. Run after a build: `npx esbuild tests/bench/csv.ts --bundle --platform=node
 * --format=esm --outfile=<file>` and `node <file> [rows]`, or with any TypeScript runner.
 */
import { csvReader } from '../../src/recording/logs/csv/reader.js';
import type { ByteSource } from '../../src/recording/types.js';
import { sayFigure } from './support/figure.js';

const ROWS = Number(process.argv[2] ?? 10_000_000);
const ROW_BYTES = 20;
const HEADER = new TextEncoder().encode('time_s,voltage_V\n');

/** Rows `ssss.sssss,vvv.vvvvv`: 20 bytes each, so that any place can be made without the ones before. */
function rowSource(rows: number): ByteSource {
  const size = HEADER.length + rows * ROW_BYTES;
  return {
    name: 'generated.csv',
    size,
    async read(offset, length) {
      const started = cpuMs();
      const bytes = new Uint8Array(Math.max(0, Math.min(length, size - offset)));
      for (let i = 0; i < bytes.length; ) i += copyRow(bytes, i, offset + i);
      generationMs += cpuMs() - started;
      return bytes;
    },
  };
}

/** CPU time of the process: on a shared machine the wall clock measures the neighbours. */
function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const row = new Uint8Array(ROW_BYTES);
let generationMs = 0;

function copyRow(target: Uint8Array, at: number, position: number): number {
  if (position < HEADER.length) {
    const part = HEADER.subarray(position, position + target.length - at);
    target.set(part, at);
    return part.length;
  }
  const index = Math.floor((position - HEADER.length) / ROW_BYTES);
  digits(row, 0, 4, Math.floor(index / 100_000));
  row[4] = 46;
  digits(row, 5, 5, index % 100_000);
  row[10] = 44;
  digits(row, 11, 3, 20);
  row[14] = 46;
  digits(row, 15, 4, (index * 7919) % 10_000);
  row[19] = 10;
  const skip = (position - HEADER.length) % ROW_BYTES;
  const part = row.subarray(skip, Math.min(ROW_BYTES, skip + target.length - at));
  target.set(part, at);
  return part.length;
}

function digits(target: Uint8Array, at: number, count: number, value: number): void {
  let rest = value;
  for (let i = at + count - 1; i >= at; i--) {
    target[i] = 48 + (rest % 10);
    rest = Math.floor(rest / 10);
  }
}

const source = rowSource(ROWS);
const wallStarted = performance.now();
const started = cpuMs();
const recording = await csvReader.open(source, {}, { decoders: [] });
let samples = 0;
let sum = 0;
for await (const block of recording.blocks()) {
  const volts = block.channels[0] as Float64Array;
  samples += volts.length;
  sum += volts[0] ?? 0;
}
const totalS = (cpuMs() - started) / 1000;
const readS = totalS - generationMs / 1000;
const mb = source.size / 1e6;
console.log(
  JSON.stringify({
    rows: samples,
    rateHz: recording.sampleRateHz,
    megabytes: Math.round(mb),
    wallSecondsWithGeneration: Number(((performance.now() - wallStarted) / 1000).toFixed(2)),
    cpuSecondsToRead: Number(readS.toFixed(2)),
    cpuSecondsToGenerate: Number((generationMs / 1000).toFixed(2)),
    megabytesPerCpuSecond: Math.round(mb / readS),
    peakMegabytes: Math.round(process.resourceUsage().maxRSS / 1024),
    check: sum > 0,
  }),
);
sayFigure({ name: 'CSV', value: Math.round(mb / readS), unit: 'MB/s', better: 'more' });
