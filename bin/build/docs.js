// Writes the generated parts of README, of DEVELOPERS and of the model card: tables from the code, and the output of the commands shown.
// `node bin/build/docs.js` rewrites them; with --check it only says which are out of date (exit status 1).
// A generated part stands between `<!-- made by npm run docs: WHAT -->` and `<!-- end -->`, where WHAT is
// the name of a table or `$ command`.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { CONFIDENCE_BOUNDS, ENGLISH } from '../../dist/apps/view/index.js';
import { SETTINGS, SETUP_OPTIONS } from '../../dist/index.js';
import { READERS } from '../../dist/recording/readers.js';
import { MODE_LETTERS } from '../../dist/setup/index.js';

const TOPICS = JSON.parse(readFileSync('src/apps/cli/help/topics.json', 'utf8'));
const FILES = [
  'README.md',
  'DEVELOPERS.md',
  'src/model/shipped/README.md',
  ...TOPICS.map((one) => one.file),
];
const PART = /(<!-- made by npm run docs: (.+?) -->\n)([\s\S]*?)(<!-- end -->)/g;

const safe = (text) => String(text).replaceAll('|', '\\|');
const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows]
    .map((row) => `| ${row.map(safe).join(' | ')} |`)
    .join('\n');
const withUnit = (value, unit) => (unit === '1' ? String(value) : `${value} ${unit}`);

const percent = (value) =>
  value === null || value === undefined ? '–' : `${(100 * value).toFixed(1)} %`;
const interval = (one, show) =>
  one ? `${show(one.value)} (${show(one.low)} to ${show(one.high)})` : '–';
const model = (set) => JSON.parse(readFileSync(`src/model/shipped/${set}.json`, 'utf8'));

/** What held-out scorers reached, a row a group of runs. */
const figures = (set) =>
  table(
    [
      'Runs',
      'Number',
      'Unambiguous',
      'Accuracy of those (95 %)',
      'The same, `unsure` a miss',
      'Answered',
      'Right of the answered',
      'Brier',
      'Log loss',
      'Calibration error (95 %)',
    ],
    model(set).training.heldOut.map((one) => [
      one.group,
      one.runs,
      one.unambiguousRuns,
      interval(one.accuracy, percent),
      percent(one.recall),
      percent(one.coverage),
      percent(one.accuracyOfAnswered),
      one.brier,
      one.logLoss,
      interval(one.calibrationError, (value) => value.toFixed(3)),
    ]),
  );

/** Every reader must have been measured. */
function measuredFormats() {
  const measured = JSON.parse(readFileSync('fixtures/reference/formats.json', 'utf8'));
  for (const { format } of READERS)
    if (!measured.rows.some((one) => one.format === format))
      throw new Error(`"${format}" was never measured: npm run bench -- formats --save.`);
  return measured;
}

