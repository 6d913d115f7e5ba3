import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { ELECTRICAL_FAMILIES } from '../families.js';
import { simulateArc } from '../physics/arc.js';
import { drawScenario } from '../physics/draw.js';
import { drawAcoustics, POWER_FAMILIES } from '../sound/acoustic.js';
import { simulateSound } from '../sound/sound.js';
import { engine, impacts, motor, speech } from './noise-impacts.js';
import {
  compressor,
  fan,
  grinder,
  helicopter,
  mainsHum,
  twoStroke,
  vacuum,
} from './noise-machines.js';
import { alarm, babble, clicks, hammer, music } from './noise-people.js';
import { buzz, grains, jet, strokes } from './noise-textures.js';
import { type NoiseMaker, normalised } from './noise-tools.js';
import { fire, rain, roomNoise, sea, wind } from './noise-weather.js';

/** Another welder's arc some metres away: duller, on and off in its own time. */
const neighbour: NoiseMaker = (random, rateHz, count) => {
  const family = random.pick(ELECTRICAL_FAMILIES);
  const scenario = drawScenario(random, {
    family,
    arcS: Math.max(1, (count / rateHz) * random.uniform(0.5, 1)),
  });
  const run = simulateArc(scenario);
  const acoustic = drawAcoustics(random, { family: random.pick(POWER_FAMILIES), rateHz });
  const sound = simulateSound(run, { ...acoustic, distanceM: random.uniform(3, 12) });
  section('low', rateHz, random.logUniform(2500, 9000)).run(sound);
  const shift = random.integer(0, Math.floor(0.3 * count));
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) out[i] = sound[(i + shift) % sound.length] ?? 0;
  return normalised(out);
};

const silence: NoiseMaker = (_random, _rateHz, count) => new Float64Array(count);

const MAKERS = {
  fan,
  grinder,
  compressor,
  'two-stroke': twoStroke,
  helicopter,
  vacuum,
  'mains-hum': mainsHum,
  rain,
  fire,
  sea,
  wind,
  'room-noise': roomNoise,
  babble,
  music,
  hammer,
  alarm,
  clicks,
  neighbour,
  silence,
  jet,
  grains,
  strokes,
  buzz,
  impacts,
  engine,
  motor,
  speech,
} as const satisfies Record<string, NoiseMaker>;

export type NoiseKind = keyof typeof MAKERS;

/** All sources of sound that are not the arc under test. */
export const NOISE_KINDS = Object.keys(MAKERS) as NoiseKind[];

/** Groups that can be held out whole when a model is judged. `neighbour` is an arc, though not ours. */
export const NOISE_GROUPS: Readonly<Record<string, readonly NoiseKind[]>> = {
  machines: ['fan', 'grinder', 'compressor', 'vacuum', 'mains-hum'],
  engines: ['two-stroke', 'helicopter'],
  weather: ['rain', 'fire', 'sea', 'wind'],
  people: ['babble', 'music', 'hammer', 'alarm', 'clicks'],
  arcs: ['neighbour'],
  tools: ['impacts', 'strokes', 'motor', 'jet', 'grains', 'buzz'],
  traffic: ['engine'],
  talk: ['speech'],
};

/** Groups that a shop mixes with an arc where nothing else is said. */
export const COMMON_NOISE_GROUPS = ['machines', 'engines', 'weather', 'people', 'arcs'] as const;

/** `count` samples of a noise at rms 1 (silence: 0). */
export function makeNoise(
  kind: NoiseKind,
  random: Random,
  rateHz: number,
  count: number,
): Float64Array {
  return MAKERS[kind](random, rateHz, count);
}
