import type { EventKind, ForeignArc } from '../world.js';
import type { Crossing } from './crossing.js';
import { addTo, filter, isSilent, type Line } from './filters.js';
import type { Bodies, Machine } from './gear.js';
import type { Plan } from './plan.js';
import { Dice } from './random.js';

/** Strength of the jet against the pushes of events; own choice. */
const JET = 0.3;

/**
 * Lays a push of `width` samples (half a sine) and of area `strength` at a time between samples.
 */
function push(onto: Line, at: number, width: number, strength: number): void {
  const wide = Math.max(2, width);
  const first = Math.ceil(at);
  const last = Math.min(onto.length - 1, Math.floor(at + wide));
  const height = (strength * Math.PI) / 2 / wide;
  for (let n = Math.max(0, first); n <= last; n++) {
    onto[n] = (onto[n] ?? 0) + height * Math.sin((Math.PI * (n - at)) / wide);
  }
}

/**
 * What the air hears of a push: the push itself, then cloud, nozzle and sheet that ring from it.
 */
function ring(pushes: Line, bodies: Bodies, rateHz: number): Line {
  if (isSilent(pushes)) return pushes;
  const heard = filter(Float32Array.from(pushes), 'high', 300, 0.7, rateHz);
  for (const body of [bodies.cloud, bodies.nozzle, ...bodies.sheet]) {
    addTo(
      heard,
      filter(Float32Array.from(pushes), 'band', body.hz, body.q, rateHz),
      2 * body.share,
    );
  }
  return heard;
}

/** Gas that an event blows off: coloured noise that starts at the event and dies away. */
function blow(
  onto: Line,
  blasts: Line,
  lastsS: number,
  bodies: Bodies,
  rateHz: number,
  dice: Dice,
): Line {
  if (isSilent(blasts)) return onto;
  const keep = Math.exp(-1 / (lastsS * rateHz));
  const gas = new Float32Array(blasts.length);
  let strength = 0;
  for (let n = 0; n < gas.length; n++) {
    strength = strength * keep + (blasts[n] ?? 0);
    if (strength > 1e-4) gas[n] = strength * 3.46 * (dice.unit() - 0.5);
  }
  return addTo(onto, jetColour(gas, bodies, rateHz), JET);
}

/** Broad hump of the jet with a foot in the lows. */
function jetColour(white: Line, bodies: Bodies, rateHz: number): Line {
  const high = filter(Float32Array.from(white), 'band', bodies.jet.hz, bodies.jet.q, rateHz);
  return addTo(high, filter(white, 'band', bodies.jet.tiltHz * 3, 0.4, rateHz), 0.6);
}

/** Electrical power around a time: mean over `spanS` from there on, W. */
function powerW(seen: Crossing, atS: number, spanS: number): number {
  const from = Math.max(0, Math.round(atS * seen.rateHz));
  const to = Math.min(seen.voltageV.length, from + Math.max(1, Math.round(spanS * seen.rateHz)));
  let sum = 0;
  for (let n = from; n < to; n++) sum += (seen.voltageV[n] ?? 0) * (seen.currentA[n] ?? 0);
  return sum / Math.max(1, to - from);
}

