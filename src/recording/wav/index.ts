import { openPcm } from '../pcm/index.js';
import type { Reader } from '../reader.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { parseWavFormat } from './format.js';
import { findWavLayout } from './layout.js';

const CONTAINERS = ['RIFF', 'RIFX', 'RF64', 'BW64'];

/** Reader of WAV files, in all their containers (RIFF, RIFX, RF64, BW64). */
export const wavReader: Reader = {
  format: 'wav',
  title: 'WAV',
  sniff: (head) => CONTAINERS.some((id) => hasAscii(head, 0, id)) && hasAscii(head, 8, 'WAVE'),
  open: openWav,
};

async function openWav(source: ByteSource, options: ReadOptions): Promise<Recording> {
  const layout = await findWavLayout(source);
  const { bigEndian, notes } = layout;
  const format = parseWavFormat(layout.format, bigEndian, options.sampleRateHz, notes);
  return openPcm({ source, container: 'wav', format, data: layout, notes }, options);
}
