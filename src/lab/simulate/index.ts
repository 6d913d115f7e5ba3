export { drawSetArc } from './data-set/draw-arc.js';
export { drawSetOther } from './data-set/draw-other.js';
export * from './data-set/format.js';
export { recipeDocument } from './data-set/recipe.js';
export { ArcSeries, type SeriesFile } from './data-set/series.js';
export {
  type DegradeOptions,
  degradeSound,
  inBand,
  SNR_BAND_HZ,
  type SoundChain,
} from './devices/degrade.js';
export { atRate } from './devices/device.js';
export {
  CHAIN_FAMILIES,
  type ChainFamily,
  type ChainOptions,
  drawChain,
} from './devices/draw-chain.js';
export { ELECTRICAL_FAMILIES, type ElectricalFamily } from './families.js';
export {
  COMMON_NOISE_GROUPS,
  makeNoise,
  NOISE_GROUPS,
  NOISE_KINDS,
  type NoiseKind,
} from './noise/noise.js';
export { DEAD_TRACE_KINDS, NON_ARC_SOUNDS, type NonArc, simulateNonArc } from './noise/non-arc.js';
export { simulateArc } from './physics/arc.js';
export { type DrawOptions, drawScenario } from './physics/draw.js';
export {
  EVENT_WINDOWS,
  type EventWindow,
  LEEWAY,
  speaksFor,
  WORKING_WINDOWS,
  type WorkingWindow,
} from './physics/windows.js';
export { measuredControlledDip, publishedDipCase } from './presets.js';
export type * from './run.js';
export type * from './scenario.js';
export {
  ACOUSTIC_FAMILIES,
  type AcousticFamily,
  type AcousticScenario,
  drawAcoustics,
  POWER_FAMILIES,
} from './sound/acoustic.js';
export {
  AUDIBLE_D_PRIME,
  type Audibility,
  audibility,
  type HeardParts,
} from './sound/audibility/audibility.js';
export { LISTENING_BANDS_HZ } from './sound/audibility/band-energies.js';
export { type HeardMode, heardMode } from './sound/audibility/heard.js';
export { type DrySound, simulateDrySound } from './sound/dry-sound.js';
export { EVENT_KINDS, type EventKind } from './sound/event-kinds.js';
export { MONOPOLE_AT_1M, SOUND_SPEED, simulateSound } from './sound/sound.js';
