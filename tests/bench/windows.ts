/**
 * Draws arcs and holds them against the published windows, row by row: 10, 50 and 90 % of what is drawn, beside what
 * the row says, and the share of draws inside it with its leeway. Draws set wrong on purpose are left out and counted
 * apart. Arguments: arcs (default 400), seconds of each (default 1).
 */
import { createRandom, MODES } from '../../src/core/index.js';
import {
  drawScenario,
  ELECTRICAL_FAMILIES,
  simulateArc,
  speaksFor,
} from '../../src/lab/simulate/index.js';
import {
  EVENT_WINDOWS,
  LEEWAY,
  type Range,
  WORKING_WINDOWS,
} from '../../src/lab/simulate/physics/windows.js';
import { quantile, type RunFigures, runFigures } from '../support/run-figures.js';

const ARCS = Number(process.argv[2] ?? 400);
const ARC_S = Number(process.argv[3] ?? 1);

type Drawn = { run: ReturnType<typeof simulateArc>; figures: RunFigures };
const all: Drawn[] = [];
const begun = performance.now();
let drawMs = 0;
for (let i = 0; i < ARCS; i++) {
  const mode = MODES[i % MODES.length]!;
  const family = ELECTRICAL_FAMILIES[Math.floor(i / MODES.length) % ELECTRICAL_FAMILIES.length]!;
  const before = performance.now();
  const scenario = drawScenario(createRandom(`windows ${i}`), { mode, family, arcS: ARC_S });
  drawMs += performance.now() - before;
  const run = simulateArc({ ...scenario, openStart: true, openEnd: true });
  all.push({ run, figures: runFigures(run) });
}
const wrong = all.filter(({ run }) => run.scenario.setWrong != null);
const right = all.filter(({ run }) => run.scenario.setWrong == null);

const show = (value: number): string =>
  Number.isNaN(value) ? '–' : value >= 100 ? value.toFixed(0) : value.toPrecision(3);
const width = [44, 9, 8, 5, 21, 13, 6];
const line = (...cells: (string | number)[]): void =>
  console.log(cells.map((cell, i) => String(cell).padEnd(width[i] ?? 8)).join(' '));

function insideShare(values: readonly number[], [low, high]: Range, volts: boolean): number {
  const [least, most] = volts
    ? [low - LEEWAY.volts, high + LEEWAY.volts]
    : [low * (1 - LEEWAY.share), high * (1 + LEEWAY.share)];
  return values.filter((value) => value >= least && value <= most).length / values.length;
}

function report(name: string, what: string, certainty: string, values: number[], range: Range) {
  const found = values.filter((value) => !Number.isNaN(value));
  if (found.length === 0) return;
  const quantiles = [0.1, 0.5, 0.9].map((share) => show(quantile(found, share))).join(' / ');
  const share = `${Math.round(100 * insideShare(found, range, what === 'V'))} %`;
  line(name, what, certainty, found.length, quantiles, range.map(show).join('–'), share);
}

const of = (row: Parameters<typeof speaksFor>[0]): Drawn[] =>
  right.filter(({ run: { truth, scenario } }) => {
    const mode = truth.mode;
    if (mode === null || mode === 'mixed') return false;
    return speaksFor(row, mode, scenario.wire, scenario.gas);
  });
const title = (row: (typeof WORKING_WINDOWS)[number] | (typeof EVENT_WINDOWS)[number]): string =>
  `${row.mode} ${row.materials.length > 2 ? 'any' : row.materials[0]?.split('-')[0]} ${row.diameterMm.join('–')} CO2 ${row.co2Percent.join('–')}`;

line('row', 'quantity', 'certain', 'n', '10 / 50 / 90 %', 'published', 'inside');
for (const row of WORKING_WINDOWS) {
  const drawn = of(row);
  const name = title(row);
  report(
    name,
    'V',
    row.certainty,
    drawn.map((d) => d.figures.meanV),
    row.voltageV,
  );
  report(
    name,
    'A',
    row.certainty,
    drawn.map((d) => d.figures.meanA),
    row.currentA,
  );
}
const EVENTS = [
  'shortRateHz',
  'shortIntervalCv',
  'shortS',
  'dropRateHz',
  'dropRatio',
  'pulseRateHz',
  'dropsPerPulse',
] as const;
for (const row of EVENT_WINDOWS) {
  const drawn = of(row).filter(({ figures }) => {
    if (row.form === 'projected') return figures.dropRatio >= 0.8;
    return row.form !== 'streaming' || figures.dropRatio <= 0.7;
  });
  for (const what of EVENTS) {
    const range = row[what];
    if (range === undefined) continue;
    const name = `${title(row)} ${row.form ?? ''}`;
    report(
      name,
      what.replace(/(Hz|S)$/, ''),
      row.certainty,
      drawn.map((d) => d.figures[what]),
      range,
    );
  }
}

