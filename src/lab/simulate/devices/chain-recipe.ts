import { fixed, integer, logUniform, pick, type Range, uniform } from '../ranges.js';

/** How one family of recordings spoils a sound. A `share` is the chance that a step is there at all. */
export interface ChainFamilyRecipe {
  room: { share: number; rt60S: Range; reverberantDb: Range; damping: Range; earlyCount: Range };
  /** Room noise is always there; so many more kinds, drawn from the groups that are allowed. */
  noises: { roomShare: Range; count: Range; share: Range; snrDb: Range };
  levelDb: Range;
  microphone: {
    lowCutHz: Range;
    /** Chance of a treble cut; there is none otherwise. */
    highCutShare: number;
    highCutHz: Range;
    peakCount: Range;
    peakHz: Range;
    peakQ: Range;
    peakDb: Range;
    noiseDb: Range;
  };
  gainControl: {
    share: number;
    releaseS: Range;
    attackOverRelease: Range;
    targetDb: Range;
    maxGainDb: Range;
  };
  clip: { share: number; hardShare: number; at: Range; sigma: Range };
  suppress: { share: number; depthDb: Range; strength: Range; adaptS: Range; frame: Range };
  outRateHz: Range;
  bits: Range;
}

const GAIN_CONTROL = {
  releaseS: logUniform(0.003, 0.25),
  attackOverRelease: logUniform(0.05, 1),
  targetDb: uniform(-16, 1),
  maxGainDb: uniform(6, 40),
};
const CLIP = { hardShare: 0.8, at: logUniform(0.15, 1), sigma: logUniform(0.2, 4) };
const SUPPRESS = {
  depthDb: uniform(4, 24),
  strength: uniform(0.6, 2),
  adaptS: logUniform(0.3, 10),
  frame: pick(256, 512, 1024),
};
const ROOM = {
  rt60S: logUniform(0.2, 2.5),
  reverberantDb: uniform(-24, 3),
  damping: uniform(0, 1),
};
const PEAK = { peakHz: logUniform(200, 14000), peakQ: logUniform(0.5, 5) };

const SHOP: ChainFamilyRecipe = {
  room: { share: 0.9, ...ROOM, earlyCount: integer(0, 10) },
  noises: {
    roomShare: logUniform(0.05, 1),
    count: integer(1, 3),
    share: logUniform(0.2, 2),
    snrDb: uniform(-2, 34),
  },
  levelDb: uniform(-42, -14),
  microphone: {
    lowCutHz: logUniform(30, 350),
    highCutShare: 0.5,
    highCutHz: logUniform(3800, 18000),
    peakCount: integer(0, 4),
    ...PEAK,
    peakDb: uniform(-12, 12),
    noiseDb: uniform(-90, -50),
  },
  gainControl: { share: 0.3, ...GAIN_CONTROL },
  clip: { share: 0.3, ...CLIP },
  suppress: { share: 0, ...SUPPRESS },
  outRateHz: pick(22050, 32000, 44100, 44100, 48000),
  bits: fixed(16),
};

/** The families that a file which keeps everything comes from; all own choice, kept wide. */
export const CHAIN_RECIPES = {
  studio: {
    room: {
      ...SHOP.room,
      share: 0.6,
      rt60S: logUniform(0.2, 0.8),
      reverberantDb: uniform(-24, -8),
    },
    noises: { ...SHOP.noises, count: integer(0, 1), snrDb: uniform(25, 55) },
    levelDb: SHOP.levelDb,
    microphone: {
      lowCutHz: logUniform(10, 80),
      highCutShare: 0,
      highCutHz: fixed(24000),
      peakCount: integer(0, 1),
      ...PEAK,
      peakDb: uniform(-4, 4),
      noiseDb: uniform(-90, -65),
    },
    gainControl: { share: 0, ...GAIN_CONTROL },
    clip: { share: 0.05, ...CLIP },
    suppress: SHOP.suppress,
    outRateHz: SHOP.outRateHz,
    bits: pick(16, 24),
  },
  shop: SHOP,
  phone: {
    ...SHOP,
    gainControl: { share: 0.85, ...GAIN_CONTROL },
    clip: { share: 0.7, ...CLIP },
    suppress: { share: 0.35, ...SUPPRESS },
    outRateHz: pick(16000, 32000, 44100, 48000),
  },
  call: {
    ...SHOP,
    gainControl: { share: 1, ...GAIN_CONTROL },
    clip: { share: 0.4, ...CLIP },
    suppress: { share: 1, ...SUPPRESS },
    outRateHz: pick(8000, 16000, 16000, 24000, 48000),
  },
} as const satisfies Record<string, ChainFamilyRecipe>;

/** Lossy coding of the family `coded`, which is one of the others kept as a lossy file. */
export const LOSSY_RECIPE = {
  /** From hardly heard (0) to an event sound message (1); it moves the others. */
  strength: uniform(0, 1),
  cutHz: { at0: 18_000, lessAtMost: 9000 },
  noiseDb: { at0: 24, at1: 6 },
  slopeDb: uniform(0, 4),
  dropDb: { range: uniform(70, 100), lessAt1: 40 },
  block: pick(256, 512, 1024, 1024, 2048),
} as const;
