import { ArcError, type Random } from '../../../core/index.js';
import { COMMON_NOISE_GROUPS, NOISE_GROUPS, type NoiseKind } from '../noise/noise.js';
import type { SoundChain } from './degrade.js';
import type { GainControlSpec, MicrophoneSpec } from './device.js';
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
  const studio = family === 'studio';
  const phone = family === 'phone';
  const call = family === 'call';
  const controlled = call || (phone && random.next() < 0.85) || (!studio && random.next() < 0.25);
  const clipped = random.next() < (studio ? 0.02 : phone ? 0.6 : 0.25);
  const snr = studio ? random.uniform(25, 55) : random.uniform(-2, 34);
  return {
    family,
    seed: random.integer(0, 2 ** 31 - 1),
    room: random.next() < (studio ? 0.6 : 0.9) ? drawRoom(random, studio) : null,
    noises: drawNoises(random, options, studio),
    snrDb: options.snrDb ?? snr,
    levelDb: random.uniform(-42, clipped && !controlled ? -4 : -14),
    microphone: drawMicrophone(random, family),
    gainControl: controlled ? drawGainControl(random) : null,
    clip: clipped
      ? { kind: random.pick(['hard', 'hard', 'soft'] as const), at: random.logUniform(0.15, 1) }
      : null,
    suppress: call || (phone && random.next() < 0.35) ? drawSuppress(random) : null,
    outRateHz: call
      ? random.pick([8000, 16000, 16000, 24000, 48000])
      : random.pick(phone ? [16000, 32000, 44100, 48000] : [22050, 32000, 44100, 44100, 48000]),
    bits: studio ? random.pick([16, 24]) : 16,
    lossy: null,
    codec: codecs(options).length > 0 ? random.pick(codecs(options)) : null,
  };
}

/** Quiet and shop recordings in half of the cases, phones and calls in the other. */
function drawCoded(random: Random, options: ChainOptions): SoundChain {
  const lossy = drawLossy(random);
  const family = random.pick(['studio', 'shop', 'phone', 'call']);
  return { ...drawChain(random, { ...options, family }), family: 'coded', lossy };
}

function codecs(options: ChainOptions): readonly string[] {
  return options.codecs ?? [];
}

function drawRoom(random: Random, studio: boolean): RoomSpec {
  return {
    rt60S: random.logUniform(0.2, studio ? 0.8 : 2.5),
    reverberantDb: random.uniform(-24, studio ? -8 : 3),
    damping: random.next(),
    earlyCount: random.integer(0, 10),
  };
}

function drawNoises(random: Random, options: ChainOptions, studio: boolean): SoundChain['noises'] {
  const groups = options.noiseGroups ?? COMMON_NOISE_GROUPS;
  const first: SoundChain['noises'] = [{ kind: 'room-noise', share: random.logUniform(0.05, 1) }];
  const count = studio ? random.integer(0, 1) : random.integer(1, 3);
  for (let k = 0; k < count && groups.length > 0; k++) {
    const kinds: readonly NoiseKind[] = NOISE_GROUPS[random.pick(groups)] ?? ['room-noise'];
    first.push({ kind: random.pick(kinds), share: random.logUniform(0.2, 2) });
  }
  return first;
}

function drawMicrophone(random: Random, family: ChainFamily): MicrophoneSpec {
  const good = family === 'studio';
  const peaks = Array.from({ length: random.integer(0, good ? 1 : 4) }, () => ({
    hz: random.logUniform(200, 14000),
    q: random.logUniform(0.5, 5),
    gainDb: random.uniform(good ? -4 : -12, good ? 4 : 12),
  }));
  return {
    lowCutHz: random.logUniform(good ? 10 : 30, good ? 80 : 350),
    highCutHz: good || random.next() < 0.5 ? 24000 : random.logUniform(3800, 18000),
    peaks,
    noise: 10 ** (random.uniform(-90, good ? -65 : -50) / 20),
  };
}

function drawGainControl(random: Random): GainControlSpec {
  return {
    attackS: random.logUniform(0.0005, 0.1),
    releaseS: random.logUniform(0.03, 2),
    targetDb: random.uniform(-16, 1),
    maxGainDb: random.uniform(6, 40),
  };
}

function drawSuppress(random: Random): SuppressSpec {
  return {
    depthDb: random.uniform(4, 24),
    strength: random.uniform(0.6, 2),
    adaptS: random.logUniform(0.3, 10),
    frame: random.pick([256, 512, 1024]),
  };
}