/** What single sources say, beside what is drawn, whether set right or wrong. */
const argonRich = (d: Drawn): boolean => d.run.scenario.gas.co2Percent < 25;
const ferrous = (d: Drawn): boolean => d.run.scenario.wire.material !== 'aluminium';
const wireOf = (d: Drawn, low: number, high: number): boolean =>
  d.run.scenario.wire.diameterMm >= low && d.run.scenario.wire.diameterMm <= high;
const HEADLINES: readonly [string, string, keyof RunFigures, (d: Drawn) => boolean][] = [
  [
    'globular, pure CO2, shorts/s',
    '5–60 (CP)',
    'shortRateHz',
    (d) => is(d, 'globular') && !argonRich(d),
  ],
  [
    'globular, argon-rich, shorts/s',
    'occasional (F)',
    'shortRateHz',
    (d) => is(d, 'globular') && argonRich(d),
  ],
  [
    'globular, argon-rich, 1.0 mm, A',
    '180–230 (F)',
    'meanA',
    (d) => is(d, 'globular') && argonRich(d) && ferrous(d) && wireOf(d, 1, 1),
  ],
  [
    'globular, argon-rich, 1.0 mm, V',
    '22–26 (F)',
    'meanV',
    (d) => is(d, 'globular') && argonRich(d) && ferrous(d) && wireOf(d, 1, 1),
  ],
  [
    'spray, 1.2 mm, drops/s',
    '100–300, streaming 500 and more (M)',
    'dropRateHz',
    (d) => is(d, 'spray') && ferrous(d) && wireOf(d, 1.2, 1.2),
  ],
  [
    'spray, 1.2 mm, drop in wire diameters',
    'about 1, streaming less (F)',
    'dropRatio',
    (d) => is(d, 'spray') && ferrous(d) && wireOf(d, 1.2, 1.2),
  ],
  [
    'spray, steel 0.8–1.2 mm, V',
    '24–30 (F)',
    'meanV',
    (d) => is(d, 'spray') && ferrous(d) && wireOf(d, 0.8, 1.2),
  ],
  [
    'dip, argon mixes, steel, V',
    '12–22 (F)',
    'meanV',
    (d) => is(d, 'short-circuit') && argonRich(d) && ferrous(d),
  ],
  [
    'dip, argon mixes, steel, A',
    '50–225 (F)',
    'meanA',
    (d) => is(d, 'short-circuit') && argonRich(d) && ferrous(d),
  ],
  ['dip, shorts/s', '20–230 (F)', 'shortRateHz', (d) => is(d, 'short-circuit')],
  ['pulsed, drops a pulse', '1 (F2)', 'dropsPerPulse', (d) => is(d, 'pulsed-spray')],
];
const is = (d: Drawn, mode: string): boolean => d.run.truth.mode === mode;
console.log(
  '\nsingle sources: published, then 10 / 50 / 90 % of the draws set right and of those set wrong',
);
for (const [name, published, quantity, chosen] of HEADLINES) {
  const quantiles = (drawn: readonly Drawn[]): string => {
    const values = drawn.filter(chosen).map(({ figures }) => figures[quantity]);
    return `${[0.1, 0.5, 0.9].map((share) => show(quantile(values, share))).join(' / ')} (${values.length})`;
  };
  console.log(`${name}: ${published}: ${quantiles(right)}; ${quantiles(wrong)}`);
}

console.log('\nmode of the metal against the mode aimed at, draws set right');
for (const mode of MODES) {
  const aimed = all.filter((d, i) => MODES[i % MODES.length] === mode && right.includes(d));
  const counts = [...MODES, 'mixed', null].map(
    (m) => `${m} ${aimed.filter(({ run }) => run.truth.mode === m).length}`,
  );
  const clear = aimed.filter(({ run }) => run.truth.unambiguous).length;
  console.log(`${mode}: ${counts.join(', ')}; without doubt ${clear} of ${aimed.length}`);
}
console.log(`\nset wrong: ${wrong.length} of ${all.length}`);
const kinds = new Map<string, number>();
for (const { run } of wrong) {
  const key = `${run.scenario.setWrong}, ${run.truth.mode}`;
  kinds.set(key, (kinds.get(key) ?? 0) + 1);
}
for (const [key, count] of [...kinds].sort()) console.log(`  ${key}: ${count}`);
console.log(
  `${(drawMs / ARCS).toFixed(1)} ms to draw, ${((performance.now() - begun) / ARCS).toFixed(1)} ms in all, each arc of ${ARC_S} s`,
);
