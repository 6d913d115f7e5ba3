import type { Mode } from '../../core/index.js';
import { type Boundaries, middle, type Range } from '../index.js';

/** Distance to the nearest boundary of a mode; positive inside it, null where not known. */
export interface Margins {
  marginV: number | null;
  marginA: number | null;
}

/** Margins of a working point for a mode, each from the middles of the ranges. */
export function marginsOf(
  mode: Mode,
  point: { voltageV: Range | null; currentA: Range | null },
  bounds: Boundaries,
): Margins {
  const v = point.voltageV === null ? null : middle(point.voltageV);
  const a = point.currentA === null ? null : middle(point.currentA);
  return {
    marginV: v === null ? null : round(voltMargin(mode, v, a, bounds), 1),
    marginA: a === null ? null : round(ampereMargin(mode, a, bounds), 0),
  };
}

function voltMargin(mode: Mode, v: number, a: number | null, bounds: Boundaries): number | null {
  const { dipTopV, sprayFloorV, transition } = bounds;
  const dip = middle(dipTopV);
  const spray = middle(sprayFloorV);
  if (mode === 'short-circuit') return dip - v;
  if (mode === 'spray') return bounds.spray === 'no' ? null : v - spray;
  if (mode === 'pulsed-spray') return null;
  const sprayAbove = transition !== null && a !== null && a >= transition.bestA;
  return sprayAbove ? Math.min(v - dip, spray - v) : v - dip;
}

function ampereMargin(mode: Mode, a: number, bounds: Boundaries): number | null {
  const { dipTopA, transition } = bounds;
  if (mode === 'short-circuit') return dipTopA === null ? null : dipTopA.max - a;
  if (mode === 'pulsed-spray' || transition === null) return null;
  return mode === 'spray' ? a - transition.bestA : transition.bestA - a;
}

function round(value: number | null, digits: number): number | null {
  return value === null ? null : Number(value.toFixed(digits));
}
