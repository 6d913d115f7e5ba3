import { type ChildProcess, spawn } from 'node:child_process';
import type { Observer, WatchEvent, WatchState } from './events.js';

const LONGEST_MS = 30_000;

/**
 * Runs a program when an alarm begins or ends: the words as they were given, never through a shell, with
 * `{state}` (`alarm`, `alarm-end`, or what else raises it), `{expected}`, `{mode}`, `{weld}` and `{time}` filled in.
 */
export class AlarmCommand implements Observer {
  readonly #argv: readonly string[];
  readonly #say: (text: string) => void;
  readonly #also: ReadonlySet<string>;
  readonly #running = new Set<ChildProcess>();

  constructor(
    argv: readonly string[],
    say: (text: string) => void,
    also: ReadonlySet<string> = new Set(),
  ) {
    this.#also = also;
    this.#argv = argv;
    this.#say = say;
  }

  tell(event: WatchEvent, state?: Pick<WatchState, 'expected' | 'weld'>): void {
    const departure = event.event === 'alarm' || event.event === 'alarm-end';
    if (!departure && !this.#also.has(event.event)) return;
    const values: Record<string, string> = {
      state: event.event,
      expected: (departure ? event.expected : state?.expected) ?? 'none',
      mode: (departure ? event.mode : null) ?? 'unknown',
      weld: String(departure ? event.weld : (state?.weld ?? 0)),
      time: event.timeS.toFixed(2),
    };
    const [program = '', ...rest] = this.#argv;
    const args = rest.map((word) =>
      word.replaceAll(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole),
    );
    const child = spawn(program, args, {
      shell: false,
      stdio: ['ignore', 'ignore', 'inherit'],
      timeout: LONGEST_MS,
    });
    this.#running.add(child);
    child.on('error', (error) => this.#ended(child, error.message));
    child.on('exit', (code, by) => this.#ended(child, code === 0 ? '' : `status ${code ?? by}`));
  }

  async close(): Promise<void> {
    await Promise.all(
      [...this.#running].map((child) => new Promise((done) => child.once('close', done))),
    );
  }

  #ended(child: ChildProcess, trouble: string): void {
    this.#running.delete(child);
    if (trouble !== '') this.#say(`--on-alarm ${this.#argv[0]}: ${trouble}`);
  }
}
