// Packs what `bin/train` made (network.json, network.bin and, where it is there, calibration.json) into the one document
// that the tool judges sound by. Arguments: the folder, and where to write (default src/model/shipped/sound.json).
// What calibration.json states stands before what network.json states; what neither states takes the value given here.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const { SOUND_FEATURES } = await import('../../dist/features/index.js');
const { checkFit } = await import('../../dist/model/index.js');

const [folder, out = 'src/model/shipped/sound.json'] = process.argv.slice(2);
const {
  outputs: named,
  calibration: own,
  answer: rule,
  novelty: unlike,
  facts,
  ...network
} = read('network.json');
const beside = existsSync(join(folder, 'calibration.json')) ? read('calibration.json') : {};
const outputs = (beside.outputs ?? named ?? [...network.modes, 'arc', 'drops-heard']).map((name) =>
  [...network.modes, 'free-flight', 'arc', 'drops-heard'].includes(name) ? name : 'other',
);
const classes = outputs.filter(
  (name) => network.modes.includes(name) || name === 'free-flight',
).length;
const stated = { ...own, ...beside.calibration };
const plain = (count) => ({ slope: 1, offset: Array(count).fill(0) });
const temperature = beside.modeTemperature;
const document = {
  kind: 'arc-transfer-ear',
  schemaVersion: '1',
  id: 'arc-transfer sound',
  version: '2',
  featureSet: {
    id: SOUND_FEATURES.id,
    version: SOUND_FEATURES.version,
    features: SOUND_FEATURES.features.map(({ id }) => id),
  },
  network,
  weights: readFileSync(join(folder, 'network.bin')).toString('base64'),
  outputs,
  calibration: {
    modes:
      part(stated.modes, classes) ??
      (temperature ? { ...plain(classes), slope: 1 / temperature } : plain(classes)),
    modesByS: (stated.modesByS ?? [])
      .map(({ toS, ...one }) => ({ toS, ...part(one, classes) }))
      .sort((a, b) => a.toS - b.toS),
    arc:
      part(stated.arc, 1) ??
      (beside.arcSlope === undefined
        ? plain(1)
        : { slope: beside.arcSlope, offset: [beside.arcOffset] }),
    rows: part(stated.rows, 1) ?? plain(1),
    dropsHeard: part(stated.dropsHeard, 1) ?? plain(1),
  },
  answer: { nameArc: 0.5, rejectArc: 0.2, nameDrops: 0.35, ...rule, ...beside.answer },
  novelty: beside.novelty ?? unlike ?? null,
  training: {
    evidence:
      'Simulated arcs (simulate) and real sounds without an arc; no openly licensed real recording of globular, spray or pulsed transfer was at hand.',
    ...facts,
    ...(beside.curve ? { curve: beside.curve } : {}),
  },
};
checkFit(document, SOUND_FEATURES);
writeFileSync(out, JSON.stringify(document));

function read(name) {
  return JSON.parse(readFileSync(join(folder, name), 'utf8'));
}

function part(given, count) {
  if (!given) return undefined;
  const { slope, offset = 0 } = given;
  return { slope, offset: Array.isArray(offset) ? offset : Array(count).fill(offset) };
}
