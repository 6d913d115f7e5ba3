import { createRandom, type Random } from '../../../core/index.js';
import { drawFrom } from '../ranges.js';
import { LOSSY_RECIPE } from './chain-recipe.js';
import { inOverlappingBlocks } from './overlap.js';

/** A lossy file as a perceptual transform coder leaves it; not the format of any real one. */
export interface LossySpec {
  seed: number;
  /** What lies above is dropped, Hz. */
  cutHz: number;
  /** Rounding noise under the level of its band in a (windowed) block at 1 kHz, dB, and how much less it is per octave above. */
  noiseDb: number;
  slopeDb: number;
  /** Bands this far under the loudest of their block are dropped, dB. */
  dropDb: number;
  /** Blocks are a power of two long: noise spreads over a whole block, before an onset too. */
  block: number;
}

/** Random strength, from hardly heard to an event sound message (own choice, kept wide). */
export function drawLossy(random: Random): LossySpec {
  const { cutHz, noiseDb, slopeDb, dropDb, block } = LOSSY_RECIPE;
  const strength = drawFrom(random, LOSSY_RECIPE.strength);
  return {
    seed: random.integer(0, 2 ** 31 - 1),
    cutHz: cutHz.at0 - cutHz.lessAtMost * strength * random.next(),
    noiseDb: noiseDb.at0 + (noiseDb.at1 - noiseDb.at0) * strength,
    slopeDb: drawFrom(random, slopeDb),
    dropDb: drawFrom(random, dropDb.range) - dropDb.lessAt1 * strength,
    block: drawFrom(random, block),
  };
}

/**
 * Overlapping blocks are transformed; in each band what lies under a share of the band's level is rounded to
 * whole steps, and what rounds to nothing is lost. Same length back.
 */
export function throughLossy(samples: Float64Array, spec: LossySpec, rateHz: number): Float64Array {
  const size = 2 * spec.block;
  const bands = bandsOf(size, rateHz, spec);
  const random = createRandom(spec.seed);
  return inOverlappingBlocks(samples, size, (spectrum) =>
    coarsen(spectrum, bands, size, spec.dropDb, random),
  );
}

interface Band {
  from: number;
  to: number;
  /** Step over the rms of the band's bins; 0 drops the band. */
  step: number;
}

/** A band that is kept at all is not rounded more coarsely than this (own choice). */
const LEAST_UNDER_DB = 2;

/** Third-octave bands, no narrower than four bins; those above the cut are dropped. */
function bandsOf(size: number, rateHz: number, spec: LossySpec): Band[] {
  const bands: Band[] = [];
  const half = size / 2;
  for (let from = 1; from < half; ) {
    const to = Math.min(half, Math.max(from + 4, Math.round(from * 2 ** (1 / 3))));
    const hz = ((from + to) / 2) * (rateHz / size);
    const octaves = Math.max(0, Math.log2(hz / 1000));
    const underDb = Math.max(LEAST_UNDER_DB, spec.noiseDb - spec.slopeDb * octaves);
    const noise = 10 ** (-underDb / 20);
    // Rounding to steps of s leaves noise of s/√12 in each of two parts: s/√6.
    bands.push({ from, to, step: hz > spec.cutHz ? 0 : Math.sqrt(6) * noise });
    from = to;
  }
  return bands;
}

/** Rounds the bins of one block in place; real input, so the upper half mirrors the lower. */
function coarsen(
  spectrum: number[],
  bands: readonly Band[],
  size: number,
  dropDb: number,
  random: Random,
): void {
  const levels = bands.map(({ from, to }) => {
    let power = 0;
    for (let k = from; k < to; k++) power += spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2;
    return Math.sqrt(power / (to - from));
  });
  const least = Math.max(...levels) * 10 ** (-dropDb / 20);
  for (const [b, { from, to, step }] of bands.entries()) {
    const level = levels[b]!;
    const keep = step > 0 && level > 0 && level >= least;
    const grain = step * level * random.uniform(0.8, 1.25);
    for (let k = from; k < to; k++) {
      for (const j of [2 * k, 2 * k + 1]) {
        spectrum[j] = keep ? grain * Math.round(spectrum[j]! / grain) : 0;
      }
      spectrum[2 * (size - k)] = spectrum[2 * k]!;
      spectrum[2 * (size - k) + 1] = -spectrum[2 * k + 1]!;
    }
  }
}
