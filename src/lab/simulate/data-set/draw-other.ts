import { createRandom, type Random } from '../../../core/index.js';
import { CHAIN_RECIPES } from '../devices/chain-recipe.js';
import { CHAIN_FAMILIES, drawChain } from '../devices/draw-chain.js';
import { COMMON_NOISE_GROUPS } from '../noise/noise.js';
import { rms } from '../noise/noise-tools.js';
import { NON_ARC_SOUNDS, simulateNonArc } from '../noise/non-arc.js';
import { drawFrom } from '../ranges.js';
import type { DataSetHead, OtherLine, SwitchLine } from './format.js';
import { toHalves } from './half.js';
import type { ArcSeries } from './series.js';

/** Half of the sounds are switched on and off, as arcs are in the other half of their recordings. */
const SWITCHED_SHARE = 0.5;
/** A neighbour's arc must not teach what an arc is not. */
const GROUPS = COMMON_NOISE_GROUPS.filter((group) => group !== 'arcs');

/** Sound without an arc number `index` of a data set; its kinds come in turn. */
export function drawSetOther(head: DataSetHead, index: number, into: ArcSeries): OtherLine {
  const random = createRandom(`data set ${head.seed} other ${index}`);
  const kind = NON_ARC_SOUNDS[index % NON_ARC_SOUNDS.length]!;
  const seconds = random.uniform(...head.arcS) + random.uniform(0, 1);
  const rateHz = head.soundRateHz;
  const sound = simulateNonArc(kind, random.fork('sound'), rateHz, seconds);
  if (sound.type !== 'sound') throw new RangeError(`${kind} is no sound`);
  const { samples } = sound;
  const switched =
    random.next() < SWITCHED_SHARE ? drawSwitch(random.fork('switch'), seconds) : null;
  if (switched !== null) switchOnAndOff(samples, rateHz, switched);
  const level = rms(samples);
  const halves = toHalves(samples, level > 0 ? level : 1);
  return {
    ...into.sound.add(halves),
    index,
    kind,
    durationS: samples.length / rateHz,
    switched,
    levelDb: drawFrom(random, CHAIN_RECIPES.shop.levelDb),
    chain: drawChain(random.fork('chain'), {
      family: random.pick(CHAIN_FAMILIES),
      noiseGroups: GROUPS,
    }),
  };
}

/** Tools and showers start and stop as well, a valve within a millisecond: a leap alone must not make an arc. */
function drawSwitch(random: Random, seconds: number): SwitchLine {
  return {
    onS: seconds * random.uniform(0.05, 0.4),
    offS: seconds * random.uniform(0.6, 0.97),
    riseS: random.logUniform(0.001, 0.5),
    fallS: random.logUniform(0.001, 0.5),
    restDb: random.uniform(-45, -12),
  };
}

function switchOnAndOff(samples: Float64Array, rateHz: number, spec: SwitchLine): void {
  const rest = 10 ** (spec.restDb / 20);
  for (let i = 0; i < samples.length; i++) {
    const t = i / rateHz;
    const open = Math.max(
      0,
      Math.min(1, (t - spec.onS) / spec.riseS, (spec.offS - t) / spec.fallS),
    );
    samples[i]! *= rest + (1 - rest) * open;
  }
}