const TABLES = {
  topics: () =>
    table(
      ['Topic', 'What it says'],
      TOPICS.map((one) => [`[${one.name}](${one.file})`, one.about]),
    ),
  rooms: () =>
    table(
      ['Room', 'Floor', 'What', 'Imports'],
      JSON.parse(readFileSync('tests/support/rooms.json', 'utf8')).map((one) => [
        `\`src/${one.room}\``,
        one.floor,
        one.what,
        one.imports.join(', ') || 'nothing',
      ]),
    ),
  'figures of voltage': () => figures('voltage'),
  'figures of voltage-current': () => figures('voltage-current'),
  'figures of current': () => figures('current'),
  'figures of pooling': () =>
    table(
      ['Right (log loss, calibration error)', 'Runs', 'Sound', 'Trace', 'Both'],
      Object.entries(model('pooling').fitting.checked).map(([set, one]) => {
        const say = (x) =>
          `${Math.round(100 * x.accuracy)} % (${x.logLoss.toFixed(2)}, ${x.calibrationError.toFixed(2)})`;
        return [set, one.both.runs, say(one.sound), say(one.trace), say(one.both)];
      }),
    ),
  'models at a glance': () =>
    table(
      [
        'Model',
        'Likeliest mode is right (95 %)',
        'Named and right',
        'Right of the named',
        'Unambiguous runs',
        'Calibration error',
      ],
      ['voltage', 'voltage-current', 'current'].map((set) => {
        const all = model(set).training.heldOut.find((one) => one.group === 'all');
        return [
          set,
          interval(all.accuracy, percent),
          percent(all.recall),
          percent(all.accuracyOfAnswered),
          all.unambiguousRuns,
          all.calibrationError?.value ?? '–',
        ];
      }),
    ),
  settings: () =>
    table(
      ['Option', 'Range', 'Default', 'What it does', 'Why this default'],
      SETTINGS.map((one) => [
        `\`--${one.flag}\``,
        `${one.min} to ${withUnit(one.max, one.unit)}`,
        withUnit(one.default, one.unit),
        one.what,
        one.why,
      ]),
    ),
  'set-up': () =>
    table(
      ['Option', 'Example', 'What it states'],
      SETUP_OPTIONS.map((one) => [
        [one.flag, ...one.aliases].map((flag) => `\`${flag}\``).join(', '),
        `\`${one.example}\``,
        one.help,
      ]),
    ),
  commands: () => {
    const { stdout } = spawnSync(process.execPath, ['bin/arc-transfer.js', '--help'], {
      encoding: 'utf8',
    });
    // Long descriptions go on in the next line, further in.
    const list = stdout.slice(stdout.indexOf('Commands:')).replace(/\n {8,}/g, ' ');
    const rows = [...list.matchAll(/^ {2}([a-z]+)(?: [^ ]+)* {2,}(\S.*)$/gm)];
    return table(
      ['Command', 'What it does'],
      rows.filter(([, name]) => name !== 'help').map(([, name, what]) => [`\`${name}\``, what]),
    );
  },
  formats: () => {
    const { machine, soundMinutes, logRows, emptyMb, rows } = measuredFormats();
    const list = table(
      ['Name in the result', 'File', 'Reader', 'Speed', 'Peak memory', 'Agreement', 'with'],
      rows.map((one) => [
        `\`${one.format}\``,
        one.title,
        one.reader,
        `${one.speed} ${one.speedUnit}`,
        `${one.peakMb} MB`,
        one.agreement,
        one.reference,
      ]),
    );
    return `${list}\n\nMeasured by \`npm run bench -- formats --save\` on a ${machine}: speed by processor time, on ${soundMinutes} min of sound at 44.1 kHz and on ${logRows.toLocaleString('en')} rows of time, voltage and current; memory of the whole process, which holds ${emptyMb} MB before it reads. Shift: samples by which the sound comes later than in the other decode.`;
  },
  'confidence words': () =>
    table(
      ['Confidence from', 'Words'],
      CONFIDENCE_BOUNDS.map((bound, k) => [bound, ENGLISH.result.confidence[k]]),
    ),
  'mode letters': () =>
    table(
      ['Mode in the result', 'Letter'],
      Object.entries(MODE_LETTERS).map(([mode, letter]) => [`\`${mode}\``, letter]),
    ),
};

function make(what) {
  if (TABLES[what]) return TABLES[what]();
  const command = /^\$ arc-transfer (.+)$/.exec(what);
  if (!command) throw new Error(`README asks for "${what}", which nothing makes.`);
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ['bin/arc-transfer.js', ...command[1].split(' ')],
    { encoding: 'utf8', env: { ...process.env, NO_COLOR: '1', LC_ALL: 'C' } },
  );
  if (status !== 0) throw new Error(`arc-transfer ${command[1]} ended with ${status}: ${stderr}`);
  return `\`\`\`text\n$ arc-transfer ${command[1]}\n${stdout.trimEnd()}\n\`\`\``;
}

for (const file of FILES) {
  const before = readFileSync(file, 'utf8');
  const stale = [];
  const after = before.replace(PART, (_, open, what, old, close) => {
    const made = `${make(what)}\n`;
    if (made !== old) stale.push(what);
    return `${open}${made}${close}`;
  });
  if (!process.argv.includes('--check')) {
    if (after !== before) writeFileSync(file, after);
  } else if (stale.length > 0) {
    process.stderr.write(`${file} is out of date: ${stale.join('; ')}. Run npm run docs.\n`);
    process.exitCode = 1;
  }
}
