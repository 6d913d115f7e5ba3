import {
  type Note,
  type QualityFlag,
  type SourceProgramme,
  TOOL_NAME,
  TOOL_VERSION,
} from '../core/index.js';
import type { ExtractorSummary, FeatureExtractor } from '../features/index.js';
import { type Made, message } from '../messages/index.js';
import { type Model, modelFingerprint } from '../model/index.js';
import type { Recording } from '../recording/index.js';
import { crossCheck } from '../setup/check/index.js';
import type { Setup } from '../setup/index.js';
import { extractorFor } from './extractor-for.js';
import { type LoadModel, modelFor } from './model-for.js';
import { Pipeline, type PipelineEvent } from './pipeline.js';
import { plausibleOnly } from './plausible.js';
import { CAUTION_MESSAGES, CAUTIONS, type Result, SCHEMA_VERSION } from './result/index.js';
import type { Settings } from './settings.js';
import { settingsRecord } from './settings-record.js';
import { soundFigures } from './sound-figures.js';
import { soundQuality } from './sound-quality.js';

/** What a result must know beside the samples. */
export interface AnalyseOptions {
  /** The set-up as stated; it is compared with the verdict and cannot reach it. */
  setup: Setup;
  settings: Settings;
  /** Models from elsewhere; those that come with the package unless told. */
  loadModel?: LoadModel | undefined;
  /** How the recording is called in the result. */
  path: string;
  sha256: string | null;
  /** `node` or `browser`: what the numbers were computed on. */
  host: string;
  /** Told everything the pipeline says, in order, for tables finer than the result. */
  onEvent?: (event: PipelineEvent) => void;
  /** The feature extractor to use, fresh, where `onEvent` is to hear more than the result needs; {@link extractorFor} unless told. */
  extractor?: FeatureExtractor;
}

/**
 * A recording in, the result document out, block by block.
 * @throws ArcError what the reader, the feature extractor or the model found wrong
 */
export async function analyse(recording: Recording, options: AnalyseOptions): Promise<Result> {
  const extractor = options.extractor ?? extractorFor(recording);
  const model = await modelFor(extractor.featureSet, options.loadModel);
  // Now and not at the end: live, somebody waits for the end.
  modelFingerprint(model);
  const pipeline = new Pipeline(extractor, recording.sampleRateHz, model, options.settings);
  const tell = (events: PipelineEvent[]): void => {
    if (options.onEvent) for (const event of events) options.onEvent(event);
  };
  for await (const block of recording.blocks()) tell(pipeline.push(block.channels));
  tell(pipeline.flush());
  return buildResult(recording, pipeline, model, options);
}

/** What a trace beside the sound adds to its result. */
export interface Added {
  figures?: ExtractorSummary['figures'];
  quality?: QualityFlag[];
  notes: Note[];
  sourceProgramme?: SourceProgramme;
}

/** The result document of a pipeline that has been flushed. */
export function buildResult(
  recording: Recording,
  pipeline: Pick<Pipeline, 'verdict' | 'summary' | 'accepted' | 'durationS'>,
  model: Model,
  options: Omit<AnalyseOptions, 'loadModel' | 'onEvent' | 'extractor'>,
  added?: Added,
): Result {
  const verdict = plausibleOnly(pipeline.verdict(), [...recording.notes, ...(added?.notes ?? [])]);
  const summary = pipeline.summary();
  const sound = recording.kind === 'sound';
  const evidence = pipeline.accepted.evidence;
  const own = sound ? soundFigures(evidence, verdict) : summary.figures;
  const figures = { ...own, ...added?.figures };
  const doubts = sound ? soundQuality(recording, evidence, pipeline.durationS) : summary.quality;
  const quality = [...doubts, ...(added?.quality ?? [])];
  const sourceProgramme =
    added?.sourceProgramme ?? (sound ? soundProgramme(verdict.mode) : summary.sourceProgramme);
  const hasArc = verdict.arcStretches.length > 0;
  return {
    schemaVersion: SCHEMA_VERSION,
    tool: { name: TOOL_NAME, version: TOOL_VERSION, host: options.host },
    source: {
      path: options.path,
      sha256: options.sha256,
      kind: recording.kind,
      format: recording.format,
      sampleRateHz: recording.sampleRateHz,
      durationS: pipeline.durationS,
      channels: recording.channels.map(({ name, quantity, unit }) => ({ name, quantity, unit })),
      notes: [
        ...recording.notes,
        ...summary.notes,
        ...(added?.notes ?? []),
        ...options.setup.notes,
      ],
    },
    status: verdict.status,
    statusReason: verdict.statusReason,
    statusReasonMessage: verdict.statusReasonMessage,
    error: null,
    mode: verdict.mode,
    confidence: verdict.confidence,
    sourceProgramme,
    probabilities: verdict.probabilities,
    shareOfArcTime: verdict.shareOfArcTime,
    arcStretches: verdict.arcStretches,
    segments: verdict.segments,
    features: figures,
    quality,
    reasons: verdict.reasons,
    crossCheck: crossCheck({
      setup: options.setup,
      seen: {
        status: verdict.status,
        mode: verdict.mode,
        confidence: verdict.confidence,
        probabilities: verdict.probabilities,
        shareOfArcTime: verdict.shareOfArcTime,
        segments: verdict.segments,
        figures,
        sourceProgramme,
        quality,
        kind: recording.kind,
      },
    }),
    settings: settingsRecord(options.settings),
    model: {
      id: model.id,
      version: model.version,
      fingerprint: modelFingerprint(model),
      featureSet: `${model.featureSet.id}/${model.featureSet.version}`,
    },
    steps: stepLog(recording, pipeline, model),
    remainingModes: verdict.remainingModes,
    wouldSettle: verdict.wouldSettle,
    ...(verdict.wouldSettleMessage ? { wouldSettleMessage: verdict.wouldSettleMessage } : {}),
    cautions: hasArc ? [...CAUTIONS] : [],
    cautionMessages: hasArc ? [...CAUTION_MESSAGES] : [],
  };
}

/** Sound tells a pulsed programme by its mode only; the rest of what the source does stays unknown. */
function soundProgramme(mode: Result['mode']): Result['sourceProgramme'] {
  return mode === 'pulsed-spray' ? 'pulsed' : 'unknown';
}

function stepLog(
  recording: Recording,
  pipeline: Pick<Pipeline, 'accepted'>,
  model: Model,
): Result['steps'] {
  // The kind of file and its names stand in `source`: the rest of a result is the same for all of them.
  const quantities = recording.channels.map((channel) => channel.quantity);
  const { id: featureSet, version } = model.featureSet;
  const { arcIntervals, evidence } = pipeline.accepted;
  const of = recording.kind === 'sound' ? 'sound' : 'trace';
  return [
    stepOf('read', message('step-read', { quantities, sampleRateHz: recording.sampleRateHz })),
    stepOf('features', message('step-features', { featureSet, version, of })),
    stepOf('arc', message('step-arc', { arcIntervals: arcIntervals.length })),
    stepOf(
      'classify',
      message('step-classify', {
        windows: evidence.windows,
        model: model.id,
        version: model.version,
      }),
    ),
  ];
}

/** A step as the result holds it. */
export function stepOf(step: string, { text, code, params }: Made): Result['steps'][number] {
  return { step, detail: text, code, params };
}
