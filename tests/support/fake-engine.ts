import type { Result } from '../../src/analysis/result/index.js';
import type { Engine } from '../../src/apps/terminal/judge/engine.js';
import { ArcError } from '../../src/core/index.js';
import { openFileSource } from '../../src/files/file-source.js';
import { sampleResult } from './sample-result.js';

/**
 * Stands for readers and analysis where only the handling of files is tested: a file that says
 * `arc <status>` gives an invented result of that status, `broken` an error, anything else is no recording.
 */
export const FAKE_ENGINE: Engine = {
  openSource: openFileSource,
  openRecording: async (source) => {
    const bytes = await source.read(0, source.size);
    const [word, status] = new TextDecoder().decode(bytes).trim().split(' ');
    if (word === 'broken') throw error('bad-content', source.name);
    if (word !== 'arc') throw error('unknown-format', source.name);
    return {
      kind: 'sound',
      format: status ?? 'ok',
      sampleRateHz: 8000,
      channels: [{ name: 'channel 1', quantity: 'sound', unit: 'full-scale' }],
      notes: [],
      blocks: async function* () {
        yield { startSample: 0, channels: [new Float64Array(10)] };
      },
    };
  },
  analyse: async (recording, { path, sha256, host }) => {
    for await (const block of recording.blocks()) void block;
    const status = recording.format as Result['status'];
    const result = sampleResult(
      status === 'ok' ? {} : { status, mode: null, confidence: null, crossCheck: null },
    );
    result.source.path = path;
    result.source.sha256 = sha256;
    result.tool.host = host;
    return result;
  },
};

function error(code: string, name: string): ArcError {
  return new ArcError({ code, what: `${name} is of no use.`, expected: 'another', todo: 'Look.' });
}
