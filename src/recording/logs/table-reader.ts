import { ArcError, isArcError } from '../../core/index.js';
import type { Reader } from '../reader.js';
import type { ByteSource, Recording } from '../types.js';
import { assembleRecording } from './assemble.js';
import type { LogTable } from './table.js';

/** A log format: how it is recognised and how its table is opened. */
export interface TableFormat {
  format: string;
  title: string;
  sniff(head: Uint8Array, source: ByteSource): boolean;
  openTable(source: ByteSource): Promise<LogTable>;
}

/** A reader of a log format, which also lets the inspection see the table. */
export interface TableReader extends Reader {
  openTable(source: ByteSource): Promise<LogTable>;
}

/** Makes a reader; whatever a library throws comes out as an ArcError. */
export function tableReader(format: TableFormat): TableReader {
  const openTable = (source: ByteSource): Promise<LogTable> =>
    explain(format.openTable(source), source, format);
  return {
    format: format.format,
    title: format.title,
    sniff: format.sniff,
    openTable,
    open: async (source, options) => {
      const table = await openTable(source);
      const recording = await explain(assembleRecording(table, options), source, format);
      return explainBlocks(recording, source, format);
    },
  };
}

function explainBlocks(recording: Recording, source: ByteSource, format: TableFormat): Recording {
  const blocks = recording.blocks.bind(recording);
  recording.blocks = async function* () {
    try {
      yield* blocks();
    } catch (error) {
      throw asArcError(error, source, format);
    }
  };
  return recording;
}

async function explain<T>(work: Promise<T>, source: ByteSource, format: TableFormat): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw asArcError(error, source, format);
  }
}

function asArcError(error: unknown, source: ByteSource, format: TableFormat): unknown {
  // A host's own errors (no permission, a path that vanished) are not damage.
  if (isArcError(error) || (error instanceof Error && 'syscall' in error)) return error;
  const reason = error instanceof Error ? error.message : String(error);
  return new ArcError({
    code: 'damaged-file',
    what: `${source.name} could not be read as ${format.title} (${reason.slice(0, 200)}).`,
    expected: 'an intact file of that format',
    todo: 'Copy or export the file again.',
    cause: error,
  });
}
