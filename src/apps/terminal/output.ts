import { once } from 'node:events';

/** True once the reader of stdout has gone away (`… | head -1`); nothing more needs to be made. */
let stdoutClosed = false;

/** A closed pipe ends the output quietly; any other trouble with stdout is still an error. */
export function guardPipes(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      if (stream === process.stdout) stdoutClosed = true;
    });
  }
}

/** Whether anybody still reads stdout. */
export function stdoutIsOpen(): boolean {
  return !stdoutClosed && !process.stdout.destroyed;
}

/** A document for stdout: indented where a person reads it in a terminal, else on one line, for programs. */
export function jsonForStdout(document: unknown): string {
  return `${JSON.stringify(document, null, process.stdout.isTTY ? 2 : undefined)}\n`;
}

/** Data to stdout, waiting while the reader is slow. Does nothing once the reader has gone. */
export async function writeOut(text: string | Uint8Array): Promise<void> {
  if (!stdoutIsOpen()) return;
  if (!process.stdout.write(text)) {
    await Promise.race([once(process.stdout, 'drain'), once(process.stdout, 'close')]).catch(
      () => {},
    );
  }
}
