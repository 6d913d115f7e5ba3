export { type Agreement, agreementOf } from './agreement.js';
export { EVALUATION_VERSION, type Evaluation, evaluateRuns } from './evaluation.js';
export { type LabelRow, type LabelTable, type RawTable, readLabelRows } from './label-rows.js';
export { type RecordedWindows, recordedWindows } from './recorded-windows.js';
export { labelOfSpans, majority, type TruthRun, truthRuns } from './truth-runs.js';
export { LABELS, parseLabel } from './vocabulary.js';
