/**
 * What good welds do to the alarm of `watch`: cells are drawn, several welds of each differ by chance alone,
 * two are vouched for and two are watched, in the expected mode throughout and then turning into an arc of each
 * other mode. Prints false alarms an hour of arc and departures missed, with and without the good welds.
 * Arguments: cells a family and mode (default 2); arcs a family and mode to fit models on that have not seen
 * the family of a cell (default 0: the shipped models, which know all families; 60 took 17 minutes to fit).
 */

import {
  DepartureWatch,
  defaultSettings,
  extractorFor,
  hardToSee,
  type LiveEvent,
  type LiveFormat,
  LiveStream,
  learnModeBias,
  type ModeBias,
} from '../../src/analysis/index.js';
import { createRandom, MODES, type Mode } from '../../src/core/index.js';
import { concat } from '../../src/dsp/index.js';
import { parseModel } from '../../src/model/parse/index.js';
import { parseSetup } from '../../src/setup/index.js';
import {
  type Cell,
  drawCell,
  GOOD,
  heardBy,
  SOUND_HZ,
  TRACE_HZ,
  WELD_S,
  type Weld,
} from './watch-good/cell.js';
import { heldOutModels, type Models, shippedModels } from './watch-good/models.js';

const CELLS = Number(process.argv[2] ?? 2);
const FITTED_ON = Number(process.argv[3] ?? 0);
/** Cells drawn for one that is kept. */
const TRIES = 4;
/** Families whose cells are judged by models of the other half. */
const HALVES = [
  ['dynamic', 'capillary'],
  ['necking', 'empirical'],
];
const settings = defaultSettings();
const TIMES = { tolerateS: 0.5, alarmAfterS: 1 };

type Windowed = LiveEvent & { type: 'window' };
interface Kind {
  format: LiveFormat;
  /** Samples of arcs one after the other as this cell's logger or microphone stores them. */
  recorded: (cell: Cell, label: string, arcs: readonly Weld[]) => Float64Array[];
}

const base = { format: 'bench', notes: [] };
const KINDS: Record<string, Kind> = {
  voltageAndCurrent: {
    format: {
      ...base,
      kind: 'electrical',
      sampleRateHz: TRACE_HZ,
      channels: [
        { name: 'u', quantity: 'voltage', unit: 'V' },
        { name: 'i', quantity: 'current', unit: 'A' },
      ],
    },
    recorded: (_cell, _label, arcs) => [0, 1].map((c) => concat(arcs.map((a) => a.traces[c]!))),
  },
  sound: {
    format: {
      ...base,
      kind: 'sound',
      sampleRateHz: SOUND_HZ,
      channels: [{ name: '1', quantity: 'sound', unit: 'full-scale' }],
    },
    recorded: (cell, label, arcs) => [heardBy(cell, label, arcs)],
  },
};

/** Windows by which an alarm may be raised. */
async function windows(kind: Kind, models: Models, channels: Float64Array[]): Promise<Windowed[]> {
  const extractor = extractorFor(kind.format, true);
  const model = parseModel(await models(extractor.featureSet.id), extractor.featureSet);
  const rest = { settings, setup: parseSetup({}), path: 'bench', host: 'node', offsetS: 0 };
  const live = new LiveStream({ extractor, format: kind.format, model, ...rest });
  return [...live.push(channels), ...live.flush()].filter(
    (event): event is Windowed => event.type === 'window' && event.steady,
  );
}

const NOTHING = {
  cells: 0,
  watchedS: 0,
  falseAlarms: 0,
  cellsWithFalseAlarms: 0,
  departures: 0,
  missed: 0,
  alarmBefore: 0,
  toldHardToSee: 0,
  missedNotTold: 0,
};
type Tally = typeof NOTHING;

/** Alarms raised at once, and whether one stood at `fromS` and after it. */
function alarms(mode: Mode, modeBias: ModeBias | null, seen: readonly Windowed[], fromS: number) {
  const watch = new DepartureWatch({ mode, ...TIMES }, settings.craterMaskS, modeBias);
  const found = { raised: 0, before: false, after: false };
  for (const { timeS, hopS, belief, rateHz } of seen) {
    const changes = watch.push(timeS, hopS, belief, rateHz);
    found.raised += changes.filter((one) => one.type === 'alarm').length;
    if (timeS <= fromS) found.before = watch.alarm;
    else found.after ||= watch.alarm;
  }
  return found;
}

