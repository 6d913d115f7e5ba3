import type { Certainty, Sourced } from '../sourced.js';
import { readWireClass } from '../wire-classification.js';
import type { WireMaterial } from '../wire-words.js';

/** Wires the map has rows for; the last two are known here only, no recording of them is judged. */
export const MAP_MATERIALS = [
  'carbon-steel',
  'stainless-steel',
  'aluminium',
  'silicon-bronze',
  'metal-cored',
] as const;
export type MapMaterial = (typeof MAP_MATERIALS)[number];

/** Wires that `expect` knows and no recording is judged of, by word or classification; null for all others. */
export function mapOnlyMaterial(raw: string): 'silicon-bronze' | 'metal-cored' | null {
  const text = raw.trim();
  if (/^silicon[ -]?bronze$/iu.test(text)) return 'silicon-bronze';
  if (/^metal[ -]?cored?( wire)?$/iu.test(text)) return 'metal-cored';
  const material = readWireClass(text)?.material;
  return material === 'silicon-bronze' || material === 'metal-cored' ? material : null;
}

/** The material whose transition rows and gas rules a wire follows. */
export function solidTwin(material: MapMaterial): WireMaterial | null {
  if (material === 'silicon-bronze') return null;
  return material === 'metal-cored' ? 'carbon-steel' : material;
}

/** One line of a wire's or maker's table: what was fed and what it drew. */
export interface FeedRow extends Sourced {
  diameterMm: number;
  feedMPerMin: number;
  currentA: number;
  voltageV: readonly [number, number];
}

type Cells = readonly [mm: number, mPerMin: number, amps: number, low: number, high: number];

const rows = (source: string, certainty: Certainty, cells: readonly Cells[]): FeedRow[] =>
  cells.map(([diameterMm, feedMPerMin, currentA, low, high]) => ({
    diameterMm,
    feedMPerMin,
    currentA,
    voltageV: [low, high],
    source,
    certainty,
  }));

/** Aluminium in argon, butt and fillet welds: feed, current and volts belong together. */
export const ALUMINIUM_FEED_ROWS: readonly FeedRow[] = rows(
  "an aluminium wire maker's table of recommended parameters",
  'F',
  [
    [0.8, 11.7, 80, 18, 21],
    [0.9, 12.2, 130, 19, 22],
    [1.0, 11.4, 160, 20, 23],
    [0.9, 19.1, 175, 19, 23],
    [1.2, 10.9, 195, 20, 24],
    [1.2, 11.8, 220, 21, 25],
    [1.6, 8.1, 240, 22, 26],
    [1.6, 9.7, 275, 23, 27],
    [0.8, 12.7, 100, 18, 20],
    [0.9, 14.7, 140, 19, 21],
    [1.0, 10.8, 150, 20, 22],
    [1.2, 10.4, 180, 20, 22],
    [1.2, 10.8, 190, 21, 23],
    [1.6, 7.2, 220, 21, 23],
    [1.2, 12.2, 210, 22, 24],
    [1.6, 7.6, 230, 22, 25],
    [1.6, 8.3, 240, 23, 26],
  ],
);

/** Silicon bronze in argon, spray; the middle of each range of the sheet. */
export const BRONZE_FEED_ROWS: readonly FeedRow[] = rows('a silicon-bronze wire data sheet', 'F', [
  [0.762, 12.2, 140, 21, 23],
  [0.889, 10.7, 165, 23, 25],
  [1.143, 7.5, 205, 26, 28],
  [1.588, 4.6, 270, 27, 30],
]);

/** Metal-cored steel wire in 75–95 % argon with CO2, contact tip 19–25 mm (1.1 mm) or 25–32 mm (1.6 mm) from the work. */
export const METAL_CORED_FEED_ROWS: readonly FeedRow[] = rows(
  'a metal-cored wire data sheet',
  'F',
  [
    [1.143, 2.8, 90, 15, 15],
    [1.143, 3.4, 120, 16, 16],
    [1.143, 4.7, 150, 17, 17],
    [1.143, 6.4, 180, 28, 30],
    [1.143, 11.5, 275, 31, 34],
    [1.143, 16.5, 340, 35, 38],
    [1.588, 2.0, 145, 15, 15],
    [1.588, 2.1, 160, 16, 16],
    [1.588, 2.3, 170, 18, 18],
    [1.588, 3.8, 235, 25, 26],
    [1.588, 6.4, 325, 29, 32],
    [1.588, 8.9, 400, 34, 37],
    [1.588, 11.4, 460, 36, 38],
  ],
);
