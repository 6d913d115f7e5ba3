import { loadShippedModel } from '../../src/node/shipped-models.js';
import { parseSetup } from '../../src/procedure/index.js';
import {
  bufferSource,
  type HostDecoder,
  openRecording,
  type ReadOptions,
} from '../../src/recording/index.js';
import type { Result } from '../../src/result/index.js';
import { analyse, defaultSettings } from '../../src/run/index.js';

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
