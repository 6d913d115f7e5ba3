/**
 * An invented day of a welding cell: 40 simulated welds in dip transfer with five faults planted, labelled against an
 * invented procedure by the built program, with a record of each and an index. Prints which faults the records
 * show, and good welds that they put outside. `npm run bench -- cell-day [folder]` keeps the folder, to be looked at.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { tracesCsv } from '../../src/apps/cli/simulate/traces.js';
import { simulateArc } from '../../src/lab/simulate/index.js';
import type { WeldRecord } from '../../src/record/index.js';
import { type CellWeld, cellWelds } from './cell-day/welds.js';
import { sayFigure } from './support/figure.js';

/** Limits around what the published run gives: 180 A and 18.7 V in the mean. Invented, no qualified procedure. */
const PROCEDURE = {
  format: 'arc-transfer procedure 1',
  name: 'INVENTED-CELL-DIP',
  revision: '1',
  note: 'INVENTED: simulated welds and an invented procedure. Nothing here was welded.',
  mode: 'short-circuit',
  wire: { diameter: '1.2 mm', material: 'carbon-steel' },
  gas: 'Ar+20CO2',
  polarity: 'dcep',
  source: 'steady',
  position: 'PB',
  joint: 'lap',
  pass: 'single',
  plate: { min: '3 mm', max: '6 mm' },
  volts: { nominal: '18.7 V', tolerance: '6 %', at: 'feeder' },
  amperes: { nominal: '180 A', tolerance: '8 %' },
  wireFeed: { nominal: '4.2 m/min', tolerance: '10 %' },
  travelSpeed: { nominal: '350 mm/min', tolerance: '10 %' },
  stickOut: { min: '12 mm', max: '18 mm' },
  heatInput: { min: '0.38 kJ/mm', max: '0.55 kJ/mm', countedBy: 'en' },
};

const kept = process.argv[2];
const folder = kept ?? mkdtempSync(join(tmpdir(), 'arc-transfer-cell-'));
mkdirSync(join(folder, 'day'), { recursive: true });

const nameOf = ({ number }: CellWeld): string => {
  const minutes = 6 * 60 + 7 * number;
  const [hour, minute] = [Math.floor(minutes / 60), minutes % 60].map((one) =>
    String(one).padStart(2, '0'),
  );
  const part = String(Math.ceil(number / 2)).padStart(2, '0');
  return `invented-P${part}_S${number % 2 === 0 ? 2 : 1}_R3_20261130-${hour}${minute}`;
};

const welds = cellWelds();
const rows = [
  'file,wire_mm,material,gas,feed_m_min,travel_speed_mm_min,stick_out_mm,plate_mm,position,polarity,job,welder',
];
for (const weld of welds) {
  const name = nameOf(weld);
  writeFileSync(join(folder, 'day', `${name}.csv`), tracesCsv(simulateArc(weld.scenario)));
  rows.push(
    `${name}.csv,1.2,carbon-steel,Ar+20CO2,4.2,${weld.travelMmPerMin.toFixed(0)},15,4,PB,dcep,INVENTED,cell`,
  );
}
writeFileSync(join(folder, 'log.csv'), `${rows.join('\n')}\n`);
writeFileSync(join(folder, 'procedure.json'), `${JSON.stringify(PROCEDURE, null, 2)}\n`);

const begun = performance.now();
const { status, stderr } = spawnSync(
  process.execPath,
  [
    'bin/arc-transfer.js',
    'label',
    join(folder, 'day'),
    ...['--setups', join(folder, 'log.csv'), '--procedure', join(folder, 'procedure.json')],
    ...['--trace-volts-at', 'feeder', '--out', join(folder, 'runs.csv'), '--overwrite'],
    ...[
      '--records',
      join(folder, 'records'),
      '--id-pattern',
      'invented-{part}_{seam}_{robot}_{date}-{time}',
    ],
    ...['--id', 'recorder=simulated, 10 kHz', '--id', 'meters=none: simulated'],
  ],
  { encoding: 'utf8', env: { ...process.env, LC_ALL: 'C' } },
);
if (status !== 0) throw new Error(stderr);
const seconds = (performance.now() - begun) / 1000;

const records = welds.map((weld, k): { weld: CellWeld; record: WeldRecord } => {
  const name = `${String(k + 1).padStart(3, '0')}-${nameOf(weld)}.json`;
  return { weld, record: JSON.parse(readFileSync(join(folder, 'records', name), 'utf8')) };
});
const outside = ({ limits }: WeldRecord): string =>
  limits
    .filter((one) => one.outcome !== 'inside')
    .map(({ limit, outcome, figure }) => {
      const shown = typeof figure === 'number' ? Number(figure.toPrecision(3)) : (figure ?? '');
      return `${outcome === 'outside' ? '' : '? '}${limit} ${shown}`;
    })
    .join('; ');
for (const { weld, record } of records) {
  if (weld.fault === null && record.outcome === 'inside') continue;
  const what = weld.fault ?? 'nothing planted';
  process.stdout.write(
    `weld ${weld.number}: ${what}\n  ${record.outcome}: ${outside(record) || '–'}\n`,
  );
}
const found = records.filter(
  ({ weld, record }) => weld.fault && record.outcome === 'outside',
).length;
const planted = records.filter(({ weld }) => weld.fault).length;
const falsely = records.filter(({ weld, record }) => !weld.fault && record.outcome === 'outside');
process.stdout.write(
  `${found} of ${planted} faults are outside; ${falsely.length} of ${welds.length - planted} good welds are; labelled in ${seconds.toFixed(1)} s\n`,
);
sayFigure({ name: 'cell-day faults found', value: found, unit: 'of 5', better: 'more' });
if (kept === undefined) rmSync(folder, { recursive: true, force: true });
else process.stdout.write(`${join(folder, 'records', 'index.html')}\n`);
