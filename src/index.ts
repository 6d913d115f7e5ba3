/** Public interface that runs in browsers and in Node. Re-exports only. */

export { compareResults } from './analysis/compare/index.js';
export {
  type AnalyseBothOptions,
  type AnalyseOptions,
  analyse,
  analyseBoth,
  defaultSettings,
  type LiveEvent,
  LiveStream,
  parseSettings,
  SETTINGS,
  type Setting,
  type Settings,
  settingsRecord,
} from './analysis/index.js';
export {
  CAUTIONS,
  failedResult,
  type Result,
  resultJsonSchema,
  resultSchema,
  SCHEMA_VERSION,
} from './analysis/result/index.js';
export { csvHeader, csvRow, jsonText, terminalText } from './apps/view/index.js';
export {
  ArcError,
  type ArcStretch,
  isArcError,
  MODES,
  type Mode,
  type Note,
  type QualityFlag,
  type RecordingKind,
  type RunMode,
  type Segment,
  type SourceProgramme,
  type Status,
} from './core/index.js';
export {
  type ByteSource,
  blobSource,
  bufferSource,
  type Channel,
  openRecording,
  type ReadOptions,
  type Recording,
  type SampleBlock,
} from './recording/index.js';
export { type CrossCheck, crossCheck } from './setup/check/index.js';
export {
  expectModes,
  parseSetup,
  SETUP_OPTIONS,
  type Setup,
  type SetupOption,
} from './setup/index.js';
