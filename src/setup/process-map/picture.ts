import type { ProcessMap } from './boundary-lines.js';
import { LOAD_LINE } from './boundary-rows.js';
import { type FedWire, feedOfCurrent } from './feed-current.js';
import { likelihoodsAt, type MapPoint } from './likelihood.js';
import { type Likelihoods, type Outcome, ranked } from './outcomes.js';

/** One place of a drawn map. */
export interface MapCell {
  outcome: Outcome;
  /** 0 to 1. */
  likelihood: number;
  /** The next likeliest where it stands at a quarter or more: a mixed zone. */
  second: Outcome | null;
}

/** A place in volts at the feeder and mean amperes. */
export interface Place2 {
  voltageV: number;
  currentA: number;
}

/** Everything that a picture of a map shows, as plain numbers. */
export interface MapPicture {
  /** Middles of the columns, A, rising. */
  currentA: number[];
  /** Feed under each column, m/min; null where it is not known. */
  feedMPerMin: (number | null)[];
  /** Middles of the rows, V, falling. */
  voltsV: number[];
  /** `cells[row][column]`. */
  cells: MapCell[][];
  /** The conventional load line, as a guide only. */
  guide: Place2[];
  /** Current where spray begins at best, with one standard deviation to each side; null where it does not. */
  transitionA: { best: number; from: number; to: number } | null;
  /** The stated point and the edge of its ellipse of two standard deviations. */
  point: { at: Place2; edge: Place2[] } | null;
  /** A measured point beside the stated one. */
  measured: Place2 | null;
  /** Edge of the region in which the wanted outcome is likelier than not; empty where there is none. */
  wanted: Place2[];
}

/** What a picture is made of besides the map. */
export interface PictureParts {
  wire: FedWire;
  point: MapPoint | null;
  measured: Place2 | null;
  wanted: Outcome | null;
  columns: number;
  rows: number;
  /** Current at the right edge, A; by wire size where not given. */
  mostA?: number;
}

const VOLTS = { from: 10, to: 40 };
const LEAST_A = 40;
const MIXED = 0.25;

/** Right edge of a map: what a wire of this size is run at, with room beyond; own choice. */
export function mostAmps(diameterMm: number): number {
  return Math.round((170 + 230 * diameterMm) / 20) * 20;
}

/** The map as numbers to draw: a grid of outcomes with lines, point and wanted region on it. */
export function mapPicture(map: ProcessMap, parts: PictureParts): MapPicture {
  const { wire, columns, rows, wanted } = parts;
  const mostA = parts.mostA ?? mostAmps(wire.diameterMm);
  const currentA = middles(LEAST_A, mostA, columns);
  const voltsV = middles(VOLTS.from, VOLTS.to, rows).reverse();
  const all = voltsV.map((v) => currentA.map((a) => likelihoodsAt(map, v, a)));
  return {
    currentA,
    feedMPerMin: currentA.map((a) => feedOfCurrent(wire, a)),
    voltsV,
    cells: all.map((row) => row.map(cellOf)),
    guide: [LEAST_A, mostA].map((a) => ({
      currentA: a,
      voltageV: LOAD_LINE.volts + LOAD_LINE.slope * a,
    })),
    transitionA: transitionOf(map),
    point: parts.point === null ? null : ellipse(parts.point),
    measured: parts.measured,
    wanted: wanted === null ? [] : regionOf(map, wanted, currentA),
  };
}

function middles(from: number, to: number, count: number): number[] {
  const step = (to - from) / count;
  return Array.from({ length: count }, (_, i) => from + (i + 0.5) * step);
}

function cellOf(all: Likelihoods): MapCell {
  const [first, next] = ranked(all);
  const second = next!.likelihood >= MIXED ? next!.outcome : null;
  return { outcome: first!.outcome, likelihood: first!.likelihood, second };
}

function transitionOf({ spray, transition }: ProcessMap): MapPicture['transitionA'] {
  if (transition === null || spray.word === 'no' || spray.word === 'no-source') return null;
  const { bestA, sdBelowA, sdAboveA } = transition;
  return { best: bestA, from: bestA - sdBelowA, to: bestA + sdAboveA };
}

/** Edge points of the ellipse of two standard deviations: some six of seven cases lie within. */
export function ellipse({ voltageV, currentA, correlation }: MapPoint): MapPicture['point'] {
  const own = Math.sqrt(Math.max(0, 1 - correlation ** 2));
  const edge = Array.from({ length: 48 }, (_, i) => {
    const angle = (2 * Math.PI * i) / 48;
    const zi = 2 * Math.cos(angle);
    const zv = 2 * (correlation * Math.cos(angle) + own * Math.sin(angle));
    return {
      currentA: currentA.mean + zi * currentA.sd,
      voltageV: voltageV.mean + zv * voltageV.sd,
    };
  });
  return { at: { voltageV: voltageV.mean, currentA: currentA.mean }, edge };
}

/** Along the lower edge and back along the upper one. */
function regionOf(map: ProcessMap, wanted: Outcome, amps: readonly number[]): Place2[] {
  const lower: Place2[] = [];
  const upper: Place2[] = [];
  for (const currentA of amps) {
    let [low, high] = [Number.NaN, Number.NaN];
    for (let volts = VOLTS.from; volts <= VOLTS.to; volts += 0.1) {
      if (likelihoodsAt(map, volts, currentA)[wanted] < 0.5) continue;
      if (Number.isNaN(low)) low = volts;
      high = volts;
    }
    if (Number.isNaN(low)) continue;
    lower.push({ currentA, voltageV: low });
    upper.push({ currentA, voltageV: high });
  }
  return [...lower, ...upper.reverse()];
}
