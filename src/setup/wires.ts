import { MM_PER_INCH } from './quantities.js';
import type { Sourced } from './sourced.js';
import type { WireMaterial } from './wire-words.js';

/** A wire size as sold: inch name and the metric size people take as the same. */
export interface WireSize {
  inch: number;
  name: string;
  /** Exact metric value of the inch size. */
  mm: number;
  /** Metric size sold in its place. */
  soldAsMm: number;
}

const size = (inch: number, name: string, soldAsMm: number): WireSize => ({
  inch,
  name,
  mm: inch * MM_PER_INCH,
  soldAsMm,
});

/** Sizes with the equivalences of the trade (0.045 in is 1.14 mm and is sold as 1.2 mm; common practice, no source). */
export const WIRE_SIZES: readonly WireSize[] = [
  size(0.023, '0.023 in', 0.6),
  size(0.03, '0.030 in', 0.8),
  size(0.035, '0.035 in', 0.9),
  size(0.04, '0.040 in', 1.0),
  size(0.045, '0.045 in', 1.2),
  size(0.052, '0.052 in', 1.4),
  size(0.0625, '1/16 in', 1.6),
];

/** Inches of wire in a pound, by material and diameter. */
export interface LengthPerPound extends Sourced {
  material: WireMaterial;
  inch: number;
  inchesPerPound: number;
}

const HANDBOOK = 'MIG Welding Handbook, ch. 7 p. 10';

const perPound = (
  material: WireMaterial,
  rows: readonly (readonly [number, number])[],
): LengthPerPound[] =>
  rows.map(([inch, inchesPerPound]) => ({
    material,
    inch,
    inchesPerPound,
    source: HANDBOOK,
    certainty: 'F',
  }));

export const LENGTH_PER_POUND: readonly LengthPerPound[] = [
  ...perPound('carbon-steel', [
    [0.03, 4956],
    [0.035, 3648],
    [0.045, 2196],
    [1 / 16, 1152],
  ]),
  ...perPound('stainless-steel', [
    [0.03, 4872],
    [0.035, 3588],
    [0.045, 2160],
    [1 / 16, 1140],
  ]),
  ...perPound('aluminium', [
    [0.03, 14412],
    [0.035, 10596],
    [3 / 64, 6408],
    [1 / 16, 3372],
  ]),
];

/** Densities in g/cm³ used here; steel agrees with the lengths per pound above (7.83–7.93), the others are from memory. */
export const DENSITY_G_PER_CM3: Readonly<Record<WireMaterial, number>> = {
  'carbon-steel': 7.86,
  'stainless-steel': 7.98,
  aluminium: 2.7,
};

const GRAMS_PER_POUND = 453.59237;

/** Cross-section of a round wire, mm². */
export const wireAreaMm2 = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

/** Mass of a metre of wire in grams. */
export function gramsPerMetre(material: WireMaterial, diameterMm: number): number {
  return wireAreaMm2(diameterMm) * DENSITY_G_PER_CM3[material];
}

/** Metres of wire in a kilogram. */
export function metresPerKilogram(material: WireMaterial, diameterMm: number): number {
  return 1000 / gramsPerMetre(material, diameterMm);
}

/** Density in g/cm³ that a length per pound implies for a diameter in inches. */
export function impliedDensity(inch: number, inchesPerPound: number): number {
  const volumeCm3 = (wireAreaMm2(inch * MM_PER_INCH) / 100) * inchesPerPound * (MM_PER_INCH / 10);
  return GRAMS_PER_POUND / volumeCm3;
}
