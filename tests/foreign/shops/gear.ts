import type { ForeignMode, ForeignSetup } from '../world.js';
import { Dice } from './random.js';

/** A wire on its spool and the gas that goes with it. */
export interface Combo {
  material: ForeignSetup['material'];
  wireMm: number;
  gas: string;
  /** Per cent in the argon. */
  co2: number;
  /** Current above which drops get small at once, A; null where they never do. */
  sprayFromA: number | null;
}

export interface Machine {
  kind: 'choke' | 'inverter' | 'pulse';
  slopeOhm: number;
  chokeH: number;
  cableOhm: number;
  /** Share of the set volts that rides on them as rectifier ripple. */
  ripple: number;
  rippleHz: number;
  /** What the pulse program changes to hold the arc's length. */
  holdsBy: 'rate' | 'base';
  rampAPerS: number;
}

/** A welder's habits: how long the wire sticks out, how hot the setting, how calm the hand. */
export interface Habit {
  stickOutMm: number;
  voltsBias: number;
  handMm: number;
  handHz: number;
  poolHz: number;
}

/** What rings when the arc hits the air: gas cloud, nozzle, sheet. */
export interface Bodies {
  clickS: number;
  cloud: { hz: number; q: number; share: number };
  nozzle: { hz: number; q: number; share: number };
  sheet: { hz: number; q: number; share: number }[];
  jet: { hz: number; q: number; tiltHz: number };
}

export interface Room {
  rt60S: number;
  /** Share of the reverberant field at 0.5 m. */
  wet: number;
  damping: number;
  sizeM: number;
  bounces: { delayS: number; gain: number }[];
}

export interface Microphone {
  rateHz: 44100 | 48000 | 16000;
  lowHz: number;
  highHz: number;
  resonance: { hz: number; q: number; gainDb: number } | null;
  gainControl: { attackS: number; releaseS: number; clipAt: number } | null;
  coder: { topHz: number; noiseDb: number } | null;
}

export interface Gear {
  seed: number;
  kind: (typeof KINDS)[number];
  mainsHz: number;
  combos: Combo[];
  machine: Machine;
  habits: Habit[];
  bodies: Bodies;
  room: Room;
  microphone: Microphone;
  /** Steady machine sound, as a share of the background; the background under the arc, dB. */
  hum: { hz: number; share: number };
  snrDb: [number, number];
  log: { rateHz: number; bandHz: number; bits: number; noiseV: number; noiseA: number };
}

/** The ear of the shop in turn of its seed; half of them awkward. own choice. */
export const KINDS = [
  'plain microphone',
  'microphone ringing at 3 kHz',
  'phone with gain control',
  'plain microphone, close',
  'lossy files',
  'reverberant hall',
  'compressor hum',
  'plain microphone, bright',
] as const;

// Transition currents on 98/2 follow 33 + 156 d (arithmetic on the published handbook table), one
// per cent
// more for each per cent of CO2; stainless +8 A and aluminium 95 to 180 A from the same table.
function combo(material: Combo['material'], wireMm: number, gas: string, co2: number): Combo {
  const steel = (33 + 156 * wireMm) * (1 + 0.01 * co2) + (material === 'stainless' ? 8 : 0);
  const sprayFromA = material === 'aluminium' ? 15 + 104 * wireMm : steel;
  return { material, wireMm, gas, co2, sprayFromA: co2 > 22 ? null : sprayFromA };
}

function drawCombo(dice: Dice): Combo {
  const roll = dice.unit();
  if (roll < 0.16) return combo('aluminium', dice.pick([1.0, 1.2]), 'Ar', 0);
  if (roll < 0.28) return combo('stainless', dice.pick([0.9, 1.0, 1.2]), 'Ar+2CO2', 2);
  const wire = dice.pick([0.8, 0.9, 1.0, 1.2, 1.2]);
  if (roll < 0.45) return combo('steel', wire, 'CO2', 100);
  const co2 = dice.pick([8, 10, 15, 18, 18, 20]);
  return combo('steel', wire, `Ar+${co2}CO2`, co2);
}

/** Modes this wire and gas can do on this machine, in the order in which welds come. */
export function modesOf(c: Combo, machine: Machine): ForeignMode[] {
  const modes: ForeignMode[] = [];
  if (c.material !== 'aluminium') modes.push('short-circuit');
  modes.push('globular');
  if (c.sprayFromA !== null) modes.push('spray');
  if (c.sprayFromA !== null && machine.kind === 'pulse') modes.push('pulsed-spray');
  return modes;
}

function drawHabit(dice: Dice, poolHz: number): Habit {
  return {
    stickOutMm: dice.between(10, 19), // own choice; 6-20 mm is what shops use
    voltsBias: dice.between(-0.6, 0.6), // own choice, well inside the 2 V of a good zone
    handMm: dice.between(0.1, 0.6), // own choice
    handHz: dice.between(0.4, 2.5), // own choice
    poolHz: poolHz * dice.spread(0.15),
  };
}

