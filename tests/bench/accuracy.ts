/**
 * What the whole way from samples to answer gives on arcs drawn anew, the question "arc or not" included,
 * which the figures in the model documents leave out. One mechanism carries the metal in all of them
 * (`unambiguous`). Arguments: arcs (default 160; about a second each), sounds without an arc a kind (default 4).
 */

import { defaultSettings, extractorFor, Pipeline } from '../../src/analysis/index.js';
import { createRandom } from '../../src/core/index.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import { NON_ARC_SOUNDS, simulateNonArc } from '../../src/lab/simulate/index.js';
import { SHIPPED_RECIPE } from '../../src/lab/train/index.js';
import { parseModel } from '../../src/model/parse/index.js';
import { drawPair } from '../support/drawn-pair.js';
import { CHANNELS, type Kind } from '../support/judge.js';

const ARCS = Number(process.argv[2] ?? 160);
const OTHERS = Number(process.argv[3] ?? 4);
/** Seeds that no model has seen; the assumptions are those of its plain renderings. */
const RECIPE = { ...SHIPPED_RECIPE, seed: 'end to end' };
const SURE = 0.95;
const RATE_HZ = 44_100;

const OUTCOMES = ['right', 'wrong', 'mixed', 'unsure', 'no arc'] as const;
type Outcome = (typeof OUTCOMES)[number];

const table = new Map<string, Record<Outcome, number>>();

function count(row: string, outcome: Outcome): void {
  const counts = table.get(row) ?? { right: 0, wrong: 0, mixed: 0, unsure: 0, 'no arc': 0 };
  counts[outcome]++;
  table.set(row, counts);
}

async function outcome(
  kind: Kind,
  rateHz: number,
  channels: readonly Float64Array[],
  truth: string | null,
  arcPrior = defaultSettings().arcPrior,
): Promise<Outcome> {
  const extractor = extractorFor({
    kind: kind === 'sound' ? 'sound' : 'electrical',
    sampleRateHz: rateHz,
    channels: [...CHANNELS[kind]],
  });
  const model = parseModel(await loadShippedModel(extractor.featureSet.id), extractor.featureSet);
  const pipeline = new Pipeline(extractor, rateHz, model, { ...defaultSettings(), arcPrior });
  pipeline.push(channels);
  pipeline.flush();
  const { status, mode } = pipeline.verdict();
  if (status === 'no-arc') return 'no arc';
  if (mode === null) return 'unsure';
  if (mode === 'mixed') return 'mixed';
  return mode === truth ? 'right' : 'wrong';
}

const noiseOf = (snrDb: number | null): string =>
  snrDb === null || snrDb >= 20 ? '20 dB or more' : snrDb >= 5 ? '5 to 20 dB' : 'under 5 dB';

for (let i = 0; i < ARCS; i++) {
  const { run, chain, samples, rateHz } = drawPair(RECIPE, i);
  const { mode, unambiguous } = run.truth;
  if (!unambiguous) continue;
  for (const prior of [undefined, SURE]) {
    const found = await outcome('sound', rateHz, [samples], mode, prior);
    const odds = prior === undefined ? 'even odds' : `prior ${SURE}`;
    for (const group of ['', `, ${chain.family}`, `, noise ${noiseOf(chain.snrDb)}`, `, ${mode}`])
      count(`sound${group}, ${odds}`, found);
  }
  count('voltage', await outcome('voltage', run.electricalRateHz, [run.voltageV], mode));
  const both = [run.voltageV, run.currentA];
  count('voltage and current', await outcome('voltage-current', run.electricalRateHz, both, mode));
}
for (const kind of NON_ARC_SOUNDS)
  for (let i = 0; i < OTHERS; i++) {
    const random = createRandom(`${RECIPE.seed}/${kind}/${i}`);
    const sound = simulateNonArc(kind, random, RATE_HZ, random.uniform(3, 6));
    if (sound.type !== 'sound') continue;
    for (const prior of [undefined, SURE])
      count(
        `no arc at all, ${prior === undefined ? 'even odds' : `prior ${SURE}`}`,
        await outcome('sound', RATE_HZ, [sound.samples], null, prior),
      );
  }

console.log(`${'runs'.padEnd(44)}number  ${OUTCOMES.map((one) => one.padStart(7)).join('')}`);
for (const [row, counts] of [...table].sort(([a], [b]) => a.localeCompare(b))) {
  const total = OUTCOMES.reduce((sum, one) => sum + counts[one], 0);
  const shares = OUTCOMES.map((one) => `${Math.round((100 * counts[one]) / total)} %`.padStart(7));
  console.log(`${row.padEnd(44)}${String(total).padStart(6)}  ${shares.join('')}`);
}
