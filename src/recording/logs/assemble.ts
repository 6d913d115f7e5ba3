import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { Channel, ReadOptions, Recording, SampleBlock } from '../types.js';
import { type ChosenColumn, chooseColumns } from './choose-columns.js';
import { createGapFiller, refuseMostlyMissing } from './fill.js';
import { refuseUnlikeVolts } from './lone-column.js';
import { checkRate, untimedRate } from './rate.js';
import { samplingNotes } from './sampling-notes.js';
import { factorOf, refuseIdleScale } from './scale.js';
import { emptyFigures, MOST, observe, suspectMistakes } from './suspicion.js';
import type { LogTable } from './table.js';
import { type GriddedRows, timedRows } from './timed-rows.js';

/**
 * Makes a recording out of a table: columns chosen, scaled to volts and amperes, put in order and on a
 * uniform time base. Memory is bounded whatever the length.
 *
 * @throws ArcError for everything that cannot be read honestly.
 */
export async function assembleRecording(table: LogTable, options: ReadOptions): Promise<Recording> {
  if (options.sampleRateHz !== undefined) checkRate(options.sampleRateHz, 'As stated');
  const choice = chooseColumns(table, options);
  table.notes.push(...choice.notes);
  const channels: Channel[] = [];
  const factors: number[] = [];
  const wanted: number[] = [];
  for (const quantity of ['voltage', 'current'] as const) {
    const pick = choice[quantity];
    if (pick === undefined) continue;
    const unit = quantity === 'voltage' ? 'V' : 'A';
    channels.push({ name: pick.column.name, quantity, unit });
    factors.push(factorOf(pick, quantity, options, table.notes));
    wanted.push(pick.index);
  }
  refuseIdleScale(
    options,
    channels.map(({ quantity }) => quantity),
  );
  const rows =
    choice.time === undefined
      ? untimedRows(table, wanted, options)
      : await timedRows(table, choice.time, wanted, options.sampleRateHz);
  checkRate(rows.rateHz, table.fileName);
  table.notes.push(...samplingNotes(rows.rateHz));
  const lone = choice.loneByPlace ? choice.voltage : undefined;
  const known = choice.time === undefined ? table.rowsOf?.(wanted) : undefined;
  return {
    kind: 'electrical',
    format: table.format,
    sampleRateHz: rows.rateHz,
    channels,
    ...(known === undefined ? {} : { expectedSamples: known }),
    notes: table.notes,
    blocks: () => finishBlocks(rows, factors, channels, table, lone),
  };
}

function untimedRows(
  table: LogTable,
  wanted: readonly number[],
  options: ReadOptions,
): GriddedRows {
  const pieces = async function* (): AsyncGenerator<Float64Array[]> {
    for await (const chunk of table.read(wanted)) {
      yield chunk.columns.map((column) => column.slice(0, chunk.rows));
    }
  };
  return {
    rateHz: untimedRate(table, options.sampleRateHz),
    pieces: pieces(),
    closing: () => [],
  };
}

/** Scales, fills what is missing, and says at the end what was noticed. */
async function* finishBlocks(
  rows: GriddedRows,
  factors: readonly number[],
  channels: readonly Channel[],
  table: LogTable,
  lone: ChosenColumn | undefined,
): AsyncGenerator<SampleBlock> {
  const filler = createGapFiller(channels.length, rows.rateHz);
  const figures = channels.map(emptyFigures);
  let startSample = 0;
  const emit = (samples: Float64Array[]): SampleBlock => {
    samples.forEach((channel, c) => {
      observe(figures[c]!, channel, MOST[channels[c]!.quantity as 'voltage' | 'current']);
    });
    const block = { startSample, channels: samples };
    startSample += samples[0]?.length ?? 0;
    return block;
  };
  for await (const piece of rows.pieces) {
    piece.forEach((samples, c) => {
      multiply(samples, factors[c] as number);
    });
    const filled = filler.push(piece);
    if ((filled[0]?.length ?? 0) > 0) yield emit(filled);
  }
  const rest = filler.flush();
  if ((rest[0]?.length ?? 0) > 0) yield emit(rest);
  if (startSample === 0) throw noSamples(table.fileName);
  if (lone) refuseUnlikeVolts(table.fileName, lone, figures[0]!);
  const { bridged, zeroed } = filler;
  refuseMostlyMissing(table.fileName, bridged + zeroed, startSample * channels.length);
  table.notes.push(...rows.closing(), ...fillNotes(bridged, zeroed, startSample * channels.length));
  table.notes.push(...suspectMistakes(channels, figures));
}

/** Instruments write 9.9E+37 or 9.91E+37 where they have no value (SCPI 1999, volume 1, 7.2.1.4 and 7.2.1.5). */
const NO_VALUE = 9.8e37;

function multiply(samples: Float64Array, factor: number): void {
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i] as number;
    samples[i] = value >= NO_VALUE || value <= -NO_VALUE ? Number.NaN : value * factor;
  }
}

function fillNotes(bridged: number, zeroed: number, all: number): Note[] {
  if (bridged + zeroed === 0) return [];
  return [note('filled', { bridged, zeroed, values: all })];
}

function noSamples(fileName: string): ArcError {
  return new ArcError({
    code: 'no-rows',
    what: `${fileName} holds no samples.`,
    expected: 'rows of numbers',
    todo: 'Check that the export holds the trace itself.',
  });
}
