import type { Dice } from './dice.js';
import { type Plan, settledS } from './plan.js';
import type { Draft } from './setup.js';

/** The wave a pulsing source sends. */
export interface PulseShape {
  /** Mean rate of the pulses, Hz. */
  hz: number;
  peakA: number;
  baseA: number;
  riseS: number;
  fallS: number;
  /** 0: straight edges; 1: edges that bend like a charging coil. */
  bend: number;
  /** Height of a shoulder after the fall, part of the step; 0 for none. */
  shoulder: number;
}

/**
 * Draws a wave of the right mean current. Rise and fall 0.2-0.6 ms; peak current and time near
 * Ip²·tp = 500 A²s
 * for 1.2 mm steel (Allum and Quintino, from memory and unsure), moved with the wire's section.
 */
export function drawPulseShape(dice: Dice, draft: Draft): PulseShape {
  const wireMm = draft.setup.wireDiameterMm;
  const light = draft.setup.material === 'aluminium' ? 0.45 : 1;
  const size = dice.ratio(0.72, 1.25);
  const dropMm = wireMm * size;
  // A smaller drop asks for less (own choice).
  const duty = 500 * light * (wireMm / 1.2) ** 2 * size ** 1.5 * dice.around(1, 0.15);
  const wanted = draft.meltMm3PerS / ((Math.PI / 6) * dropMm ** 3);
  let hz = Math.min(320, Math.max(32, wanted));
  const riseS = dice.ratio(0.0002, 0.0006);
  const fallS = dice.ratio(0.0002, 0.0006);
  // The mean current fixes the background; time and rate give way until it is a background.
  let topS = dice.between(0.0011, 0.0029);
  let peakA = 0;
  let baseA = 0;
  for (let k = 0; k < 40; k++) {
    peakA = Math.min(500, Math.sqrt(duty / topS));
    const share = Math.min(0.8, (topS + (riseS + fallS) / 2) * hz);
    baseA = (draft.meanA - share * peakA) / (1 - share);
    if (baseA > Math.max(25, 0.2 * draft.meanA) && baseA < 0.6 * draft.meanA) break;
    const more = baseA < 0.3 * draft.meanA ? 0.97 : 1.03;
    topS *= more;
    hz = Math.min(320, Math.max(31, hz * more));
  }
  baseA = Math.min(0.8 * draft.meanA, Math.max(22, baseA));
  return {
    hz,
    peakA,
    baseA,
    riseS,
    fallS,
    bend: dice.next(),
    shoulder: dice.chance(0.3) ? dice.between(0.1, 0.35) : 0,
  };
}

/** Lays out the pulses and the drops they throw: mostly one drop a pulse. */
export function planPulsed(dice: Dice, draft: Draft, plan: Plan, shape: PulseShape): void {
  const { hz } = shape;
  const share = Math.min(0.8, (draft.meanA - shape.baseA) / (shape.peakA - shape.baseA));
  const topS = Math.max(0.0004, share / hz - (shape.riseS + shape.fallS) / 2);
  // Clock: exact, or led by the arc length (own choice); one in seven swells at 1-4 Hz.
  const jitter = dice.chance(0.5) ? dice.ratio(0.0005, 0.004) : dice.ratio(0.004, 0.02);
  const sway = dice.chance(0.5) ? dice.ratio(0.002, 0.008) : dice.ratio(0.008, 0.04);
  const swell = dice.chance(0.14) ? dice.between(0.08, 0.3) : 0;
  const swellHz = dice.between(1, 4);
  // 7 in 10 one drop a pulse; else one in two pulses, or a second small drop.
  const habit = dice.next();
  const missing =
    habit < 0.7 ? dice.between(0, 0.05) : habit < 0.85 ? dice.between(0.3, 0.55) : 0.02;
  const second = habit >= 0.85 ? dice.between(0.4, 0.9) : 0.02;
  const throwS = dice.between(0.6, 1.1);
  // A short arc touches between pulses: 1 in 5 arcs.
  const touching = dice.chance(0.2) ? dice.ratio(0.5, 9) : dice.ratio(0.01, 0.2);
  const wireMm = draft.setup.wireDiameterMm;
  const perPulse = 1 - missing + second * 0.3;
  const size = Math.cbrt(((6 / Math.PI) * draft.meltMm3PerS) / (hz * perPulse)) / wireMm;
  plan.dropMm = size * wireMm;

  let t = settledS(plan);
  let touchS = t + dice.wait(1 / touching, 1);
  for (;;) {
    const slow = Math.exp(sway * plan.wander.at(t)) * (1 + jitter * dice.bell());
    const turn = 1 + swell * Math.sin(2 * Math.PI * swellHz * t);
    const periodS = slow / (hz * turn);
    const fallS = t + shape.riseS + topS;
    if (t + periodS > plan.durationS - 0.006) break;
    plan.pulses.push({ startS: t, fallS });
    const leaveS = t + (shape.riseS + topS) * throwS * dice.around(1, 0.08);
    if (!dice.chance(missing)) {
      plan.drops.push({ timeS: leaveS, size: size * dice.around(1, 0.06) });
      const again = leaveS + dice.between(0.0006, 0.0015);
      if (dice.chance(second) && again < t + periodS) {
        plan.drops.push({ timeS: again, size: size * 0.65 });
      }
    }
    const tail = fallS + shape.fallS + 0.0004;
    if (t > touchS && tail + 0.001 < t + periodS) {
      const room = Math.min(0.0025, t + periodS - tail - 0.0004);
      const startS = tail + dice.between(0, 0.3) * (t + periodS - tail - room);
      plan.shorts.push({ startS, endS: startS + room * dice.between(0.4, 0.95), peakRatio: 0.9 });
      touchS = t + dice.wait(1 / touching, 1);
    }
    t += periodS;
  }
  plan.drops.sort((a, b) => a.timeS - b.timeS);
}
