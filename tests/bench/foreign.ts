/**
 * What the shipped tool says of arcs and other sounds drawn by simulators that share nothing with its own. Arguments:
 * arcs a world (default 40, each in seven conditions), other sounds a world (default 96), a world by name (all), and
 * `--network <folder>` to score weights of `bin/train` instead. World `circuit` serves choices; the others only score.
 * "Told" is a prior of 0.95 that there is an arc. "Audible": an ideal listener could tell the mode.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNetwork, StreamingNetwork } from '../../src/model/network/index.js';
import { circuit } from '../foreign/circuit/index.js';
import { events } from '../foreign/events/index.js';
import { grains } from '../foreign/grains/index.js';
import { foreignItems } from '../support/foreign-set.js';
import {
  type Answer,
  type Answers,
  answersOfTool,
  getsMode,
  isNamed,
  largestMode,
} from '../support/foreign-tool.js';

/** First seeds of the fixed draw. */
const FIRST_ARC = 1000;
const FIRST_OTHER = 5000;
/** Beliefs from which a network is taken to name a mode: untold, told, and in the mode itself. */
const LEAST_ARC = { untold: 0.8, told: 0.3 };
const LEAST_MODE = 0.6;

type Judge = (samples: Float32Array, rateHz: number) => Promise<Answers>;

function byNetwork(folder: string): Judge {
  const header = JSON.parse(readFileSync(join(folder, 'network.json'), 'utf8'));
  const network = readNetwork(header, readFileSync(join(folder, 'network.bin')));
  return async (samples, rateHz) => {
    const ear = new StreamingNetwork(network, rateHz);
    ear.push(samples);
    ear.flush();
    const { modes, arc } = ear.judge();
    const likeliest = largestMode(modes);
    const answer = (least: number): Answer => ({
      says: arc < least ? 'no arc' : Math.max(...modes) < LEAST_MODE ? 'unsure' : likeliest,
      likeliest,
    });
    return { untold: answer(LEAST_ARC.untold), told: answer(LEAST_ARC.told) };
  };
}

interface Tally {
  runs: number;
  audible: number;
  right: number;
  wrong: number;
  toldRight: number;
  toldWrong: number;
  likeliest: number;
  audibleRight: number;
  audibleWrong: number;
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
    t.toldRight += +(told.says === truth);
    t.toldWrong += +(isNamed(told) && told.says !== truth);
    t.likeliest += +likeliest;
    if (!isHeard) continue;
    t.audible++;
    t.audibleRight += +right;
    t.audibleWrong += +wrong;
    t.audibleLikeliest += +likeliest;
  }
}

function fresh(): Tally {
  return {
    runs: 0,
    audible: 0,
    right: 0,
    wrong: 0,
    toldRight: 0,
    toldWrong: 0,
    likeliest: 0,
    audibleRight: 0,
    audibleWrong: 0,
    audibleLikeliest: 0,
  };
}

const args = process.argv.slice(2);
const at = args.indexOf('--network');
const judge: Judge = at < 0 ? answersOfTool : byNetwork(args[at + 1]!);
if (at >= 0) args.splice(at, 2);
const ARCS = Number(args[0] ?? 40);
const OTHERS = Number(args[1] ?? 96);
const worlds = [circuit, events, grains].filter(({ name }) => !args[2] || name === args[2]);

const others = new Map<string, { sounds: number; untold: number; told: number; kinds: string[] }>();
for (const world of worlds) {
  for (const { arc, condition, recording, isHeard } of foreignItems(world, FIRST_ARC, ARCS)) {
    const { mode } = arc.truth;
    const answers = await judge(recording.samples, recording.sampleRateHz);
    const rows = [world.name, `${world.name}, ${condition}`, `${world.name}, ${mode}`];
    count(rows, mode, isHeard, answers);
  }
  const tally = { sounds: 0, untold: 0, told: 0, kinds: [] as string[] };
  for (let seed = FIRST_OTHER; seed < FIRST_OTHER + OTHERS; seed++) {
    const other = world.drawOther(seed);
    const { untold, told } = await judge(other.samples, other.sampleRateHz);
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
  `${'world, condition or mode'.padEnd(30)}  runs   right   wrong | told: right   wrong  likeliest | audible   right   wrong  likeliest (told)`,
);
for (const [row, t] of tables)
  console.log(
    [
      row.padEnd(30),
      String(t.runs).padStart(6),
      share(t.right, t.runs),
      share(t.wrong, t.runs),
      '      ',
      share(t.toldRight, t.runs),
      share(t.toldWrong, t.runs),
      '  ',
      share(t.likeliest, t.runs),
      String(t.audible).padStart(10),
      share(t.audibleRight, t.audible),
      share(t.audibleWrong, t.audible),
      '  ',
      share(t.audibleLikeliest, t.audible),
    ].join(''),
  );
console.log('\nsounds without an arc that get a mode');
for (const [world, { sounds, untold, told, kinds }] of others)
  console.log(
    `${world.padEnd(30)}${String(sounds).padStart(6)}${share(untold, sounds)}  told${share(told, sounds)}  ${kinds.join(', ')}`,
  );
