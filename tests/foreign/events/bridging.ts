import { ballMm3, swelling, wireAreaMm2 } from './melting.js';
import type { Plan } from './plan.js';
import type { Rng } from './rng.js';
import { drawIgnition, drawRenewal, type Load, type Schedule, type Steps } from './schedule.js';
import { co2Percent } from './windows.js';

/** Melted metal, mm³/s. */
export function meltMm3PerS(plan: Plan): number {
  const { wireDiameterMm, material } = plan.setup;
  return plan.feedMmPerS * wireAreaMm2(wireDiameterMm) * swelling(material);
}

/** Draws the levels of a controlled dip; they are brought to the mean current later. */
function drawSteps(rng: Rng, meanA: number): Steps {
  // own choice, from memory of published oscillograms of controlled dip: boost, low background, cut
  // before rupture
  return {
    boostA: meanA * rng.range(1.4, 2.4),
    boostS: rng.range(0.001, 0.0028),
    backA: Math.max(25, meanA * rng.range(0.3, 0.7)),
    cutA: rng.range(25, 70),
  };
}

/**
 * Dip transfer: alternating arcs and shorts; rate from the melt and the metal that one bridge
 * carries.
 */
export function drawBridging(rng: Rng, plan: Plan, load: Load): Schedule {
  const start = drawIgnition(rng);
  const rich = co2Percent(plan.setup.gas) > 50;
  const steps = rng.chance(0.18) ? drawSteps(rng, plan.meanA) : null;
  // own choice: a bridge carries a ball of 0.8 to 1.5 wires; rates then fall in the published
  // 20-200 /s
  const ball = ballMm3(plan.setup.wireDiameterMm * rng.range(0.8, 1.5));
  const ceiling = steps ? 140 : 190;
  const heavyHz = Math.min(ceiling, Math.max(22, meltMm3PerS(plan) / ball));
  // domain sheet 1.1: about 1 ms measured in a regular arc, 2-6 ms usual in CO2
  const wishS = rich ? rng.logRange(0.002, 0.0055) : rng.logRange(0.001, 0.0038);
  const shortS = Math.min(0.4 / heavyHz, Math.max(0.12 / heavyHz, wishS));
  // domain sheet 11 and 8: real intervals jitter by more than 5 %; CO2 less regular (own choice of
  // the spans)
  const cv = steps ? rng.range(0.05, 0.16) : rich ? rng.range(0.18, 0.48) : rng.range(0.1, 0.38);
  const arcs = drawRenewal(rng, Math.min(0.9, cv * 1.2));
  const shortCv = steps ? rng.range(0.06, 0.2) : rng.range(0.12, 0.45);
  // touches without metal (incipient shorts): up to one in four, in clusters before or after a real
  // one
  const touches = steps ? 0.02 : rng.chance(0.5) ? rng.range(0, 0.06) : rng.range(0.06, 0.25);
  // now and then the pool is missed and the arc stays long (own choice)
  const misses = steps ? 0 : rng.chance(0.35) ? rng.range(0.01, 0.05) : 0;

  const shorts = start.shorts;
  const endS = plan.durationS - 0.035;
  const meanArcS = 1 / heavyHz - shortS;
  let t = start.settledS;
  for (;;) {
    let arcS = Math.max(0.0007, (meanArcS * arcs()) / load(t));
    if (rng.chance(misses)) arcS += meanArcS * rng.range(1, 3.5);
    if (rng.chance(touches) && arcS > 0.003) {
      const at = t + arcS * rng.range(0.45, 0.85);
      const lasting = rng.logRange(0.0002, 0.0009);
      if (at + lasting < t + arcS - 0.0006 && at + lasting < endS) {
        shorts.push({ startS: at, endS: at + lasting, heavy: false });
      }
    }
    const from = t + arcS;
    const to = from + Math.max(0.0005, shortS * rng.spread(shortCv));
    if (to > endS) break;
    shorts.push({ startS: from, endS: to, heavy: true });
    t = to;
  }
  const dance = rng.range(0.03, 0.1);
  return { ...start, shorts, drops: [], pulses: [], steps, cycleS: 1 / heavyHz, dance };
}
