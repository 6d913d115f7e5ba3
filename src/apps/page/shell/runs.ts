import type { Result } from '../../../analysis/result/index.js';
import type { RawSetup } from '../messages.js';
import type { Run } from '../storage/database.js';
import type { State } from './state.js';

/** A name of its own; also where the page has no secure context. */
export function newId(): string {
  const random = crypto.getRandomValues(new Uint32Array(2));
  return `${Date.now().toString(36)}-${[...random].map((one) => one.toString(36)).join('')}`;
}

/** `recording 2026-11-25 14.03.09.wav`, by the clock of this device. */
export function recordingName(at: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  const time = [at.getHours(), at.getMinutes(), at.getSeconds()].map(two).join('.');
  return `recording ${day} ${time}.wav`;
}

/** A run from what is typed on the page just now. */
export function runOf(
  id: string,
  origin: Run['origin'],
  result: Result,
  { student, booth, setup }: Pick<State, 'student' | 'booth'> & { setup: RawSetup },
): Run {
  const createdMs = Date.now();
  return { id, createdMs, student, booth, origin, hasFile: false, setup, result };
}

/** What is left of a set-up without its empty fields. */
export function stated(setup: RawSetup): RawSetup {
  return Object.fromEntries(Object.entries(setup).filter(([, text]) => text.trim() !== ''));
}
