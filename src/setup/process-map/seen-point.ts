import type { ProcessMap } from './boundary-lines.js';
import { likelihoodsAt, type MapPoint } from './likelihood.js';
import type { Outcome } from './outcomes.js';
import { likely } from './spread.js';

/** A point after what was seen has been weighed in. */
export interface SeenPoint {
  point: MapPoint;
  /** How likely the set-up was to give what was seen; near 0 the two contradict each other. */
  fit: number;
}

const REACH = 3;
const STEPS = 24;

/**
 * Weighs what was seen into a point by Bayes' rule: of all volts and amperes that the set-up leaves open,
 * those count that give what was seen. Says how well the two fit.
 */
export function weighSeen(map: ProcessMap, point: MapPoint, seen: Outcome): SeenPoint {
  const { voltageV, currentA, correlation } = point;
  const own = Math.sqrt(Math.max(0, 1 - correlation ** 2));
  const sums = { prior: 0, all: 0, v: 0, vv: 0, a: 0, aa: 0 };
  for (let i = 0; i <= STEPS; i++) {
    const zi = -REACH + (2 * REACH * i) / STEPS;
    const amps = Math.max(10, currentA.mean + zi * currentA.sd);
    for (let j = 0; j <= STEPS; j++) {
      const zv = -REACH + (2 * REACH * j) / STEPS;
      const volts = voltageV.mean + voltageV.sd * (correlation * zi + own * zv);
      const prior = Math.exp(-(zi ** 2 + zv ** 2) / 2);
      const weight = prior * likelihoodsAt(map, volts, amps)[seen];
      sums.prior += prior;
      sums.all += weight;
      sums.v += weight * volts;
      sums.vv += weight * volts ** 2;
      sums.a += weight * amps;
      sums.aa += weight * amps ** 2;
    }
  }
  const fit = sums.all / sums.prior;
  if (fit < 1e-6) return { point, fit };
  const [v, a] = [sums.v / sums.all, sums.a / sums.all];
  const sd = (squares: number, mean: number): number =>
    Math.sqrt(Math.max(1e-6, squares / sums.all - mean ** 2));
  return {
    point: {
      voltageV: likely(v, sd(sums.vv, v)),
      currentA: likely(a, sd(sums.aa, a)),
      correlation,
    },
    fit,
  };
}