/** The dry sound: each kind of event by itself, and the jet's hiss that the events shake. */
export function voiceArc(
  seen: Crossing,
  plan: Plan,
  bodies: Bodies,
  machine: Machine,
  rateHz: number,
  seed: number,
): ForeignArc['dry'] {
  const dice = new Dice(seed, 'voice');
  const length = Math.round((seen.voltageV.length / seen.rateHz) * rateHz);
  const pushes: Record<EventKind, Line> = {
    short: new Float32Array(length),
    reignition: new Float32Array(length),
    drop: new Float32Array(length),
    pulse: new Float32Array(length),
  };
  const shake = new Float32Array(seen.voltageV.length);
  const returns = new Float32Array(length);
  const leaves = new Float32Array(length);
  const blast = (onto: Line, at: number, strength: number) => {
    const n = Math.round(at);
    if (n < length) onto[n] = (onto[n] ?? 0) + strength;
  };
  const click = bodies.clickS * rateHz;
  const ball = (Math.PI / 6) * plan.combo.wireMm ** 3;
  const drops = seen.seen.filter((s) => s.kind === 'drop');
  const heavy = drops.reduce((sum, s) => sum + s.volumeMm3, 0) / Math.max(1, drops.length) / ball;
  // Weights of the kinds against each other and against the hiss are own choice; the main source in
  // dip is
  // the arc's return (published), contact pulls the pressure down (published), drops are faint.
  for (const s of seen.seen) {
    const at = s.atS * rateHz;
    const shakeAt = Math.round(s.atS * seen.rateHz);
    let kick = 0;
    if (s.kind === 'reignition') {
      const jumpW = powerW(seen, s.atS + 1e-4, 2e-4) - powerW(seen, s.atS - 3e-4, 2e-4);
      push(pushes.reignition, at, 2 * click, 8e-4 * Math.max(0, jumpW) * dice.spread(0.25));
      // A bridge does not go in one piece: some crackle after it.
      for (let c = dice.whole(3); c > 0; c--) {
        push(
          pushes.reignition,
          at + dice.between(0.0002, 0.0012) * rateHz,
          click,
          2e-4 * jumpW * dice.unit(),
        );
      }
      blast(returns, at, 1.4e-3 * Math.max(0, jumpW) * dice.spread(0.25));
      kick = 0.4;
    } else if (s.kind === 'short') {
      const lostW = powerW(seen, s.atS - 3e-4, 2e-4) - powerW(seen, s.atS + 1e-4, 2e-4);
      push(pushes.short, at, 5 * click, -5e-4 * Math.max(0, lostW) * dice.spread(0.25));
      kick = -0.5;
    } else if (s.kind === 'drop') {
      // The arc root leaps to the new tip: a small step of power, larger for larger drops.
      const leapW = s.currentA * plan.gradientVPerMm * Math.cbrt(s.volumeMm3) * 0.5;
      push(pushes.drop, at, 6 * click, 4e-3 * leapW * dice.spread(0.3));
      blast(leaves, at, 0.5 * (s.volumeMm3 / ball) * (s.currentA / 200) * dice.spread(0.3));
      kick = 0.2 * dice.spread(0.2);
    } else if (plan.pulse) {
      const { peakA, peakS, baseA } = plan.pulse;
      const swing = peakA - baseA;
      const ramp = (swing / machine.rampAPerS) * rateHz;
      const strength = 1.1e-3 * swing * 24;
      push(pushes.pulse, at, ramp, strength);
      push(pushes.pulse, at + ramp + peakS * rateHz, ramp, -0.6 * strength);
    }
    if (shakeAt < shake.length) shake[shakeAt] = (shake[shakeAt] ?? 0) + kick;
  }
  // Blasts last longer behind large drops; own choice.
  const returned = ring(pushes.reignition, bodies, rateHz);
  blow(returned, returns, dice.between(0.0015, 0.0034), bodies, rateHz, dice);
  const left = ring(pushes.drop, bodies, rateHz);
  blow(
    left,
    leaves,
    dice.between(0.0008, 0.0016) * (0.7 + 0.35 * Math.min(6, heavy)),
    bodies,
    rateHz,
    dice,
  );
  const hiss = jetNoise(seen, plan, bodies, rateHz, shake, dice);
  return {
    sampleRateHz: rateHz,
    events: {
      short: ring(pushes.short, bodies, rateHz),
      reignition: returned,
      drop: left,
      pulse: ring(pushes.pulse, bodies, rateHz),
    },
    hiss,
  };
}

/**
 * A bead that hangs in its own jet screens it, the more the larger it is: share of the jet lost, by
 * the bead
 * that grows evenly from one crossing to the next. Own choice: 0.18 for a bead of the wire's size.
 */
function shieldOf(seen: Crossing, wireMm: number): Line {
  const shield = new Float32Array(seen.voltageV.length);
  let from = 0;
  for (const s of seen.seen) {
    if (s.volumeMm3 <= 0) continue;
    const to = Math.min(shield.length, Math.round(s.atS * seen.rateHz));
    for (let n = from; n < to; n++) {
      const grown = 0.2 + (0.8 * (n - from)) / (to - from);
      const wires = Math.cbrt((6 * s.volumeMm3 * grown) / Math.PI) / wireMm;
      shield[n] = Math.min(0.75, 0.18 * wires * wires);
    }
    from = to;
  }
  return shield;
}

/**
 * Noise of the plasma jet: its strength follows power and current with a lag, and flares after
 * events.
 */
function jetNoise(
  seen: Crossing,
  plan: Plan,
  bodies: Bodies,
  rateHz: number,
  shake: Line,
  dice: Dice,
): Line {
  const shield = shieldOf(seen, plan.combo.wireMm);
  const length = Math.round((seen.voltageV.length / seen.rateHz) * rateHz);
  const white = new Float32Array(length);
  for (let n = 0; n < length; n++) white[n] = dice.gauss();
  const hiss = jetColour(white, bodies, rateHz);
  // Lag of the jet and length of a flare: own choice.
  const flareKeep = Math.exp(-1 / (dice.between(0.0008, 0.0018) * seen.rateHz));
  const lag = 1 / (2.5e-4 * seen.rateHz);
  const strength = new Float32Array(seen.voltageV.length);
  let flare = 0;
  let follow = 0;
  for (let n = 0; n < strength.length; n++) {
    flare = flare * flareKeep + (shake[n] ?? 0);
    const arcV = Math.max(0, (seen.voltageV[n] ?? 0) - 9);
    // In a bridge the jet is gone: the volts over the fall vanish.
    follow += lag * (((seen.currentA[n] ?? 0) / 200) ** 0.8 * (arcV / 13) ** 2 - follow);
    const sway = 1 + 0.8 * Math.tanh((seen.swayMm[n] ?? 0) / plan.combo.wireMm);
    strength[n] = follow * Math.max(0.1, 1 + flare) * sway * (1 - (shield[n] ?? 0));
  }
  const ratio = seen.rateHz / rateHz;
  for (let n = 0; n < length; n++) {
    const at = n * ratio;
    const k = Math.floor(at);
    const low = strength[k] ?? 0;
    hiss[n] = (hiss[n] ?? 0) * JET * (low + (at - k) * ((strength[k + 1] ?? low) - low));
  }
  return hiss;
}
