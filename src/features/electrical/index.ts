export { type AverageTrace, averageAround, averageShort } from './average-short.js';
export { planSlots, type SlotPlan } from './decimation.js';
export { createElectricalExtractor } from './extractor.js';
export type { ElectricalExtractorOptions } from './extractor-options.js';
export {
  CURRENT_FEATURES,
  electricalFeatureSet,
  VOLTAGE_CURRENT_FEATURES,
  VOLTAGE_FEATURES,
} from './feature-sets.js';
export { type Histogram, histogram } from './histogram.js';
export { SegmentSpectra } from './segment-spectra.js';
export type { Short } from './short-detector.js';
export { type Slot, SlotAnalyser, type VoltageSlot } from './slot-analyser.js';
export { findLine, type SpectralLine } from './spectral-line.js';
export type { ShortThresholds } from './thresholds.js';
