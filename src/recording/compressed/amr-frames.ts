import { ArcError } from '../../core/index.js';
import { note } from '../../messages/index.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';
import { withoutZeroTail } from './byte-views.js';
import type { Packet, PacketStream } from './stream.js';

/** Frame sizes with their header byte, by frame type (RFC 4867, storage format). */
const NARROW = [13, 14, 16, 18, 20, 21, 27, 32, 6, 0, 0, 0, 0, 0, 0, 1];
const WIDE = [18, 24, 33, 37, 41, 47, 51, 59, 61, 6, 0, 0, 0, 0, 1, 1];
const FRAME_S = 0.02;
const READ_BYTES = 64 * 1024;

/** Length of an AMR frame by its first byte; 0 for types that are reserved. */
export function amrFrameBytes(first: number, wide: boolean): number {
  return (wide ? WIDE : NARROW)[(first >> 3) & 15] ?? 0;
}

/** True for a bare AMR file (RFC 4867 section 5). */
export function isAmr(head: Uint8Array): boolean {
  return hasAscii(head, 0, '#!AMR\n') || hasAscii(head, 0, '#!AMR-WB\n');
}

/** A bare AMR file as packets of 20 ms. Stops with a note where the frames make no sense. */
export async function amrStream(file: ByteSource): Promise<PacketStream> {
  // Zeros would read as frames of the lowest rate.
  const source = await withoutZeroTail(file);
  const head = (await source.read(0, 10)).slice();
  const wide = hasAscii(head, 0, '#!AMR-WB\n');
  const start = wide ? 9 : 6;
  if (source.size <= start) throw noFrames(source.name);
  const notes: PacketStream['notes'] = [];
  return {
    container: 'amr',
    config: { codec: wide ? 'amr-wb' : 'amr-nb', sampleRateHz: wide ? 16_000 : 8000, channels: 1 },
    skipFrames: () => 0,
    notes,
    close: () => {},
    async *packets(): AsyncGenerator<Packet> {
      let startS = 0;
      for (let at = start; at < source.size; ) {
        const bytes = (await source.read(at, READ_BYTES)).slice();
        let used = 0;
        for (; used < bytes.length; ) {
          const length = amrFrameBytes(bytes[used]!, wide);
          if (length === 0 || used + length > bytes.length) break;
          yield { data: bytes.subarray(used, used + length), startS, durationS: FRAME_S };
          used += length;
          startS += FRAME_S;
        }
        if (used === 0) {
          notes.push(note('truncated', { how: 'damaged-frame', readS: startS }));
          return;
        }
        at += used;
      }
    },
  };
}

function noFrames(name: string): ArcError {
  return new ArcError({
    code: 'no-samples',
    what: `${name} is an AMR file without a single frame.`,
    expected: 'a recording with sound in it',
    todo: 'Check that the recorder was running and the file was closed.',
  });
}
