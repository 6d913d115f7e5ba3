import { analyse, defaultSettings } from '../../src/analysis/index.js';
import type { Result } from '../../src/analysis/result/index.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import {
  bufferSource,
  type HostDecoder,
  openRecording,
  type ReadOptions,
} from '../../src/recording/index.js';
import { parseSetup } from '../../src/setup/index.js';

/** The result of bytes, as the command line makes it, but for programs of the machine that decode. */
export async function analyseBytes(
  bytes: Uint8Array,
  options: ReadOptions = {},
  decoders: HostDecoder[] = [],
): Promise<Result> {
  const recording = await openRecording(bufferSource(bytes, 'run'), options, { decoders });
  return analyse(recording, {
    setup: parseSetup({}),
    settings: defaultSettings(),
    loadModel: loadShippedModel,
    path: 'run',
    sha256: null,
    host: 'node',
  });
}
