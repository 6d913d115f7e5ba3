import type { Mode } from '../../core/index.js';
import { bandsFor } from '../boundaries.js';
import type { Polarity, SourceKind } from '../choices.js';
import { type Range, range } from '../sourced.js';
import type { ProcessMap } from './boundary-lines.js';
import { type FedWire, feedOfCurrent } from './feed-current.js';
import { aroundSweet } from './moves.js';
import { OUTCOME_OF_MODE } from './outcomes.js';
import { type Refusal, refuse } from './refusal.js';
import { likely } from './spread.js';
import { reachableAmps, voltsFor } from './windows.js';
import { BRONZE_FEED_ROWS, METAL_CORED_FEED_ROWS, solidTwin } from './wires-of-map.js';

/** One setting that gives a mode. */
export interface Setting {
  currentA: number;
  /** m/min; null where the wire's feed is not known. */
  feedMPerMin: number | null;
  /** V at the feeder while welding. */
  feederV: Range;
  /** Likelihood of the mode at this current at best. */
  likelihood: number;
}

/** How a wire and gas are brought into a mode. */
export type HowTo =
  | { kind: 'refused'; wanted: Mode; refusal: Refusal }
  | { kind: 'programme'; wanted: Mode }
  | { kind: 'unknown'; wanted: Mode }
  | {
      kind: 'settings';
      wanted: Mode;
      /** Low, middle and high end of the window. */
      settings: Setting[];
      /** Contact tip to arc, mm. */
      stickOutMm: Range;
      /** True where the upper current comes from a published window. */
      published: boolean;
    };

/** Stick-out by mode, mm: dip from a teaching text ("MIG tuning in"), the others common practice, no source. */
const STICK_OUT_MM: Readonly<Record<Exclude<Mode, 'pulsed-spray'>, Range>> = {
  'short-circuit': { min: 6, max: 10 },
  globular: { min: 12, max: 20 },
  spray: { min: 15, max: 20 },
};

/** Settings for a wanted mode, without any point to start from. */
export function howToReach(
  map: ProcessMap,
  wanted: Mode,
  wire: FedWire,
  stated: { source: SourceKind | null; polarity: Polarity | null },
): HowTo {
  const refusal = refuse(map, wanted, stated);
  if (refusal !== null) return { kind: 'refused', wanted, refusal };
  if (wanted === 'pulsed-spray') return { kind: 'programme', wanted };
  const outcome = OUTCOME_OF_MODE[wanted];
  const reach = reachableAmps(map, outcome);
  if (reach === null) return { kind: 'unknown', wanted };
  const window = publishedAmps(map, wanted);
  const amps = narrowed(reach, window, wire.diameterMm);
  const middle = (amps.min + amps.max) / 2;
  const settings = [amps.min, middle, amps.max].flatMap((currentA): Setting[] => {
    const volts = voltsFor(map, outcome, likely(currentA, currentA * 0.03));
    if (volts === null) return [];
    const feed = feedOfCurrent(wire, currentA);
    return [
      {
        currentA: Math.round(currentA),
        feedMPerMin: feed === null ? null : Number(feed.toFixed(1)),
        feederV: aroundSweet(map, outcome, currentA, volts.full),
        likelihood: volts.best,
      },
    ];
  });
  if (settings.length === 0) return { kind: 'unknown', wanted };
  const stickOutMm = STICK_OUT_MM[wanted];
  return { kind: 'settings', wanted, settings, stickOutMm, published: window !== null };
}

/** Currents of the published windows of a mode for just this wire and gas; null where none is held. */
function publishedAmps({ wire }: ProcessMap, mode: Mode): Range | null {
  const twin = solidTwin(wire.material);
  if (twin === null || wire.material === 'metal-cored') return sheetAmps(wire, mode);
  const rows = bandsFor({ wireMaterial: twin, wireDiameterMm: wire.diameterMm, gas: wire.gas })
    .filter((row) => row.mode === mode && row.whole && row.currentA !== null)
    .filter(({ diameterMm }) => diameterMm !== null && diameterMm.max - diameterMm.min < 0.15)
    .map((row) => row.currentA!);
  if (rows.length === 0) return null;
  return range(Math.min(...rows.map((one) => one.min)), Math.max(...rows.map((one) => one.max)));
}

/** Volts from which a row of a wire's data sheet is meant for spray; own choice. */
const SHEET_SPRAY_V = 20;

/** Currents of a data sheet's rows for this size, with 5 % to each side; spray alone is held for bronze. */
function sheetAmps({ material, diameterMm }: ProcessMap['wire'], mode: Mode): Range | null {
  const rows = material === 'metal-cored' ? METAL_CORED_FEED_ROWS : BRONZE_FEED_ROWS;
  const amps = rows
    .filter(
      (row) => diameterMm !== null && Math.abs(row.diameterMm - diameterMm) < 0.06 * diameterMm,
    )
    .filter(({ voltageV: [low] }) =>
      mode === 'spray' ? low >= SHEET_SPRAY_V : low < SHEET_SPRAY_V,
    )
    .map((row) => row.currentA);
  if (amps.length === 0 || mode === 'globular') return null;
  return range(0.95 * Math.min(...amps), 1.05 * Math.max(...amps));
}

/** The part of the reach that is published for the mode, or at least usual for the wire. */
function narrowed(reach: Range, window: Range | null, diameterMm: number): Range {
  const usual = usualCurrent(diameterMm);
  for (const limit of [window, usual]) {
    if (limit === null) continue;
    const min = Math.max(reach.min, limit.min);
    const max = Math.min(reach.max, limit.max, usual?.max ?? Number.POSITIVE_INFINITY);
    if (min < max) return range(min, max);
    // The sheet ends where the map only begins to be sure: a little above its end, no further.
    if (limit === window) return range(reach.min, reach.min * 1.05);
  }
  return range(reach.min, Math.min(reach.max, reach.min * 1.2));
}

/** Currents that a size of steel wire is run at: a table of operating currents in a manual (read there). */
const USUAL_CURRENT_A: readonly (readonly [mm: number, min: number, max: number])[] = [
  [0.8, 60, 180],
  [0.9, 70, 250],
  [1.0, 90, 280],
  [1.2, 120, 340],
];

function usualCurrent(diameterMm: number): Range | null {
  const row = USUAL_CURRENT_A.find(([mm]) => Math.abs(mm - diameterMm) <= 0.05 * mm);
  return row === undefined ? null : range(row[1], row[2]);
}
