import { ffmpegDecoder } from '../../../files/ffmpeg-decoder.js';
import { openFileSource } from '../../../files/file-source.js';
import { inspectRecording } from '../../../recording/index.js';
import { failInput } from '../../terminal/failure.js';
import { readWords } from '../../terminal/flags/language-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { lookOf } from '../../terminal/look.js';
import { writeOut } from '../../terminal/output.js';
import { inspectionText } from './text.js';

/**
 * The whole command: each file described in turn, as words or as one JSON document a line. A file that
 * cannot be read is described as far as it goes, and makes the exit status 1.
 *
 * @throws ArcError for wrong use, before anything is read.
 */
export async function inspectCommand(
  paths: readonly string[],
  options: Readonly<Record<string, unknown>>,
): Promise<void> {
  const words = readWords(options);
  const reading = readReading(options);
  const json = options['json'] === true;
  const look = lookOf(process.stdout);
  for (const [i, path] of paths.entries()) {
    try {
      const source = await openFileSource(path);
      try {
        const inspection = await inspectRecording(source, reading, { decoders: [ffmpegDecoder()] });
        if (inspection.problem !== null) process.exitCode = 1;
        if (json) await writeOut(`${JSON.stringify(inspection)}\n`);
        else await writeOut(`${i > 0 ? '\n' : ''}${inspectionText(inspection, look, words)}`);
      } finally {
        await source.close();
      }
    } catch (error) {
      failInput(error, path);
    }
  }
}
