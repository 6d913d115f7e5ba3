/**
 * Public interface that runs in browsers and in Node. Re-exports only.
 *
 * `analyseSamples` judges samples in memory, `openLive` a signal without an end, `expect` says what a set-up
 * permits, `compare` what changed between two results. Files are read by `analyseFile` of `arc-transfer/node`.
 */

export { compareResults as compare } from './analysis/compare/index.js';
export {
  type AnalyseBothOptions,
  type AnalyseOptions,
  analyse,
  analyseBoth,
  analyseSamples,
  type CommonOptions,
  defaultSettings,
  type Live,
  type LiveEvent,
  type OpenLiveOptions,
  openLive,
  parseSettings,
  type SamplesOptions,
  SETTINGS,
  type Setting,
  type SettingKey,
  type Settings,
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
  type ArcInterval,
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
export { FIGURE_NAMES, type FigureName } from './features/index.js';
export {
  ENGLISH,
  GERMAN,
  type Language,
  type Message,
  type MessageCode,
  type ParamsOf,
  retell,
  say,
} from './messages/index.js';
export {
  fillSetup,
  type Procedure,
  procedureJsonSchema,
  readProcedure,
} from './procedure/index.js';
export { makeRecord, recordJsonSchema, recordSchema, type WeldRecord } from './record/index.js';
export {
  type ByteSource,
  blobSource,
  bufferSource,
  type Channel,
  openRecording,
  type Quantity,
  type ReadOptions,
  type Recording,
  type SampleBlock,
  type Samples,
} from './recording/index.js';
export { type CrossCheck, crossCheck } from './setup/check/index.js';
export {
  type Expectation,
  expectModes as expect,
  parseSetup,
  SETUP_OPTIONS,
  type Setup,
  type SetupInput,
  type SetupKey,
  type SetupOption,
} from './setup/index.js';
