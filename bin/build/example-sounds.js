// Draws the example sounds of the page anew: `npm run build && node bin/build/example-sounds.js`. The same bytes each
// time. A sound is taken only where the events that mark its mode can be told by ear (`heardMode`).
import { writeFileSync } from 'node:fs';
import { encodeAdpcm } from '../../dist/apps/page/sounds/adpcm.js';
import { createRandom } from '../../dist/core/index.js';
import {
  atRate,
  audibility,
  drawAcoustics,
  drawScenario,
  ELECTRICAL_FAMILIES,
  heardMode,
  simulateArc,
  simulateDrySound,
} from '../../dist/lab/simulate/index.js';

const OUT = 'src/apps/page/sounds';
const RATE_HZ = 22_050;
const LENGTH_S = 1.6;
/** Ignition is left out, s. */
const FROM_S = 0.8;
const TAKES = { 'short-circuit': 4, globular: 2, spray: 2, 'pulsed-spray': 4 };
/** Which events are marked in the picture of a mode. */
const MARKS = {
  'short-circuit': 'short',
  globular: 'drop',
  spray: 'drop',
  'pulsed-spray': 'pulse',
};
/** Events a second of an example: the middle of what each mode does, so that it is a plain case (own choice). */
const USUAL_HZ = {
  'short-circuit': [40, 130],
  globular: [5, 60],
  spray: [100, 350],
  'pulsed-spray': [50, 250],
};
/** All are brought to one loudness, so that none is told by it; what rises above is held. */
const RMS = 0.12;
const LOUDEST = 0.9;

const parts = [];
const index = [];
let at = 0;
for (const [mode, takes] of Object.entries(TAKES)) {
  let taken = 0;
  for (let k = 1; taken < takes; k++) {
    if (k > 400) throw new Error(`no audible ${mode} in ${k} draws`);
    const one = draw(mode, k);
    if (!one) continue;
    taken += 1;
    const bytes = encodeAdpcm(one.samples);
    parts.push(bytes);
    index.push({
      mode,
      draw: k,
      rateHz: RATE_HZ,
      samples: one.samples.length,
      from: at,
      bytes: bytes.length,
      marksS: one.marksS,
    });
    at += bytes.length;
    process.stderr.write(`${mode}: draw ${k}, ${one.marksS.length} marks\n`);
  }
}
writeFileSync(`${OUT}/examples.bin`, Buffer.concat(parts));
writeFileSync(`${OUT}/examples.json`, `${JSON.stringify(index, null, 1)}\n`);

function draw(mode, k) {
  const random = createRandom(`example sounds ${mode} ${k}`);
  const scenario = drawScenario(random.fork('arc'), {
    family: ELECTRICAL_FAMILIES[k % ELECTRICAL_FAMILIES.length],
    arcS: FROM_S + LENGTH_S + 0.4,
    mode,
    wrongShare: 0,
  });
  const run = simulateArc(scenario);
  if (run.truth.mode !== mode || !run.truth.unambiguous || run.truth.arcOn.length !== 1)
    return null;
  const acoustics = drawAcoustics(random.fork('sound'), { family: 'voiced' });
  const dry = simulateDrySound(run, acoustics);
  const from = FROM_S;
  const to = from + LENGTH_S;
  if (run.truth.arcOn[0].startS > from || run.truth.arcOn[0].endS < to) return null;
  const audible = audibility({ ...dry, startS: from, endS: to });
  const heard = heardMode(mode, audible, 0);
  const kind = MARKS[mode];
  if (heard !== mode || !audible[kind]?.isAudible) return null;
  const whole = Float64Array.from(dry.rest);
  for (const part of Object.values(dry.events))
    for (let i = 0; i < whole.length; i++) whole[i] += part[i];
  const slice = whole.subarray(Math.round(from * dry.rateHz), Math.round(to * dry.rateHz));
  const samples = faded(atRate(slice, dry.rateHz, RATE_HZ));
  const marksS = dry.eventsS[kind]
    .map((s) => Math.round(1000 * (s + dry.delayS - from)) / 1000)
    .filter((s) => s >= 0 && s < LENGTH_S);
  const perS = marksS.length / LENGTH_S;
  const [least, most] = USUAL_HZ[mode];
  return perS >= least && perS <= most ? { samples, marksS } : null;
}

/** Brought to one loudness, with soft ends. */
function faded(samples) {
  const rms = Math.sqrt(samples.reduce((sum, one) => sum + one * one, 0) / samples.length);
  const soft = Math.round(0.03 * RATE_HZ);
  return Float64Array.from(samples, (value, i) => {
    const edge = Math.min(1, (i + 1) / soft, (samples.length - i) / soft);
    return Math.max(-LOUDEST, Math.min(LOUDEST, (RMS * value) / rms)) * edge;
  });
}