function drawMachine(dice: Dice, mainsHz: number): Machine {
  const kind = dice.pick(['choke', 'inverter', 'pulse', 'pulse', 'pulse'] as const);
  return {
    kind,
    // common practice
    slopeOhm: kind === 'choke' ? dice.between(0.016, 0.028) : dice.between(0.008, 0.018),
    chokeH: dice.between(140e-6, 380e-6), // common practice 100-500 uH
    cableOhm: dice.between(0.003, 0.008), // 2-3 V at 500 A on 10-15 m, published cable table
    ripple: kind === 'choke' ? dice.between(0.02, 0.06) : dice.between(0, 0.008), // own choice
    // six-pulse or single phase, from memory
    rippleHz: dice.chance(0.8) ? 6 * mainsHz : 2 * mainsHz,
    holdsBy: dice.pick(['rate', 'base'] as const),
    rampAPerS: dice.scale(2e5, 8e5), // own choice
  };
}

function drawBodies(dice: Dice): Bodies {
  const sheets = 2 + dice.whole(2);
  return {
    // published: back to zero about 25 us after the rise; own spread
    clickS: dice.scale(30e-6, 80e-6),
    cloud: { hz: dice.scale(1300, 2600), q: dice.between(0.6, 1.1), share: dice.between(0.7, 1.3) },
    // A gas nozzle is a stopped pipe of 20-35 mm with its end correction; own choice.
    nozzle: { hz: 343 / (4 * dice.between(0.026, 0.044)), q: dice.between(3, 8), share: 0.5 },
    sheet: Array.from({ length: sheets }, () => ({
      hz: dice.scale(350, 1900),
      q: dice.between(8, 30),
      share: dice.between(0.05, 0.25),
    })),
    jet: { hz: dice.scale(1600, 5500), q: dice.between(0.35, 0.7), tiltHz: dice.between(250, 700) },
  };
}

/** Everything that does not change from weld to weld. */
export function drawGear(seed: number): Gear {
  const dice = new Dice(seed, 'gear');
  const kind = KINDS[((seed % KINDS.length) + KINDS.length) % KINDS.length] ?? 'plain microphone';
  const mainsHz = dice.chance(0.7) ? 50 : 60;
  const machine = drawMachine(dice, mainsHz);
  const combos = [drawCombo(dice)];
  if (dice.chance(0.6)) combos.push(drawCombo(dice));
  const poolHz = dice.between(55, 120); // published: tens of hertz to over 100
  const habits = Array.from({ length: 1 + dice.whole(2) }, () => drawHabit(dice, poolHz));
  const hall = kind === 'reverberant hall';
  const phone = kind === 'phone with gain control';
  return {
    seed,
    kind,
    mainsHz,
    combos,
    machine,
    habits,
    bodies: drawBodies(dice),
    room: {
      rt60S: hall ? dice.between(1.2, 2.4) : dice.between(0.25, 0.8), // halls 1-3 s, from memory
      wet: hall ? dice.between(0.6, 1.1) : dice.between(0.08, 0.3),
      damping: dice.between(0.15, 0.45),
      sizeM: hall ? dice.between(14, 30) : dice.between(3, 8),
      bounces: Array.from({ length: 3 }, () => ({
        delayS: dice.between(0.0008, 0.012),
        gain: dice.between(-0.35, 0.45),
      })),
    },
    microphone: {
      rateHz: kind === 'lossy files' && dice.chance(0.5) ? 16000 : dice.pick([44100, 48000, 48000]),
      lowHz: phone ? dice.between(90, 220) : dice.between(25, 110),
      highHz: kind.endsWith('bright') ? 19000 : dice.between(9000, 18000),
      resonance:
        kind === 'microphone ringing at 3 kHz'
          ? { hz: dice.between(2700, 3400), q: dice.between(4, 9), gainDb: dice.between(14, 20) }
          : { hz: dice.scale(2000, 9000), q: dice.between(0.8, 2), gainDb: dice.between(-4, 5) },
      gainControl: phone
        ? {
            attackS: dice.scale(0.004, 0.03),
            releaseS: dice.scale(0.15, 1.2),
            clipAt: dice.between(1.2, 3),
          }
        : null,
      coder:
        kind === 'lossy files'
          ? // 32-48 kbit/s, published
            { topHz: dice.pick([5500, 7000, 7500]), noiseDb: dice.between(9, 16) }
          : null,
    },
    hum: {
      // asynchronous motor, two or one pole pair; own choice
      hz: mainsHz * dice.pick([0.49, 0.485, 0.98]),
      share: kind === 'compressor hum' ? dice.between(0.85, 0.97) : dice.between(0.02, 0.3),
    },
    snrDb: kind === 'compressor hum' ? [2, 9] : [8, 26],
    log: {
      rateHz: dice.pick([5000, 10000, 20000]),
      bandHz: dice.scale(1500, 6000),
      bits: dice.pick([10, 12, 14]),
      noiseV: dice.scale(0.02, 0.2),
      noiseA: dice.scale(0.4, 4),
    },
  };
}
