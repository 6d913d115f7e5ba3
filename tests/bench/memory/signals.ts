import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Bytes of simulated time: welds with pauses, one after the other, as a source gives them. */
export interface Signal {
  /** The samples or rows of `hours`, in pieces; heads and names first. */
  bytes(hours: number): AsyncGenerator<Uint8Array>;
}

const PAUSE_S = 3;
const ROW_HZ = 5000;
const SOUND_HZ = 44_100;
const PIECE = 16 * 1024;
/** Pieces after which the loop of events gets a turn, as it does between pieces that really come from outside. */
const TURN = 32;

async function turn(pieces: number): Promise<void> {
  if (pieces % TURN === 0) await new Promise((resolve) => setImmediate(resolve));
}

const fixture = (name: string): Buffer =>
  readFileSync(join(import.meta.dirname, '../fixtures/recordings', name));

/** Rows with a clock that runs on: a demonstration weld, a pause, the weld again. */
export function rowSignal(): Signal {
  const weld = fixture('short-circuit.csv').toString().trim().split('\n').slice(1);
  const tails = weld.map((line) => line.slice(line.indexOf(',')));
  for (let i = 0; i < PAUSE_S * ROW_HZ; i++) tails.push(',0.02,0.4');
  return {
    async *bytes(hours) {
      yield Buffer.from('time_s,voltage_v,current_a\n');
      const rows = Math.round(hours * 3600 * ROW_HZ);
      let text = '';
      let pieces = 0;
      for (let i = 0; i < rows; i++) {
        text += `${(i / ROW_HZ).toFixed(4)}${tails[i % tails.length]}\n`;
        if (text.length < PIECE) continue;
        yield Buffer.from(text);
        text = '';
        await turn(++pieces);
      }
      if (text !== '') yield Buffer.from(text);
    },
  };
}

/** 16-bit sound: a demonstration weld, a pause, the weld again; with the head of an endless WAV or bare. */
export function soundSignal(head: boolean): Signal {
  const wav = fixture('spray.wav');
  const weld = wav.subarray(44);
  const pause = Buffer.alloc(2 * PAUSE_S * SOUND_HZ);
  const round = Buffer.concat([weld.subarray(0, weld.length & ~1), pause]);
  return {
    async *bytes(hours) {
      if (head) {
        const start = Buffer.from(wav.subarray(0, 44));
        start.writeUInt32LE(0xffffffff, 40);
        yield start;
      }
      let pieces = 0;
      let left = 2 * Math.round(hours * 3600 * SOUND_HZ);
      for (let at = 0; left > 0; at = (at + PIECE) % round.length) {
        const piece = round.subarray(at, Math.min(round.length, at + PIECE, at + left));
        left -= piece.length;
        yield Buffer.from(piece);
        await turn(++pieces);
        if (piece.length < PIECE) at = -PIECE;
      }
    },
  };
}
