import { type ArcError, isArcError } from '../../core/index.js';
import { LOG_READERS } from '../logs/index.js';
import { openRecording } from '../open.js';
import { type Reader, type ReaderContext, SNIFF_BYTES } from '../reader.js';
import { READERS } from '../readers.js';
import { describeContent } from '../sniff.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { suggestCommand } from './command.js';
import type { InspectedSeries, Inspection } from './inspection.js';
import { inspectSound } from './sound.js';
import { inspectTable } from './table.js';

/**
 * Looks at a file: which series it holds, with units, first values, range and a small sketch of each;
 * how it would be read with the options given, and what is assumed or wrong; and the command line to go
 * on with. The file is read from end to end (a table twice), in bounded memory. Trouble with the
 * content is reported in `problem` and never thrown; errors of the host are thrown.
 */
export async function inspectRecording(
  source: ByteSource,
  options: ReadOptions = {},
  context: ReaderContext = { decoders: [] },
): Promise<Inspection> {
  const head = (await source.read(0, Math.min(SNIFF_BYTES, source.size))).slice();
  const reader = options.raw ? undefined : READERS.find((one) => one.sniff(head, source));
  const reading = await readThrough(() => openRecording(source, options, context));
  const { series, problem } = await listSeries(source, reader, options, context, reading.recording);
  const trouble = reading.problem ?? (isArcError(problem) ? problem : undefined);
  const rateHz = reading.recording?.sampleRateHz;
  const samples = reading.recording === undefined ? null : reading.samples;
  const found = {
    name: source.name,
    series,
    notes: reading.recording?.notes ?? [],
    problem: trouble === undefined ? null : { code: trouble.code, message: trouble.message },
  };
  return {
    ...found,
    format: options.raw ? 'raw' : (reader?.format ?? null),
    title: options.raw ? 'bare samples' : (reader?.title ?? describeContent(head)),
    bytes: source.size,
    kind: reading.recording?.kind ?? null,
    sampleRateHz: rateHz ?? null,
    samples,
    durationS: samples === null || rateHz === undefined ? null : samples / rateHz,
    command: suggestCommand(found, options),
  };
}

interface Reading {
  recording?: Recording;
  samples: number;
  problem?: ArcError;
}

async function readThrough(open: () => Promise<Recording>): Promise<Reading> {
  const reading: Reading = { samples: 0 };
  try {
    reading.recording = await open();
    for await (const block of reading.recording.blocks()) {
      reading.samples += block.channels[0]?.length ?? 0;
    }
  } catch (error) {
    if (!isArcError(error)) throw error;
    reading.problem = error;
  }
  return reading;
}

async function listSeries(
  source: ByteSource,
  reader: Reader | undefined,
  options: ReadOptions,
  context: ReaderContext,
  recording: Recording | undefined,
): Promise<{ series: InspectedSeries[]; problem?: unknown }> {
  const tables = LOG_READERS.find((one) => one === reader);
  if (tables !== undefined) {
    try {
      return await inspectTable(await tables.openTable(source), options);
    } catch (problem) {
      if (!isArcError(problem)) throw problem;
      return { series: [], problem };
    }
  }
  if (reader === undefined && options.raw === undefined) return { series: [] };
  const roles = new Map<number, InspectedSeries['readAs']>();
  for (const channel of recording?.channels ?? []) {
    const number = Number(/^channel (\d+)$/.exec(channel.name)?.[1] ?? 1);
    roles.set(number, channel.quantity);
  }
  const { channelMap: _, scale: __, ...rest } = options;
  const open = (sound: number): Promise<Recording> =>
    openRecording(source, { ...rest, channelMap: { sound } }, context);
  return { series: await inspectSound(open, roles) };
}
