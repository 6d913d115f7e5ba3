import { meltMm3PerS } from './bridging.js';
import { ballDiameterMm, ballMm3 } from './melting.js';
import type { Plan } from './plan.js';
import type { Rng } from './rng.js';
import {
  type Drop,
  drawIgnition,
  drawRenewal,
  type Load,
  type Schedule,
  type Short,
} from './schedule.js';
import { co2Percent, sprayTransitionA } from './windows.js';

/**
 * Sets the diameters so that drops and heavy bridges together carry exactly the metal that melts.
 */
export function balance(plan: Plan, drops: Drop[], bridgesVolume: number): void {
  let sum = bridgesVolume;
  for (const d of drops) sum += d.volume;
  const scale = (meltMm3PerS(plan) * plan.durationS) / Math.max(sum, 1e-9);
  for (const d of drops) d.diameterMm = ballDiameterMm(d.volume * scale);
}

/** Globular: big drops from a renewal process; in CO2 many touch the pool before they leave. */
export function drawGlobular(rng: Rng, plan: Plan, load: Load): Schedule {
  const start = drawIgnition(rng);
  const repelled = co2Percent(plan.setup.gas) >= 30;
  const mixed = !repelled && co2Percent(plan.setup.gas) >= 18;
  // domain sheet 1.1: drops of 1 to 3 wires, up to 2 wires in CO2
  const ball = ballMm3(
    plan.setup.wireDiameterMm * (repelled ? rng.range(1.2, 2) : rng.range(1.3, 2.5)),
  );
  const cycleHz = Math.min(repelled ? 75 : 70, Math.max(2, meltMm3PerS(plan) / ball));
  // domain sheet 1.1: intervals of CO2 shorts spread by 0.5 and more; argon-rich: own choice
  const cv = repelled ? rng.range(0.55, 0.95) : rng.range(0.25, 0.6);
  const wait = drawRenewal(rng, cv);
  // share of drops that end in a bridge; light touches besides, the sum kept in 5-60 /s for CO2
  const wishHz = repelled
    ? rng.logRange(6, 48)
    : mixed
      ? rng.range(0, 5)
      : rng.chance(0.3)
        ? rng.range(0, 2)
        : 0;
  const bridgeShare = Math.min(0.5, (wishHz * rng.range(0.4, 0.9)) / cycleHz);
  const lightHz = Math.max(0, wishHz - bridgeShare * cycleHz);
  const shorts: Short[] = start.shorts;
  const drops: Drop[] = [];
  const endS = plan.durationS - 0.035;
  let bridges = 0;
  let t = start.settledS;
  let nextLight = t - Math.log(1 - rng.next()) / Math.max(lightHz, 1e-6);
  for (;;) {
    const gap = Math.max(0.003, wait() / (cycleHz * load(t)));
    // a cluster of touches of a swinging drop; the process is Poisson, so twos and threes come by
    // themselves
    while (nextLight < t + gap - 0.003) {
      const from = Math.max(nextLight, t + 0.0015);
      const to = from + rng.logRange(0.0004, 0.0028);
      if (to < t + gap - 0.0015 && to < endS) shorts.push({ startS: from, endS: to, heavy: false });
      nextLight = Math.max(to + 0.001, from - Math.log(1 - rng.next()) / Math.max(lightHz, 1e-6));
    }
    const at = t + gap;
    const volume = gap * rng.spread(0.15);
    if (rng.chance(bridgeShare)) {
      const to = at + rng.logRange(0.002, 0.0075);
      if (to > endS) break;
      shorts.push({ startS: at, endS: to, heavy: true });
      bridges += volume;
      t = to;
    } else {
      if (at > endS) break;
      drops.push({ atS: at, volume, diameterMm: 0 });
      t = at;
    }
    nextLight = Math.max(nextLight, t + 0.0015);
  }
  balance(plan, drops, bridges);
  const dance = repelled ? rng.range(0.12, 0.28) : rng.range(0.04, 0.12);
  return { ...start, shorts, drops, pulses: [], steps: null, cycleS: 1 / cycleHz, dance };
}

/** Spray: projected drops about as thick as the wire or a stream of smaller ones. */
export function drawSpray(rng: Rng, plan: Plan, load: Load): Schedule {
  const start = drawIgnition(rng);
  const { material, wireDiameterMm, gas } = plan.setup;
  const over = plan.meanA / sprayTransitionA(material, wireDiameterMm, gas);
  // own choice: a stream is the likelier the further the current stands above the transition
  const stream = over > 1.15 && rng.chance(Math.min(0.65, 1.6 * (over - 1.1)));
  // domain sheet 1.1 and 1.3: drop about the wire (thin wires: not below it); stream 500-1000 /s
  // and more
  const thin = wireDiameterMm <= 0.9 && !stream ? 1.08 : 1;
  const ratio = thin * (stream ? rng.range(0.42, 0.7) : rng.range(0.92, 1.12));
  const dropHz = Math.min(1500, meltMm3PerS(plan) / ballMm3(wireDiameterMm * ratio));
  const cv = stream ? rng.range(0.2, 0.45) : rng.range(0.07, 0.28);
  const wait = drawRenewal(rng, cv);
  // near the transition some big drops come in between (domain sheet 1.3)
  const bigShare = over < 1.15 && rng.chance(0.3) ? rng.range(0.01, 0.05) : 0;
  const touchHz = rng.chance(0.25) ? rng.logRange(0.2, 2) : 0;
  const shorts: Short[] = start.shorts;
  const drops: Drop[] = [];
  const endS = plan.durationS - 0.03;
  let t = start.settledS;
  for (;;) {
    const big = rng.chance(bigShare) ? rng.range(2, 4) : 1;
    const gap = Math.max(0.0003, (big * wait()) / (dropHz * load(t)));
    t += gap;
    if (t > endS) break;
    if (rng.chance(touchHz * gap)) {
      const to = t + rng.logRange(0.0003, 0.0015);
      shorts.push({ startS: t, endS: to, heavy: false });
      t = to;
    } else drops.push({ atS: t, volume: gap * rng.spread(0.1), diameterMm: 0 });
  }
  balance(plan, drops, 0);
  const dance = rng.range(0.02, 0.08);
  return { ...start, shorts, drops, pulses: [], steps: null, cycleS: 1 / dropHz, dance };
}

/** Median of the drop diameters, mm; null for none. */
export function medianDiameterMm(drops: readonly Drop[]): number | null {
  if (drops.length === 0) return null;
  const sorted = drops.map((d) => d.diameterMm).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? null;
}
