/**
 * What the shipped tool says of arcs and other sounds drawn by simulators that share nothing with its own. Arguments:
 * arcs a world (default 40, each in seven conditions), other sounds a world (default 96), a world by name (all), and
 * `--model <file>` to score another model document for sound. World
 * `circuit` serves choices; the others only score. Answers are those of `classify` as it is; "told" is a prior of 0.95
 * that there is an arc. "Set": no single mode is named, and the right one is among those that remain. "Audible": an
 * ideal listener could tell the mode.
 */
import { readFileSync } from 'node:fs';
import { circuit } from '../foreign/circuit/index.js';
import { events } from '../foreign/events/index.js';
import { grains } from '../foreign/grains/index.js';
import { foreignItems } from '../support/foreign-set.js';
import { type Answers, answersOfTool, getsMode, isNamed } from '../support/foreign-tool.js';

/** First seeds of the fixed draw. */
const FIRST_ARC = 1000;
const FIRST_OTHER = 5000;
interface Tally {
  runs: number;
  audible: number;
  right: number;
  wrong: number;
  set: number;
  toldRight: number;
  toldWrong: number;
  likeliest: number;
  audibleRight: number;
  audibleWrong: number;
  audibleSet: number;
  audibleLikeliest: number;
}

const tables = new Map<string, Tally>();

function count(rows: string[], truth: string, isHeard: boolean, { untold, told }: Answers): void {
  for (const row of rows) {
    const t = tables.get(row) ?? fresh();
    tables.set(row, t);
    const right = untold.says === truth;
    const wrong = isNamed(untold) && !right;
    const likeliest = told.likeliest === truth;
    t.runs++;
    t.right += +right;
    t.wrong += +wrong;
    t.set += +untold.remaining.includes(truth);
    t.toldRight += +(told.says === truth);
    t.toldWrong += +(isNamed(told) && told.says !== truth);
    t.likeliest += +likeliest;
    if (!isHeard) continue;
    t.audible++;
    t.audibleRight += +right;
    t.audibleWrong += +wrong;
    t.audibleSet += +untold.remaining.includes(truth);
    t.audibleLikeliest += +likeliest;
  }
}

function fresh(): Tally {
  return {
    runs: 0,
    audible: 0,
    right: 0,
    wrong: 0,
    set: 0,
    toldRight: 0,
    toldWrong: 0,
    likeliest: 0,
    audibleRight: 0,
    audibleWrong: 0,
    audibleSet: 0,
    audibleLikeliest: 0,
  };
}

const args = process.argv.slice(2);
const at = args.indexOf('--model');
/** One document for all: it is checked once. */
const document: unknown = at < 0 ? null : JSON.parse(readFileSync(args[at + 1]!, 'utf8'));
if (at >= 0) args.splice(at, 2);
const answersOf = (samples: Float32Array, rateHz: number): Promise<Answers> =>
  document === null
    ? answersOfTool(samples, rateHz)
    : answersOfTool(samples, rateHz, async () => document);
const ARCS = Number(args[0] ?? 40);
const OTHERS = Number(args[1] ?? 96);
const worlds = [circuit, events, grains].filter(({ name }) => !args[2] || name === args[2]);

const others = new Map<string, { sounds: number; untold: number; told: number; kinds: string[] }>();
for (const world of worlds) {
  for (const { arc, condition, recording, isHeard } of foreignItems(world, FIRST_ARC, ARCS)) {
    const { mode } = arc.truth;
    const answers = await answersOf(recording.samples, recording.sampleRateHz);
    const rows = [world.name, `${world.name}, ${condition}`, `${world.name}, ${mode}`];
    count(rows, mode, isHeard, answers);
  }
  const tally = { sounds: 0, untold: 0, told: 0, kinds: [] as string[] };
  for (let seed = FIRST_OTHER; seed < FIRST_OTHER + OTHERS; seed++) {
    const other = world.drawOther(seed);
    const { untold, told } = await answersOf(other.samples, other.sampleRateHz);
    tally.sounds++;
    tally.untold += +getsMode(untold);
    tally.told += +getsMode(told);
    if (getsMode(untold)) tally.kinds.push(`${other.kind} (${untold.says})`);
  }
  others.set(world.name, tally);
}

const share = (part: number, all: number): string =>
  (all === 0 ? '–' : `${Math.round((100 * part) / all)} %`).padStart(8);
console.log(
  `${'world, condition or mode'.padEnd(30)}  runs   right   wrong     set | told: right   wrong  likeliest | audible   right   wrong     set  likeliest (told)`,
);
for (const [row, t] of tables)
  console.log(
    [
      row.padEnd(30),
      String(t.runs).padStart(6),
      share(t.right, t.runs),
      share(t.wrong, t.runs),
      share(t.set, t.runs),
      '      ',
      share(t.toldRight, t.runs),
      share(t.toldWrong, t.runs),
      '  ',
      share(t.likeliest, t.runs),
      String(t.audible).padStart(10),
      share(t.audibleRight, t.audible),
      share(t.audibleWrong, t.audible),
      share(t.audibleSet, t.audible),
      '  ',
      share(t.audibleLikeliest, t.audible),
    ].join(''),
  );
console.log('\nsounds without an arc that get a mode');
for (const [world, { sounds, untold, told, kinds }] of others)
  console.log(
    `${world.padEnd(30)}${String(sounds).padStart(6)}${share(untold, sounds)}  told${share(told, sounds)}  ${kinds.join(', ')}`,
  );
