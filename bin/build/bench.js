// Bundles and runs the measurements in tests/bench. `npm run bench` runs the quick ones and prints one table: each
// figure, how many times its baseline it is, what was committed last, and a mark where it fell by a third or more.
// `npm run bench -- csv` runs one, `--save` writes the figures down.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { runBundled } from './run-bundled.js';

const COMMITTED = 'tests/bench/figures.json';
/** What is measured where no name is given, in a few minutes, with its arguments. */
const QUICK = [
  ['start'],
  ['classify', '2'],
  ['csv', '2000000'],
  ['label', '200'],
  ['memory', '0.03', '0.1'],
];
/** From here on a figure has fallen. */
const FALL = 4 / 3;

const given = process.argv.slice(2);
const save = given.includes('--save');
const [chosen, ...rest] = given.filter((word) => word !== '--save' || given[0] === 'formats');
const known = readdirSync('tests/bench')
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3));
const wanted = chosen === undefined ? QUICK : known.includes(chosen) ? [[chosen, ...rest]] : [];
if (wanted.length === 0) {
  process.stderr.write(
    `There is no measurement "${chosen}" in tests/bench, only ${known.join(', ')}.\n`,
  );
  process.exitCode = 2;
}
const figures = [];
for (const [name, ...args] of wanted) {
  process.stdout.write(`== ${[name, ...args].join(' ')}\n`);
  const status = await runBundled(
    `tests/bench/${name}.ts`,
    `dist/bench-${name}.mjs`,
    args,
    (line) => {
      if (line.startsWith('FIGURE ')) figures.push(JSON.parse(line.slice(7)));
      else process.stdout.write(`${line}\n`);
    },
  );
  if (status !== 0) process.exitCode = 1;
}
const committed = existsSync(COMMITTED) ? JSON.parse(readFileSync(COMMITTED, 'utf8')) : {};
if (figures.length > 0) process.stdout.write(`\n${table()}`);
if (save) {
  for (const { name, value, baseline } of figures)
    committed[name] = baseline ? { value, baseline: baseline.value } : { value };
  writeFileSync(COMMITTED, `${JSON.stringify(committed, null, 2)}\n`);
}

function table() {
  const rows = [['figure', 'now', 'baseline', 'times that', 'committed', '']];
  for (const figure of figures) rows.push(row(figure));
  const widths = rows[0].map((_, c) => Math.max(...rows.map((one) => one[c].length)));
  return rows
    .map(
      (one) =>
        `${one
          .map((cell, c) => cell.padEnd(widths[c]))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}

/** Where there is a baseline, what fell is judged by the ratio to it: a busy machine slows both. */
function row({ name, value, unit, better, baseline }) {
  const last = committed[name];
  const ratio = (of, base) => (base ? of / base : of);
  const change = last
    ? ratio(value, baseline?.value) / ratio(last.value, baseline && last.baseline)
    : 1;
  const worse = better === 'less' ? change : 1 / change;
  return [
    name,
    `${value} ${unit}`,
    baseline ? `${baseline.value} ${unit} (${baseline.name})` : '',
    baseline ? (value / baseline.value).toFixed(2) : '',
    last ? `${last.value} ${unit}` : '',
    worse >= FALL ? `FELL to ${(100 / worse).toFixed(0)} %` : '',
  ];
}
