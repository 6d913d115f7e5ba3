export { type AnalyseOptions, analyse, buildResult } from './analyse.js';
export { analyseSamples, type SamplesOptions } from './analyse-samples.js';
export { type BatchOptions, type BatchResult, runBatch } from './batch.js';
export { type Doubt, doubtsOf } from './batch-doubts.js';
export {
  type BatchTally,
  countResult,
  emptyTally,
  MOST_REMARKS,
  type Remark,
} from './batch-tally.js';
export { type CommonOptions, settled } from './common-options.js';
export { extractorFor } from './extractor-for.js';
export { analyseBoth } from './fusion/both.js';
export type { AnalyseBothOptions } from './fusion/both-options.js';
export type { IntervalOutcome } from './interval-judge.js';
export {
  type AlarmChange,
  DepartureWatch,
  type WantedMode,
} from './live/live-alarm.js';
export { type BeliefEvent, LiveBeliefs } from './live/live-beliefs.js';
export type { LiveFormat } from './live/live-format.js';
export { type LiveBelief, LiveMode, type LiveModes } from './live/live-mode.js';
export { liveRateHz } from './live/live-rate.js';
export { type LiveEvent, type LiveOptions, LiveStream } from './live/live-stream.js';
export { type Live, type OpenLiveOptions, openLive } from './live/open-live.js';
export { hardToSee, learnModeBias, type ModeBias, takenFor } from './live/reference-welds.js';
export { parseSettings } from './parse-settings.js';
export { type IntervalEvent, Pipeline, type PipelineEvent } from './pipeline.js';
export {
  defaultSettings,
  SETTINGS,
  type Setting,
  type SettingKey,
  type Settings,
  UNTOLD_ARC_PRIOR,
} from './settings.js';
export { settingsRecord } from './settings-record.js';
