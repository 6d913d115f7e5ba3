import type { ForeignArc, ForeignLog, Logger } from '../world.js';
import { Dice } from './dice.js';
import { Biquad } from './filters.js';

/** How one logger sees the arc. */
interface Chain {
  rateHz: number;
  bandwidthHz: number;
  bits: number;
  noiseV: number;
  noiseA: number;
  offsetV: number;
  offsetA: number;
  gainV: number;
  gainA: number;
  hum: { v: number; a: number; hz: number };
  /** Resistance between measuring point and arc that adds to the voltage, ohm. */
  cableOhm: number;
  /** Runs of lost samples a second. */
  lossPerS: number;
  current: boolean;
}

function drawChain(dice: Dice, logger: Logger): Chain {
  const mains = dice.pick([50, 60]);
  const fine: Chain = {
    rateHz: 20000,
    bandwidthHz: dice.ratio(4000, 9000),
    bits: 16,
    noiseV: dice.ratio(0.01, 0.08),
    noiseA: dice.ratio(0.3, 3),
    offsetV: 0.05 * dice.bell(),
    offsetA: dice.bell(),
    gainV: 1 + 0.003 * dice.bell(),
    gainA: 1 + 0.01 * dice.bell(),
    hum: { v: 0, a: 0, hz: mains },
    cableOhm: 0,
    lossPerS: 0,
    current: true,
  };
  if (logger === 'both-20k') return fine;
  if (logger === 'voltage-5k') {
    return {
      ...fine,
      rateHz: 5000,
      bandwidthHz: dice.ratio(1200, 2400),
      bits: 12,
      noiseV: dice.ratio(0.02, 0.15),
      hum: { v: dice.ratio(0.05, 0.5), a: 0, hz: mains },
      current: false,
    };
  }
  return {
    ...fine,
    rateHz: dice.pick([5000, 10000, 20000]),
    bandwidthHz: dice.ratio(500, 2400),
    bits: dice.pick([10, 12, 12, 14]),
    noiseV: dice.ratio(0.05, 0.4),
    noiseA: dice.ratio(2, 10),
    offsetV: 0.3 * dice.bell(),
    offsetA: 4 * dice.bell(),
    gainV: 1 + 0.015 * dice.bell(),
    gainA: 1 + 0.04 * dice.bell(),
    hum: { v: dice.ratio(0.1, 0.8), a: dice.ratio(1, 8), hz: mains * dice.pick([1, 2, 6]) },
    // Cable: about 1 V at 100 A to 2-3 V at 500 A for 10-15 m (welding-cable table).
    cableOhm: dice.ratio(0.003, 0.015),
    lossPerS: dice.ratio(0.2, 5),
  };
}

/** Loses runs of samples: the last value stands until the next that came through. */
function loseSamples(dice: Dice, chain: Chain, length: number): Uint8Array {
  const lost = new Uint8Array(length);
  if (chain.lossPerS === 0) return lost;
  let at = dice.wait(chain.rateHz / chain.lossPerS, 1);
  while (at < length) {
    const run = Math.ceil(dice.ratio(1, 0.004 * chain.rateHz));
    lost.fill(1, Math.floor(at), Math.floor(at) + run);
    at += run + dice.wait(chain.rateHz / chain.lossPerS, 1);
  }
  return lost;
}

/** Logs an arc: open circuit before it, nothing after it, and the faults of the logger. */
export function log(arc: ForeignArc, logger: Logger, seed: number): ForeignLog {
  const dice = new Dice(seed, `log ${logger} ${arc.seed}`);
  const chain = drawChain(dice, logger);
  const from = arc.trace.sampleRateHz;
  const beforeS = dice.between(0.1, 0.8);
  const openS = Math.min(beforeS, dice.between(0.02, 0.4));
  const openV = dice.between(32, 75);
  const afterS = dice.between(0.1, 0.6);
  const dieS = dice.ratio(0.002, 0.08);
  const lead = Math.round(beforeS * from);
  const burn = arc.trace.voltageV.length;
  const length = lead + burn + Math.round(afterS * from);
  const volts = new Float32Array(length);
  const amps = new Float32Array(length);
  // When the trigger is let go the open circuit stands for a moment and dies away.
  const endV = dice.chance(0.6) ? openV * dice.between(0.3, 0.9) : 0;
  for (let k = 0; k < length; k++) {
    const n = k - lead;
    if (n < 0) volts[k] = k > lead - openS * from ? openV : 0;
    else if (n < burn) {
      const i = arc.trace.currentA[n] as number;
      amps[k] = i;
      volts[k] = (arc.trace.voltageV[n] as number) + chain.cableOhm * i;
    } else volts[k] = endV * Math.exp(-(n - burn) / (dieS * from));
  }
  const smoothV = Biquad.low(chain.bandwidthHz, from);
  const smoothA = Biquad.low(Math.min(9000, 1.5 * chain.bandwidthHz), from);
  smoothV.run(volts);
  smoothA.run(amps);

  const count = Math.floor((length * chain.rateHz) / from);
  const voltageV = new Float32Array(count);
  const currentA = new Float32Array(count);
  const lost = loseSamples(dice, chain, count);
  const stepV = 100 / 2 ** chain.bits;
  const stepA = 1000 / 2 ** chain.bits;
  const phase = dice.between(0, 2 * Math.PI);
  for (let k = 0; k < count; k++) {
    if (lost[k] === 1 && k > 0) {
      voltageV[k] = voltageV[k - 1] as number;
      currentA[k] = currentA[k - 1] as number;
      continue;
    }
    const place = (k * from) / chain.rateHz;
    const n = Math.min(length - 2, Math.floor(place));
    const part = place - n;
    const read = (x: Float32Array): number =>
      (x[n] as number) * (1 - part) + (x[n + 1] as number) * part;
    const turn = phase + (2 * Math.PI * chain.hum.hz * k) / chain.rateHz;
    const v = chain.gainV * read(volts) + chain.offsetV + chain.noiseV * dice.noise();
    const i = chain.gainA * read(amps) + chain.offsetA + chain.noiseA * dice.noise();
    voltageV[k] = Math.round((v + chain.hum.v * Math.sin(turn)) / stepV) * stepV;
    currentA[k] = Math.round((i + chain.hum.a * Math.sin(turn + 1)) / stepA) * stepA;
  }
  return {
    sampleRateHz: chain.rateHz,
    voltageV,
    currentA: chain.current ? currentA : null,
    arcStartS: lead / from,
    arcEndS: (lead + burn) / from,
  };
}
