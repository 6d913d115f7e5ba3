import type {
  ForeignArc,
  ForeignLog,
  ForeignMode,
  ForeignOther,
  ForeignRecording,
} from '../world.js';
import { makeOther, OTHERS } from './background.js';
import { crossMetal } from './crossing.js';
import { addTo, rms, scaleBy } from './filters.js';
import { drawGear, type Gear, modesOf } from './gear.js';
import { drawLog } from './log.js';
import { hear, writeDown } from './microphone.js';
import { nameArc } from './name.js';
import { drawPlan, type Plan } from './plan.js';
import { Dice, mixSeeds } from './random.js';
import { soundRateHz, takeDown } from './recording.js';
import { placeInRoom } from './room.js';
import { voiceArc } from './voice.js';

/** One weld of a shop: its arc, the sound of it, and a log of the same arc by another clock. */
export interface ForeignWeld {
  arc: ForeignArc;
  recording: ForeignRecording;
  log: ForeignLog;
  /**
   * Sound time minus log time of the same event, at the start of the arc: an event `t` seconds
   * after it lies at
   * `recording.arcStartS + t` in the sound and at `log.arcStartS + t * (1 + driftPpm / 1e6)` in the
   * log.
   */
  offsetS: number;
  /** How much faster the log's clock runs than the sound's, parts per million, within 50. */
  driftPpm: number;
}

/** One machine, room and microphone, one or two wires, gases and welders. */
export interface ForeignShop {
  name: string;
  description: string;
  /** Modes that the wires, gases and the machine of this shop can do. */
  modes: ForeignMode[];
  /** Modes in turn of `weldSeed % 4`; one that the shop lacks is replaced by one that it has. */
  weld(weldSeed: number, durationS?: number): ForeignWeld;
  /**
   * A sound of this shop, by its microphone, in which no arc burns; kinds in turn of `seed % 8`.
   */
  other(seed: number): ForeignOther;
}

const MODES: ForeignMode[] = ['short-circuit', 'globular', 'spray', 'pulsed-spray'];

function turn(seed: number, count: number): number {
  return ((Math.floor(seed) % count) + count) % count;
}

/** Settings that give the wanted mode clearly: a welder tries, listens, and sets again. */
function settle(gear: Gear, wanted: ForeignMode, seed: number): { plan: Plan; metalSeed: number } {
  const combos = gear.combos.filter((c) => modesOf(c, gear.machine).includes(wanted));
  for (let attempt = 0; ; attempt++) {
    const dice = new Dice(seed, `plan ${attempt}`);
    const plan = drawPlan(gear, dice.pick(combos), wanted, dice);
    const metalSeed = mixSeeds(seed, attempt);
    if (attempt >= 7) return { plan, metalSeed };
    const trial = nameArc(crossMetal(plan, gear.machine, 0.9, metalSeed), plan, 0.9, 0.35);
    if (trial.clear && trial.truth.mode === wanted) return { plan, metalSeed };
  }
}

function makeWeld(
  gear: Gear,
  modes: ForeignMode[],
  weldSeed: number,
  durationS: number,
): ForeignWeld {
  const asked = MODES[turn(weldSeed, 4)] ?? 'short-circuit';
  const other = modes[turn(Math.floor(weldSeed / 4), modes.length)] ?? asked;
  const seed = mixSeeds(gear.seed, weldSeed);
  const { plan, metalSeed } = settle(gear, modes.includes(asked) ? asked : other, seed);
  const seen = crossMetal(plan, gear.machine, durationS, metalSeed);
  const arcS = seen.voltageV.length / seen.rateHz;
  const rateHz = soundRateHz(gear);
  const arc: ForeignArc = {
    seed: weldSeed,
    truth: nameArc(seen, plan, arcS, 0).truth,
    setup: {
      material: plan.combo.material,
      wireDiameterMm: plan.combo.wireMm,
      gas: plan.combo.gas,
      setVoltageV: Math.round(plan.setV * 10) / 10,
      wireFeedMPerMin: Math.round(plan.feedMmPerS * 0.6) / 10,
      stickOutMm: Math.round(plan.stickOutMm),
    },
    durationS: arcS,
    trace: { sampleRateHz: seen.rateHz, voltageV: seen.voltageV, currentA: seen.currentA },
    dry: voiceArc(seen, plan, gear.bodies, gear.machine, rateHz, seed),
  };
  const recording = takeDown(arc, gear, new Dice(seed, 'recording'));
  const { log, driftPpm } = drawLog(arc, plan, gear, new Dice(seed, 'log'));
  return { arc, recording, log, offsetS: recording.arcStartS - log.arcStartS, driftPpm };
}

function makeNoArc(gear: Gear, seed: number): ForeignOther {
  const kind = OTHERS[turn(seed, OTHERS.length)] ?? 'fan';
  const dice = new Dice(mixSeeds(gear.seed, seed), 'other');
  const rateHz = gear.microphone.rateHz;
  const near = makeOther(kind, gear, 4 * rateHz, rateHz, dice);
  const sound = placeInRoom(near, gear.room, dice.scale(0.5, 4), rateHz);
  addTo(sound, makeOther('compressor', gear, sound.length, rateHz, dice), gear.hum.share);
  hear(sound, gear.microphone, rateHz);
  scaleBy(sound, 10 ** (dice.between(-36, -22) / 20) / Math.max(1e-9, rms(sound)));
  const volume = 10 ** (dice.between(-14, 2) / 20);
  const samples = writeDown(sound, gear.microphone, rateHz, volume);
  return { seed, kind, sampleRateHz: rateHz, samples };
}

/**
 * Draws the shop of a seed; the same seed gives the same shop, and each weld of it the same weld.
 */
export function shop(shopSeed: number): ForeignShop {
  const gear = drawGear(shopSeed);
  const modes = MODES.filter((m) => gear.combos.some((c) => modesOf(c, gear.machine).includes(m)));
  const wires = gear.combos.map((c) => `${c.material} ${c.wireMm} mm in ${c.gas}`).join(' and ');
  const source = { choke: 'choke rectifier', inverter: 'inverter', pulse: 'pulsing inverter' };
  return {
    name: `shop ${shopSeed}`,
    description:
      `${gear.kind}, ${gear.microphone.rateHz} Hz; ${source[gear.machine.kind]}; ${wires}; ` +
      `${gear.habits.length} welder(s); log at ${gear.log.rateHz} Hz; modes: ${modes.join(', ')}`,
    modes,
    weld: (weldSeed, durationS = 4) => makeWeld(gear, modes, weldSeed, durationS),
    other: (seed) => makeNoArc(gear, seed),
  };
}
