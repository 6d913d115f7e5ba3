import { CHAIN_RECIPES, LOSSY_RECIPE } from '../devices/chain-recipe.js';
import { SNR_BAND_HZ } from '../devices/degrade.js';
import { NOISE_GROUPS } from '../noise/noise.js';

/**
 * What `recipe.json` holds: the steps from dry sound to stored recording in the order in which they happen, each in
 * words with its parameters, and for each family of recordings what the parameters are drawn from. `degradeSound`
 * draws and applies the same.
 */
export function recipeDocument(): unknown {
  return {
    format: 'arc-transfer recipe 1',
    note: 'Own choice throughout, kept wide; not evidence about real rooms and devices.',
    ranges: {
      fixed: 'value',
      uniform: 'evenly in [low, high)',
      'log-uniform': 'low·(high/low)^u with u evenly in [0, 1)',
      integer: 'whole numbers, low and high included',
      pick: 'one of the list, each equally likely',
      share: 'chance that the step is there at all',
    },
    steps: STEPS,
    families: CHAIN_RECIPES,
    coded: {
      note: 'One of the families above, each equally likely, kept as a lossy file.',
      lossy: LOSSY_RECIPE,
    },
    noiseGroups: NOISE_GROUPS,
    snrBandHz: SNR_BAND_HZ,
  };
}

/** In words, so that any program can apply them. Full scale is 1; "level" is rms while the arc burns. */
const STEPS = [
  {
    step: 'room',
    parameters: ['rt60S', 'reverberantDb', 'damping', 'earlyCount'],
    how: 'Convolve with 1 at time 0 and a tail that begins 4 to 20 ms later (uniform). Tail: white noise, split by a second-order low-pass (q 0.6) at 6000 − 4000·damping Hz into bass and treble; bass dies as exp(−6.91·t/rt60S), treble as exp(−6.91·(1 + 3·damping)·t/rt60S); earlyCount single reflections at 0.8 to 40 ms (log-uniform), of uniform(−1, 1)·6·exp(−t/0.03 s). The tail as a whole has reverberantDb of energy over the direct sound; it ends after 0.65·rt60S, at most 1 s.',
  },
  {
    step: 'noises',
    parameters: ['kind', 'share', 'snrDb'],
    how: 'Each noise has rms 1; they are added by their shares, room noise first. The sum is raised so that the level of the arc in snrBandHz lies snrDb over it in that band.',
  },
  {
    step: 'level',
    parameters: ['levelDb'],
    how: 'Scale so that the level is levelDb of full scale. Drawn alike whatever the arc does.',
  },
  {
    step: 'microphone',
    parameters: ['lowCutHz', 'highCutHz', 'peaks', 'noise'],
    how: 'Second-order Butterworth high-pass at lowCutHz; peaking sections (hz, q, gainDb) of the Bristow-Johnson cookbook; fourth-order Butterworth low-pass at highCutHz (24,000: none); plus white noise uniform(−1, 1)·noise, noise = 10^(noiseDb/20).',
  },
  {
    step: 'gainControl',
    parameters: ['attackS', 'releaseS', 'targetDb', 'maxGainDb'],
    how: 'Every 16 samples of 44.1 kHz (0.36 ms): p is the peak of these samples; the level follows p by 1 − exp(−0.36 ms/attackS) where p is over it, else by 1 − exp(−0.36 ms/releaseS); gain = min(10^(maxGainDb/20), 10^(targetDb/20)/level), straight lines between. It begins at the largest gain. attackS = releaseS·attackOverRelease.',
  },
  {
    step: 'clip',
    parameters: ['kind', 'at', 'sigma'],
    how: 'Scale so that the level is at/sigma; then hard: held to ±at; soft: at·tanh(x/at). sigma 0.2 is hard clipping five times inside the signal.',
  },
  {
    step: 'suppress',
    parameters: ['depthDb', 'strength', 'adaptS', 'frame'],
    how: 'Blocks of `frame` samples that overlap by half, root-Hann before and after. By bin: s = 0.7·s + 0.3·power; the floor falls to s at once and rises by exp(hop/adaptS) a block; wanted gain max(10^(−depthDb/20), 1 − strength·√(2·floor/power)); the gain moves half of the way each block.',
  },
  {
    step: 'stored',
    parameters: ['outRateHz', 'bits'],
    how: 'To outRateHz by two fourth-order Butterworth low-passes at 0.43 of the lower rate and cubic interpolation; rounded to steps of 2^(1 − bits) and held to ±1.',
  },
  {
    step: 'lossy',
    parameters: ['cutHz', 'noiseDb', 'slopeDb', 'dropDb', 'block'],
    how: 'Blocks of 2·block samples that overlap by half, root-Hann before and after. By third-octave band (at least four bins): dropped above cutHz and where dropDb under the loudest band of the block; else both parts of each bin are rounded to whole steps of √6·10^(−u/20) times the rms of the band, u = max(2, noiseDb − slopeDb·octaves above 1 kHz), the step scaled by uniform(0.8, 1.25). With strength s drawn first: cutHz = 18,000 − 9,000·s·u, noiseDb = 24 − 18·s, dropDb = uniform(70, 100) − 40·s.',
  },
] as const;
