import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { openFileSource } from '../../../src/files/file-source.js';
import { openRecording, parseRawFormat, type ReadOptions } from '../../../src/recording/index.js';
import { LOG_RATE_HZ } from './make-logs.js';

/** What one process saw that did nothing but read one file. */
export interface Measured {
  format: string;
  sampleRateHz: number;
  samples: number;
  bytes: number;
  cpuS: number;
  peakMb: number;
}

/** Bare samples say nothing of themselves; all other files must need no help. */
export function readOptions(path: string): ReadOptions {
  if (!path.endsWith('.f64')) return {};
  return {
    raw: parseRawFormat('f64le:2'),
    sampleRateHz: LOG_RATE_HZ,
    channelMap: { voltage: 1, current: 2 },
    scale: { voltage: 1, current: 1 },
  };
}

/** Reads a file to its end and keeps nothing: run in a process of its own. */
export async function readOnly(path: string): Promise<Measured> {
  const started = process.cpuUsage();
  const source = await openFileSource(path);
  const recording = await openRecording(source, readOptions(path));
  let samples = 0;
  for await (const block of recording.blocks()) samples += block.channels[0]!.length;
  await source.close();
  const { user, system } = process.cpuUsage(started);
  return {
    format: recording.format,
    sampleRateHz: recording.sampleRateHz,
    samples,
    bytes: source.size,
    cpuS: (user + system) / 1e6,
    peakMb: peakMb(),
  };
}

/**
 * Peak resident memory of this program. A child's `maxRSS` starts at what its parent held when it was
 * started, so the system's own mark of this address space is asked first.
 */
export function peakMb(): number {
  try {
    const mark = /VmHWM:\s+(\d+) kB/.exec(readFileSync('/proc/self/status', 'utf8'));
    if (mark) return Number(mark[1]) / 1024;
  } catch {
    // Another system: its figure is good enough.
  }
  return process.resourceUsage().maxRSS / 1024;
}

/** {@link readOnly} in a new process; the best of `times`, since others share the machine. */
export function measureApart(path: string, times = 2): Measured {
  const runs = Array.from({ length: times }, () => {
    const child = spawnSync(process.execPath, [process.argv[1]!, '--read', path], {
      encoding: 'utf8',
    });
    if (child.status !== 0) throw new Error(child.stderr);
    return JSON.parse(child.stdout) as Measured;
  });
  return runs.reduce((best, one) => (one.cpuS < best.cpuS ? one : best));
}
