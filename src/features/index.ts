export * from './acoustic/index.js';
export {
  CURRENT_FEATURES,
  createElectricalLane,
  type ElectricalLaneOptions,
  electricalFeatureSet,
  planSlots,
  SegmentSpectra,
  SlotAnalyser,
  type SlotPlan,
  VOLTAGE_CURRENT_FEATURES,
  VOLTAGE_FEATURES,
} from './electrical/index.js';
export type { Lane, LaneSummary, RunFigures } from './lane.js';
export type {
  FeatureDefinition,
  FeatureSet,
  FeatureWindow,
  LaneEvent,
  SoundDetail,
} from './vector.js';
