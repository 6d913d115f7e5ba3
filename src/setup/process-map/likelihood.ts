import type { ProcessMap, TransitionSpread } from './boundary-lines.js';
import { type Likelihoods, noLikelihoods, OUTCOMES } from './outcomes.js';
import { above, type Likely, NORMAL_NODES, normalShare } from './spread.js';

/** A working point: volts at the feeder while welding and mean amperes, each with its spread. */
export interface MapPoint {
  voltageV: Likely;
  currentA: Likely;
  /** Correlation of the two, −1 to 1: a drooping source gives less voltage where the wire draws more. */
  correlation: number;
}

/** Share of cases in which this current is enough for spray in this gas, 0 to 1. */
export function sprayCurrentShare({ spray, transition }: ProcessMap, currentA: number): number {
  if (transition === null) return 0;
  return spray.share * beyond(currentA, transition);
}

/** Share of cases in which the transition lies below this current. */
export function beyond(currentA: number, { bestA, sdBelowA, sdAboveA }: TransitionSpread): number {
  const away = currentA - bestA;
  return normalShare(away / (away < 0 ? sdBelowA : sdAboveA));
}

/** Likelihood of every outcome exactly at a point; the boundaries keep their own spread. */
export function likelihoodsAt(map: ProcessMap, voltageV: number, currentA: number): Likelihoods {
  const over = (boundary: Parameters<ProcessMap['limitV']>[0]): number =>
    above(voltageV, map.limitV(boundary, currentA));
  const stubbing = 1 - over('stub');
  const burnBack = over('burn-back') * (1 - stubbing);
  const long = Math.max(0, over('long-arc') * (1 - stubbing) - burnBack);
  const rest = Math.max(0, 1 - stubbing - burnBack - long);
  const sprays = sprayCurrentShare(map, currentA);
  const clean = over('spray-floor');
  const dips = 1 - over('dip-top');
  return {
    stubbing,
    dip: rest * (1 - sprays) * dips,
    globular: rest * (1 - sprays) * (1 - dips),
    'spray-with-shorts': rest * sprays * (1 - clean),
    spray: rest * sprays * clean,
    'long-arc': long,
    'burn-back': burnBack,
  };
}

/** Likelihood of every outcome over the whole ellipse of a point. */
export function likelihoods(map: ProcessMap, point: MapPoint): Likelihoods {
  const total = noLikelihoods();
  const { voltageV, currentA, correlation } = point;
  const own = Math.sqrt(Math.max(0, 1 - correlation ** 2));
  for (const [zi, wi] of NORMAL_NODES) {
    const amps = Math.max(10, currentA.mean + zi * currentA.sd);
    for (const [zv, wv] of NORMAL_NODES) {
      const volts = voltageV.mean + voltageV.sd * (correlation * zi + own * zv);
      const at = likelihoodsAt(map, volts, amps);
      for (const outcome of OUTCOMES) total[outcome] += wi * wv * at[outcome];
    }
  }
  return total;
}
