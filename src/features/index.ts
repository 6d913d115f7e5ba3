export * from './acoustic/index.js';
export {
  CURRENT_FEATURES,
  createElectricalExtractor,
  type ElectricalExtractorOptions,
  electricalFeatureSet,
  planSlots,
  SegmentSpectra,
  SlotAnalyser,
  type SlotPlan,
  VOLTAGE_CURRENT_FEATURES,
  VOLTAGE_FEATURES,
} from './electrical/index.js';
export type { ExtractorSummary, FeatureExtractor, RunFigures } from './extractor.js';
export { FIGURE_NAMES, type FigureName } from './figure-names.js';
export type {
  ExtractorEvent,
  FeatureDefinition,
  FeatureSet,
  FeatureWindow,
  HeardBlock,
  SoundDetail,
} from './vector.js';
