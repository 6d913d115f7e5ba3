import { ArcError, type Random } from '../../../core/index.js';
import { COMMON_NOISE_GROUPS, NOISE_GROUPS, type NoiseKind } from '../noise/noise.js';
import { drawAll, drawFrom } from '../ranges.js';
import { CHAIN_RECIPES, type ChainFamilyRecipe } from './chain-recipe.js';
import type { SoundChain } from './degrade.js';
import type { ClipSpec, GainControlSpec, MicrophoneSpec } from './device.js';
import { drawLossy } from './lossy.js';
import type { RoomSpec } from './room.js';
import type { SuppressSpec } from './suppress.js';

/**
 * Families of ways a sound is spoilt: a quiet good recording; a workshop; a phone with gain control,
 * clipping; a call with noise suppression and a narrow band; any of these kept as a lossy file.
 */
export const CHAIN_FAMILIES = ['studio', 'shop', 'phone', 'call', 'coded'] as const;
export type ChainFamily = (typeof CHAIN_FAMILIES)[number];

export interface ChainOptions {
  family: string;
  /** Signal-to-noise in the band while the arc burns; drawn by the family when left out. */
  snrDb?: number;
  /** Groups of {@link NOISE_GROUPS} that may be drawn from; {@link COMMON_NOISE_GROUPS} by default. */
  noiseGroups?: readonly string[];
  /** Codec names that may be drawn; none by default (they need the host's encoder). */
  codecs?: readonly string[];
}

/** A random chain of the family. Throws `unknown-family` for a name that is not one. */
export function drawChain(random: Random, options: ChainOptions): SoundChain {
  const family = options.family as ChainFamily;
  if (!CHAIN_FAMILIES.includes(family)) {
    throw new ArcError({
      code: 'unknown-family',
      what: `There is no chain family "${options.family}".`,
      expected: `one of ${CHAIN_FAMILIES.join(', ')}`,
      todo: 'Choose one of these.',
    });
  }
  if (family === 'coded') return drawCoded(random, options);
  const recipe: ChainFamilyRecipe = CHAIN_RECIPES[family];
  const { room, gainControl, suppress } = recipe;
  const happens = (share: number): boolean => random.next() < share;
  return {
    family,
    seed: random.integer(0, 2 ** 31 - 1),
    room: happens(room.share) ? drawRoom(random, room) : null,
    noises: drawNoises(random, options, recipe.noises),
    snrDb: options.snrDb ?? drawFrom(random, recipe.noises.snrDb),
    levelDb: drawFrom(random, recipe.levelDb),
    microphone: drawMicrophone(random, recipe.microphone),
    gainControl: happens(gainControl.share) ? drawGainControl(random, gainControl) : null,
    clip: happens(recipe.clip.share) ? drawClip(random, recipe.clip) : null,
    suppress: happens(suppress.share) ? drawSuppress(random, suppress) : null,
    outRateHz: drawFrom(random, recipe.outRateHz),
    bits: drawFrom(random, recipe.bits),
    lossy: null,
    codec: codecs(options).length > 0 ? random.pick(codecs(options)) : null,
  };
}

/** Quiet and shop recordings in half of the cases, phones and calls in the other. */
function drawCoded(random: Random, options: ChainOptions): SoundChain {
  const lossy = drawLossy(random);
  const family = random.pick(Object.keys(CHAIN_RECIPES));
  return { ...drawChain(random, { ...options, family }), family: 'coded', lossy };
}

function codecs(options: ChainOptions): readonly string[] {
  return options.codecs ?? [];
}

function drawRoom(random: Random, recipe: ChainFamilyRecipe['room']): RoomSpec {
  const { share: _, ...ranges } = recipe;
  return drawAll(random, ranges);
}

function drawNoises(
  random: Random,
  options: ChainOptions,
  recipe: ChainFamilyRecipe['noises'],
): SoundChain['noises'] {
  const groups = options.noiseGroups ?? COMMON_NOISE_GROUPS;
  const out: SoundChain['noises'] = [
    { kind: 'room-noise', share: drawFrom(random, recipe.roomShare) },
  ];
  const count = drawFrom(random, recipe.count);
  for (let k = 0; k < count && groups.length > 0; k++) {
    const kinds: readonly NoiseKind[] = NOISE_GROUPS[random.pick(groups)] ?? ['room-noise'];
    out.push({ kind: random.pick(kinds), share: drawFrom(random, recipe.share) });
  }
  return out;
}

function drawMicrophone(random: Random, recipe: ChainFamilyRecipe['microphone']): MicrophoneSpec {
  const peaks = Array.from({ length: drawFrom(random, recipe.peakCount) }, () => ({
    hz: drawFrom(random, recipe.peakHz),
    q: drawFrom(random, recipe.peakQ),
    gainDb: drawFrom(random, recipe.peakDb),
  }));
  return {
    lowCutHz: drawFrom(random, recipe.lowCutHz),
    highCutHz: random.next() < recipe.highCutShare ? drawFrom(random, recipe.highCutHz) : NO_CUT_HZ,
    peaks,
    noise: 10 ** (drawFrom(random, recipe.noiseDb) / 20),
  };
}

/** Above all that is heard. */
const NO_CUT_HZ = 24_000;

function drawGainControl(
  random: Random,
  recipe: ChainFamilyRecipe['gainControl'],
): GainControlSpec {
  const releaseS = drawFrom(random, recipe.releaseS);
  return {
    releaseS,
    attackS: releaseS * drawFrom(random, recipe.attackOverRelease),
    targetDb: drawFrom(random, recipe.targetDb),
    maxGainDb: drawFrom(random, recipe.maxGainDb),
  };
}

function drawClip(random: Random, recipe: ChainFamilyRecipe['clip']): ClipSpec {
  return {
    kind: random.next() < recipe.hardShare ? 'hard' : 'soft',
    at: drawFrom(random, recipe.at),
    sigma: drawFrom(random, recipe.sigma),
  };
}

function drawSuppress(random: Random, recipe: ChainFamilyRecipe['suppress']): SuppressSpec {
  const { share: _, ...ranges } = recipe;
  return drawAll(random, ranges);
}
