import { MODES, type Mode } from '../core/index.js';
import type { Boundaries } from './boundaries.js';
import type { SourceKind } from './choices.js';
import type { Range } from './sourced.js';

/** `yes`: every source permits the mode here; `possible`: some do, or too little is known; `no`. */
export type Permit = 'yes' | 'possible' | 'no';

/** Volts at the feeder while welding, amperes of mean current. Null means not known. */
export interface WorkingPoint {
  voltageV: Range | null;
  currentA: Range | null;
}

export type Permits = Record<Mode, Permit>;

/** What may happen anywhere within the ranges: `yes` or `no` only where the whole range says so. */
export function permits(
  point: WorkingPoint,
  bounds: Boundaries,
  source: SourceKind | null,
): Permits {
  // What is not known may be anything that the process runs at (common practice, no source).
  const volts = steps(point.voltageV ?? { min: 10, max: 40 });
  const amps = steps(point.currentA ?? { min: 40, max: 450 });
  const cells = volts.flatMap((v) => amps.map((a) => permitsAt(v, a, bounds, source)));
  const combine = (mode: Mode): Permit => {
    const words = new Set(cells.map((cell) => cell[mode]));
    if (words.size > 1) return 'possible';
    return cells[0]![mode];
  };
  return Object.fromEntries(MODES.map((mode) => [mode, combine(mode)])) as Permits;
}

function steps({ min, max }: Range): number[] {
  const count = max > min ? 9 : 1;
  return Array.from({ length: count }, (_, i) => min + ((max - min) * i) / Math.max(1, count - 1));
}

/** One working point. A source said to pulse is held to pulse; a steady one to not. */
export function permitsAt(
  v: number,
  a: number,
  bounds: Boundaries,
  source: SourceKind | null,
): Permits {
  const pulsed = pulsedAt(v, bounds, source);
  const steady: Record<Exclude<Mode, 'pulsed-spray'>, Permit> = {
    'short-circuit': dipAt(v, a, bounds),
    globular: globularAt(v, a, bounds),
    spray: sprayAt(v, a, bounds),
  };
  if (source !== 'pulsed') return { ...steady, 'pulsed-spray': pulsed };
  // With a pulsed programme the steady windows don't hold; spray at high mean current stays open.
  const spray = steady.spray === 'no' ? 'no' : 'possible';
  const other = bounds.spray === 'no' || bounds.spray === 'unknown' ? 'possible' : 'no';
  return { 'short-circuit': other, globular: other, spray, 'pulsed-spray': pulsed };
}

function dipAt(v: number, a: number, { dipTopV, dipTopA }: Boundaries): Permit {
  if (v > dipTopV.max) return 'no';
  if (v > dipTopV.min) return 'possible';
  return dipTopA !== null && a > dipTopA.max * 1.2 ? 'possible' : 'yes';
}

function globularAt(v: number, a: number, bounds: Boundaries): Permit {
  const { dipTopV, sprayFloorV } = bounds;
  if (v <= dipTopV.min) return 'no';
  const spray = sprayAt(v, a, bounds);
  if (spray === 'yes') return 'no';
  if (v <= dipTopV.max) return 'possible';
  if (spray === 'no') return 'yes';
  return v >= sprayFloorV.min ? 'possible' : 'yes';
}

function sprayAt(v: number, a: number, { spray, sprayFloorV, transition }: Boundaries): Permit {
  if (spray === 'no' || v < sprayFloorV.min) return 'no';
  if (spray === 'unknown' || transition === null) return 'possible';
  if (a < transition.currentA.min) return 'no';
  const clear = v >= sprayFloorV.max && a >= transition.currentA.max;
  return clear && spray === 'yes' ? 'yes' : 'possible';
}

/** Mean volts of pulsed programmes lie within 16–34 V (common practice, no source). */
function pulsedAt(v: number, { spray }: Boundaries, source: SourceKind | null): Permit {
  if (source === 'steady' || spray === 'no' || v < 16 || v > 34) return 'no';
  return source === 'pulsed' && spray === 'yes' ? 'yes' : 'possible';
}
