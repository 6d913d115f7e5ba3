import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Result } from '../../../analysis/result/index.js';
import type { Mode } from '../../../core/index.js';
import type { RawSetup } from '../messages.js';

/** A judged run as it is kept on the device. Student and booth are free text and leave it only in an export. */
export interface Run {
  id: string;
  /** Milliseconds since 1970, of this device's clock. */
  createdMs: number;
  student: string;
  booth: string;
  origin: 'microphone' | 'file';
  /** Whether the sound or log itself is kept too. */
  hasFile: boolean;
  setup: RawSetup;
  result: Result;
  /** The mode it was by the trainer's own word; absent where none was given. */
  trainerMode?: Mode;
}

/** A piece of a recording under way, so that a closed page or an empty battery loses a second at most. */
export interface Piece {
  recording: string;
  index: number;
  rateHz: number;
  name: string;
  createdMs: number;
  samples: Int16Array;
}

export interface Tables extends DBSchema {
  runs: { key: string; value: Run; indexes: { createdMs: number } };
  files: { key: string; value: Blob };
  pieces: { key: [string, number]; value: Piece };
  booths: { key: string; value: RawSetup };
}

export type Database = IDBPDatabase<Tables>;

/** The device's own store of this page. Rejects where the browser keeps none (some private windows). */
export function openDatabase(): Promise<Database> {
  return openDB<Tables>('arc-transfer', 1, {
    upgrade(database) {
      database.createObjectStore('runs', { keyPath: 'id' }).createIndex('createdMs', 'createdMs');
      database.createObjectStore('files');
      database.createObjectStore('pieces', { keyPath: ['recording', 'index'] });
      database.createObjectStore('booths');
    },
  });
}
