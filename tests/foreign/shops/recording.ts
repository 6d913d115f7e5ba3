import type { EventKind, ForeignArc, ForeignRecording } from '../world.js';
import { dayNoise } from './background.js';
import { addTo, type Line, rms, scaleBy, thirdRate } from './filters.js';
import type { Gear } from './gear.js';
import { hear, writeDown } from './microphone.js';
import type { Dice } from './random.js';
import { placeInRoom } from './room.js';

/** Rate at which sound is made: a file of 16 kHz is taken from three times that. */
export function soundRateHz(gear: Gear): number {
  return gear.microphone.rateHz === 16000 ? 48000 : gear.microphone.rateHz;
}

/**
 * The arc as the shop's microphone hears it on that day. Distance, level and the background under
 * the arc are
 * drawn without regard to the mode; the arc is brought to a drawn level, as a person sets the gain.
 */
export function takeDown(arc: ForeignArc, gear: Gear, dice: Dice): ForeignRecording {
  const rateHz = soundRateHz(gear);
  const mic = gear.microphone;
  const close = gear.kind === 'plain microphone, close';
  const distanceM = close ? dice.scale(0.15, 0.35) : dice.scale(0.3, 1.3);
  const start = Math.round(dice.between(0.4, 1.3) * rateHz);
  const during = arc.dry.hiss.length;
  const length = 3 * Math.floor((start + during + dice.between(0.5, 1.2) * rateHz) / 3);
  const place = (dry: Line): Line =>
    hear(
      placeInRoom(addTo(new Float32Array(length), dry, 1, start), gear.room, distanceM, rateHz),
      mic,
      rateHz,
    );
  const { short, reignition, drop, pulse } = arc.dry.events;
  const heard: Record<EventKind, Line> = {
    short: place(short),
    reignition: place(reignition),
    drop: place(drop),
    pulse: place(pulse),
  };
  let rest = place(arc.dry.hiss);
  const kinds = Object.keys(heard) as EventKind[];
  const sum = Float32Array.from(rest);
  for (const k of kinds) addTo(sum, heard[k]);
  const loud = rms(sum, start, start + during);
  // Own choice: -34 to -25 dB under full scale leaves room for the cracks of a dip arc.
  const level = 10 ** (dice.between(-34, -25) / 20);
  const gain = level / Math.max(1e-12, loud);
  const [low, high] = gear.snrDb;
  const noise = hear(dayNoise(gear, length, rateHz, dice), mic, rateHz);
  const under = 10 ** (-dice.between(low, high) / 20);
  scaleBy(noise, (level * under) / Math.max(1e-12, rms(noise)));
  for (let n = 0; n < length; n++) noise[n] = (noise[n] ?? 0) + 1e-4 * (dice.unit() - 0.5);
  addTo(scaleBy(rest, gain), noise);
  for (const k of kinds) scaleBy(heard[k], gain);
  if (mic.rateHz === 16000) {
    rest = thirdRate(rest);
    for (const k of kinds) heard[k] = thirdRate(heard[k]);
  }
  const linear = Float32Array.from(rest);
  for (const k of kinds) addTo(linear, heard[k]);
  return {
    sampleRateHz: mic.rateHz,
    samples: writeDown(linear, mic, mic.rateHz, 10 ** (dice.between(-14, 2) / 20)),
    arcStartS: start / rateHz,
    arcEndS: (start + during) / rateHz,
    linear: { events: heard, rest },
  };
}