/** What was seen of one cell by one kind of signal. */
interface Seen {
  kind: Kind;
  cell: Cell;
  good: Windowed[][];
  steady: Windowed[][];
  departures: { to: Mode; seen: Windowed[] }[];
}

async function see(kind: Kind, models: Models, cell: Cell, cells: readonly Cell[]): Promise<Seen> {
  const look = (label: string, arcs: readonly Weld[]) =>
    windows(kind, models, kind.recorded(cell, label, arcs));
  const all = await Promise.all(cell.welds.map((weld, k) => look(`weld ${k}`, [weld])));
  const departures: Seen['departures'] = [];
  for (const to of MODES) {
    const others = cells.filter((one) => one.mode === to && one !== cell);
    if (to === cell.mode || others.length === 0) continue;
    const other = createRandom(`${cell.id} to ${to}`).pick(others);
    const arcs = [cell.welds[GOOD]!, other.welds[0]!];
    departures.push({ to, seen: await look(`to ${to}`, arcs) });
  }
  return { kind, cell, good: all.slice(0, GOOD), steady: all.slice(GOOD), departures };
}

function count(
  tally: Tally,
  { kind, cell, steady, departures }: Seen,
  modeBias: ModeBias | null,
): void {
  const told = modeBias ? hardToSee(modeBias, kind.format.kind) : [];
  const raised = steady.reduce(
    (sum, seen) => sum + alarms(cell.mode, modeBias, seen, Number.POSITIVE_INFINITY).raised,
    0,
  );
  tally.cells++;
  tally.watchedS += steady.length * WELD_S;
  tally.falseAlarms += raised;
  if (raised > 0) tally.cellsWithFalseAlarms++;
  for (const { to, seen } of departures) {
    const { before, after } = alarms(cell.mode, modeBias, seen, WELD_S);
    tally.departures++;
    if (told.includes(to)) tally.toldHardToSee++;
    if (before) tally.alarmBefore++;
    else if (!after) tally.missed++;
    if (!before && !after && !told.includes(to)) tally.missedNotTold++;
  }
}

/** Cells of these families, of each mode alike. */
function draw(families: readonly string[]): Cell[] {
  const cells: Cell[] = [];
  for (const family of families)
    for (const mode of MODES)
      for (let c = 0, kept = 0; kept < CELLS && c < TRIES * CELLS; c++) {
        const cell = drawCell(`good welds ${family} ${mode} ${c}`, mode, family);
        if (!cell) continue;
        kept++;
        cells.push(cell);
      }
  return cells;
}

const tallies = Object.fromEntries(
  Object.keys(KINDS).map((kind) => [kind, { without: { ...NOTHING }, withGood: { ...NOTHING } }]),
);
for (const half of HALVES) {
  const models = FITTED_ON > 0 ? heldOutModels(half, FITTED_ON) : shippedModels;
  const cells = draw(half);
  for (const cell of cells)
    for (const [name, kind] of Object.entries(KINDS)) {
      const seen = await see(kind, models, cell, cells);
      const beliefs = seen.good
        .map((windows) => windows.map(({ belief }) => belief.probabilities))
        .filter((windows) => windows.length > 0);
      count(tallies[name]!.without, seen, null);
      // Welds in which no arc is heard are refused as good ones.
      const modeBias = beliefs.length > 0 ? learnModeBias(cell.mode, beliefs) : null;
      count(tallies[name]!.withGood, seen, modeBias);
    }
}
const perHour = (tally: Tally) => ({
  falseAlarmsAnHour: Math.round((tally.falseAlarms / tally.watchedS) * 3600),
  ...tally,
});
for (const [kind, { without, withGood }] of Object.entries(tallies))
  for (const [how, tally] of Object.entries({ without, withGood }))
    console.log(JSON.stringify({ kind, how, ...perHour(tally) }));
