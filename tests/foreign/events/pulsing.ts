import { meltMm3PerS } from './bridging.js';
import { balance } from './freeFlight.js';
import { ballDiameterMm, ballMm3, meltingFeedMmPerS } from './melting.js';
import type { Plan } from './plan.js';
import type { Rng } from './rng.js';
import { type Drop, drawIgnition, type Load, type Pulse, type Schedule } from './schedule.js';

interface Shape {
  hz: number;
  peakA: number;
  backA: number;
  riseS: number;
  holdS: number;
  fallS: number;
}

/**
 * Draws pulses that give the mean current and throw off one drop of sensible size each; sets the
 * feed.
 */
function drawShape(rng: Rng, plan: Plan, dropsPerPulse: number): Shape {
  const { material, wireDiameterMm } = plan.setup;
  const light = material === 'aluminium';
  let best: Shape | null = null;
  let feed = plan.feedMmPerS;
  let meanA = plan.meanA;
  const firstA = plan.meanA;
  let worst = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < 60; tries++) {
    // domain sheet 1.1: I²t about 490 A²s for 1.2 mm steel (from memory); scaling with wire: own
    // choice
    const need =
      490 *
      (wireDiameterMm / 1.2) ** 1.8 *
      (light ? 0.4 : 1) *
      rng.range(0.8, 1.25) *
      dropsPerPulse;
    const peakA = 415 * (wireDiameterMm / 1.2) ** 0.8 * (light ? 0.72 : 1) * rng.range(0.86, 1.18);
    const widthS = Math.min(0.0042, Math.max(0.0009, need / peakA ** 2));
    // rise and fall of 0.2 to 0.6 ms (common practice, no source)
    const riseS = rng.range(0.0002, 0.0006);
    const fallS = rng.range(0.0002, 0.0006);
    const ratio = rng.range(0.82, 1.15);
    let hz = 100;
    let backA = 50;
    for (let k = 0; k < 12; k++) {
      const duty = hz * widthS;
      backA = (plan.meanA - duty * peakA) / Math.max(0.1, 1 - duty);
      const square = backA ** 2 + duty * (peakA ** 2 - backA ** 2);
      plan.feedMmPerS = Math.min(330, meltingFeedMmPerS(plan.setup, plan.meanA, square));
      const ball = ballMm3(wireDiameterMm * ratio) * dropsPerPulse;
      hz = 0.5 * hz + 0.5 * (meltMm3PerS(plan) / ball);
      hz = Math.min(hz, 0.62 / widthS);
    }
    const thick = ballDiameterMm(meltMm3PerS(plan) / (hz * dropsPerPulse)) / wireDiameterMm;
    const low = light ? 14 : 22;
    const miss =
      Math.max(0, low - backA) +
      Math.max(0, backA - 0.36 * peakA) +
      10 * Math.max(0, 32 - hz, hz - 380) +
      100 * Math.max(0, thick - 1.25);
    if (miss < worst) {
      feed = plan.feedMmPerS;
      meanA = plan.meanA;
      worst = miss;
      best = {
        hz,
        peakA,
        backA,
        riseS,
        fallS,
        holdS: Math.max(0.0003, widthS - 0.5 * (riseS + fallS)),
      };
    }
    if (miss === 0) break;
    // a mean current that no pulse of this wire can give comes down a little
    if (tries > 15 && plan.meanA > 0.85 * firstA) plan.meanA *= 0.985;
  }
  plan.feedMmPerS = feed;
  plan.meanA = meanA;
  return best as Shape;
}

/** Pulsed spray: a clock of pulses, in most arcs one drop each. */
export function drawPulsing(rng: Rng, plan: Plan, load: Load): Schedule {
  const start = drawIgnition(rng);
  // own choice: one drop a pulse in 8 of 10 arcs, else two, or one every other pulse
  const per = rng.weighted([
    [1, 80],
    [2, 11],
    [0.5, 9],
  ] as const);
  const shape = drawShape(rng, plan, per);
  plan.setup.wireFeedMPerMin = Math.round(100 * plan.feedMmPerS * 0.06) / 100;
  // the clock of the source: own choice of jitter, some sources follow the load with their
  // frequency
  const jitter = rng.logRange(0.0005, 0.015);
  const follow = rng.chance(0.6) ? rng.range(0, 1) : 0;
  const skips = rng.chance(0.5) ? rng.range(0, 0.02) : rng.range(0.02, 0.1);
  const late = shape.riseS + shape.holdS * rng.range(0.6, 1.1) + shape.fallS;
  const touchHz = rng.chance(0.4) ? rng.logRange(0.3, 6) : 0;
  const { shorts } = start;
  const drops: Drop[] = [];
  const pulses: Pulse[] = [];
  const endS = plan.durationS - 0.03;
  let t = start.settledS + 0.5 / shape.hz;
  let hanging = 0;
  for (let k = 0; ; k++) {
    const periodS = (1 + jitter * rng.normal()) / (shape.hz * (1 + follow * (load(t) - 1)));
    if (t + periodS > endS) break;
    const { riseS, holdS, fallS, backA } = shape;
    const peakA = shape.peakA * (1 + 0.01 * rng.normal());
    pulses.push({ atS: t, riseS, holdS, fallS, peakA, backA });
    hanging += periodS;
    const due = per === 0.5 ? k % 2 === 0 : true;
    if (due && !rng.chance(skips)) {
      const first = t + late + 0.0002 * rng.normal();
      const share = per === 2 ? rng.range(0.5, 0.75) : 1;
      drops.push({ atS: first, volume: hanging * share, diameterMm: 0 });
      if (per === 2) {
        const second = first + rng.range(0.0006, 0.0016);
        drops.push({ atS: second, volume: hanging * (1 - share), diameterMm: 0 });
      }
      hanging = 0;
    }
    // a long drop may touch late in the background time
    const spare = periodS - (riseS + holdS + fallS);
    if (spare > 0.004 && rng.chance(touchHz * periodS)) {
      const from = t + periodS - spare * rng.range(0.4, 0.6);
      shorts.push({ startS: from, endS: from + rng.logRange(0.0004, 0.0015), heavy: false });
    }
    t += periodS;
  }
  drops.sort((a, b) => a.atS - b.atS);
  balance(plan, drops, 0);
  const dance = rng.range(0.02, 0.08);
  return { ...start, drops, pulses, steps: null, cycleS: 1 / shape.hz, dance };
}
