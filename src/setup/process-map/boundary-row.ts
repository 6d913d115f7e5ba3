import type { Sourced } from '../sourced.js';
import type { MapMaterial } from './wires-of-map.js';

/** Lines of the map, from too cold to too hot. */
export const BOUNDARIES = ['stub', 'dip-top', 'spray-floor', 'long-arc', 'burn-back'] as const;
export type BoundaryName = (typeof BOUNDARIES)[number];

/** A line `volts + slope·I` at the feeder for a wire of 1.14 mm (0.045 in), with its spread. */
export interface BoundaryRow extends Sourced {
  boundary: BoundaryName;
  materials: readonly MapMaterial[];
  /** V at no current. */
  volts: number;
  /** V/A. */
  slope: number;
  /** Standard deviation, V: how far sources, sources' own meters and machines differ. */
  sdV: number;
  /** What the line rests on. */
  about: string;
}
