import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EarModel } from '../../src/model/index.js';

const FOLDER = join(import.meta.dirname, '../../fixtures/reference/network');

/** A small network with drawn weights, as a model document; it knows nothing of arcs. */
export function tinyEar(changes: Partial<EarModel> = {}): EarModel {
  const { facts: _, ...network } = JSON.parse(readFileSync(join(FOLDER, 'network.json'), 'utf8'));
  const plain = (count: number) => ({ slope: 1, offset: Array<number>(count).fill(0) });
  return {
    kind: 'arc-transfer-ear',
    schemaVersion: '1',
    id: 'tiny ear',
    version: '1',
    featureSet: { id: 'tiny', version: 1, features: ['lean', 'lift'] },
    network,
    weights: readFileSync(join(FOLDER, 'network.bin')).toString('base64'),
    outputs: [...network.modes, 'arc', 'drops-heard'],
    calibration: {
      modes: plain(4),
      modesByS: [],
      arc: plain(1),
      rows: plain(1),
      dropsHeard: plain(1),
    },
    answer: { nameArc: 0.5, rejectArc: 0.2, nameDrops: 0.35 },
    novelty: null,
    training: {},
    ...changes,
  };
}
