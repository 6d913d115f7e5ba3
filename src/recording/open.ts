import { ArcError } from '../core/index.js';
import { note } from '../messages/index.js';
import { openRaw } from './raw/index.js';
import { type Reader, type ReaderContext, SNIFF_BYTES } from './reader.js';
import { READERS } from './readers.js';
import { describeContent } from './sniff.js';
import type { ByteSource, ReadOptions, Recording } from './types.js';

/**
 * Opens a recording with the reader that recognises its content. The name of the source is used in
 * messages only. Nothing but the head has been read when it returns (containers with an index at the
 * end read that too); the samples come with `blocks()`.
 *
 * @throws ArcError `empty-file`, `unknown-format`, or what the reader found wrong.
 */
export async function openRecording(
  source: ByteSource,
  options: ReadOptions = {},
  context: ReaderContext = { decoders: [] },
): Promise<Recording> {
  if (source.size === 0) throw emptyFile(source.name);
  if (options.raw) return withGrowthNote(await openRaw(source, options.raw, options), source);
  const head = (await source.read(0, Math.min(SNIFF_BYTES, source.size))).slice();
  if (head.length === 0) throw emptyFile(source.name);
  const reader = READERS.find((candidate) => candidate.sniff(head, source));
  if (!reader) throw unknownFormat(source.name, head, READERS);
  return withGrowthNote(await reader.open(source, options, context), source);
}

/** A recorder may still be writing: what came after the opening is not read, and that is said. */
function withGrowthNote(recording: Recording, source: ByteSource): Recording {
  if (!source.currentSize) return recording;
  const blocks = recording.blocks.bind(recording);
  recording.blocks = async function* () {
    yield* blocks();
    const now = await source.currentSize?.();
    if (now === undefined || now <= source.size) return;
    recording.notes.push(note('file-growing', { openedBytes: source.size, nowBytes: now }));
  };
  return recording;
}

function emptyFile(name: string): ArcError {
  return new ArcError({
    code: 'empty-file',
    what: `${name} holds no bytes.`,
    expected: 'a sound recording or an electrical log',
    todo: 'Check that the recording was saved or copied completely.',
  });
}

function unknownFormat(name: string, head: Uint8Array, readers: readonly Reader[]): ArcError {
  return new ArcError({
    code: 'unknown-format',
    what: `${name} is not a recording this program can read: its content looks like ${describeContent(head)}.`,
    expected: `one of: ${readers.map((reader) => reader.title).join(', ')}`,
    todo: 'Export the recording in one of these formats.',
  });
}
