import type { LimitRow, WeldRecord } from '../../record/index.js';
import { csvCell } from '../view/index.js';

type Cell = string | number | null;

/** Limits that get columns, in the order of a record; those of a procedure that has none of them stay empty. */
const LIMITS: readonly [LimitRow['limit'], string][] = [
  ['modeShare', 'mode_share'],
  ['longestDeparture', 'longest_departure_s'],
  ['volts', 'volts_v'],
  ['amperes', 'amperes_a'],
  ['wireFeed', 'wire_feed_m_min'],
  ['travelSpeed', 'travel_speed_mm_min'],
  ['stickOut', 'stick_out_mm'],
  ['heatInput', 'heat_input_kj_mm'],
  ['wire', 'wire_mm'],
  ['material', 'material'],
  ['gas', 'gas'],
  ['polarity', 'polarity'],
  ['source', 'source_programme'],
  ['position', 'position'],
  ['plate', 'plate_mm'],
];

const IDS = ['part', 'seam', 'job', 'robot', 'welder', 'recorder', 'meters', 'weld'];

const COLUMNS: readonly { name: string; of(record: WeldRecord): Cell }[] = [
  { name: 'file', of: (r) => r.run.path },
  { name: 'welded_at', of: (r) => r.weldedAt?.time ?? null },
  { name: 'welded_at_from', of: (r) => r.weldedAt?.from ?? null },
  ...IDS.map((id) => ({ name: id, of: (r: WeldRecord) => r.ids[id] ?? null })),
  {
    name: 'other_ids',
    of: (r) =>
      Object.entries(r.ids)
        .filter(([key]) => !IDS.includes(key))
        .map(([key, value]) => `${key}=${value}`)
        .join('; '),
  },
  { name: 'procedure', of: (r) => r.procedure.name },
  { name: 'revision', of: (r) => r.procedure.revision },
  { name: 'outcome', of: (r) => r.outcome },
  { name: 'status', of: (r) => r.run.status },
  { name: 'mode', of: (r) => r.mode.seen },
  { name: 'confidence', of: (r) => r.mode.confidence },
  { name: 'unclear_share', of: (r) => r.mode.unclearShare },
  { name: 'longest_departure_mode', of: (r) => r.mode.longestDeparture?.mode ?? null },
  { name: 'longest_departure_start_s', of: (r) => r.mode.longestDeparture?.startS ?? null },
  ...LIMITS.flatMap(([limit, name]) => {
    const row = (r: WeldRecord) => r.limits.find((one) => one.limit === limit);
    return [
      { name, of: (r: WeldRecord) => row(r)?.figure ?? null },
      { name: `${name}_outcome`, of: (r: WeldRecord) => row(r)?.outcome ?? null },
      { name: `${name}_basis`, of: (r: WeldRecord) => row(r)?.basis ?? null },
    ];
  }),
  { name: 'volts_place', of: (r) => r.limits.find((one) => one.limit === 'volts')?.place ?? null },
  { name: 'arc_time_s', of: (r) => r.run.arcTimeS },
  { name: 'mean_power_w', of: (r) => r.power.meanPowerW },
  { name: 'by_means_w', of: (r) => r.power.byMeansW },
  { name: 'energy_kj', of: (r) => r.power.energyKj },
  { name: 'arc_energy_kj_mm', of: (r) => r.power.arcEnergyKjPerMm },
  { name: 'heat_input_with_efficiency_kj_mm', of: (r) => r.power.heatInputKjPerMm },
  { name: 'melted_kg', of: (r) => r.deposit.meltedKg },
  { name: 'tool_version', of: (r) => r.tool.version },
  { name: 'model', of: (r) => r.model },
  { name: 'sha256', of: (r) => r.run.sha256 },
];

/** The header line of a table of records, RFC 4180. Units stand in the names. */
export const recordCsvHeader = (): string => `${COLUMNS.map((one) => one.name).join(',')}\r\n`;

/** One record as one row, RFC 4180. */
export const recordCsvRow = (record: WeldRecord): string =>
  `${COLUMNS.map((one) => csvCell(one.of(record))).join(',')}\r\n`;
