import { ArcError, type ArcInterval } from '../../core/index.js';
import { laterBy } from '../../features/index.js';
import { because, type Verdict } from '../../judge/index.js';
import { message } from '../../messages/index.js';
import type { Recording } from '../../recording/index.js';
import { buildResult } from '../analyse.js';
import { extractorFor } from '../extractor-for.js';
import { modelFor } from '../model-for.js';
import { Pipeline } from '../pipeline.js';
import type { Result } from '../result/index.js';
import { judgeBoth } from './both-judge.js';
import type { AnalyseBothOptions, HeardSource } from './both-options.js';
import { companionOf, notesOf, stepsOf } from './both-result.js';
import { placed } from './both-source.js';
import {
  type Alignment,
  align,
  type Pooling,
  type PoolWeights,
  parsePooling,
  SoundSeries,
  TraceSeries,
} from './index.js';

/**
 * A sound and an electrical recording of the same run: aligned by the rate of change of arc power, then
 * judged together. Where no alignment stands out they are not fused: the sound is judged alone, and the
 * result says what the trace alone says. Both are read once; the windows of both are kept.
 * @throws ArcError `needs-sound-and-trace` for two of one kind; what readers, feature extractors and models found wrong
 */
export async function analyseBoth(
  sound: Recording,
  trace: Recording,
  options: AnalyseBothOptions,
): Promise<Result> {
  refuseTwoOfAKind(sound, trace);
  const pooling = parsePooling(await options.loadPooling());
  const seen = await read(trace, options);
  const heard = await read(sound, options);
  const alignment = align(heard.bins, seen.bins, options);
  const joint = judgeTogether(heard, seen, alignment, pooling, options);
  const summary = seen.pipeline.summary();
  const alone = seen.pipeline.verdict();
  const verdict = joint?.verdict ?? apart(heard.pipeline.verdict(), alone);
  const notes = notesOf(alignment, joint !== null, pooling, [heard, seen]);
  const { pipeline } = heard;
  const result = buildResult(
    sound,
    {
      verdict: () => verdict,
      summary: () => pipeline.summary(),
      accepted: joint?.accepted ?? pipeline.accepted,
      durationS: pipeline.durationS,
    },
    heard.model,
    options,
    joint
      ? {
          ...summary,
          figures: shown(summary.figures),
          notes: [...trace.notes, ...summary.notes, ...notes],
          ...(summary.disturbances && {
            disturbances: laterBy(summary.disturbances, alignment.found ? alignment.delayS! : 0),
          }),
        }
      : { notes },
  );
  const companion = companionOf(trace, seen, alignment, joint !== null, options);
  const agreed =
    heard.pipeline.verdict().mode && alone.mode
      ? heard.pipeline.verdict().mode === alone.mode
      : null;
  return {
    ...result,
    companion: { ...companion, agreed },
    steps: [
      ...result.steps,
      ...stepsOf(alignment, weightsOf(pooling, heard, seen), seen, joint !== null),
    ],
  };
}

/** Null where nothing shows that both are of one run, or where the trace has no arc to judge. */
function judgeTogether(
  heard: HeardSource,
  seen: HeardSource,
  alignment: Alignment,
  pooling: Pooling,
  options: AnalyseBothOptions,
): ReturnType<typeof judgeBoth> | null {
  if (!alignment.found && !options.sharedClock) return null;
  const shiftS = alignment.found ? alignment.delayS! : 0;
  const arcIntervals = seen.pipeline.accepted.arcIntervals.flatMap((one) =>
    inSound(one, shiftS, heard.pipeline.durationS),
  );
  if (arcIntervals.length === 0) return null;
  const by = weightsOf(pooling, heard, seen);
  const trace = { ...seen, windows: placed(seen.windows, shiftS) };
  return judgeBoth(arcIntervals, heard, trace, by, options.settings);
}

/** The weights were fitted on sounds that are an arc by themselves; others leave the trace to speak alone. */
function weightsOf(pooling: Pooling, heard: HeardSource, seen: HeardSource): PoolWeights {
  if (heard.pipeline.accepted.evidence.windows === 0) return { sound: 0, trace: 1 };
  return pooling.weights[seen.featureSet.id as keyof Pooling['weights']];
}

/** An arc interval of the trace in the sound's time, cut to what was heard; empty where nothing was. */
function inSound(one: ArcInterval, shiftS: number, durationS: number): ArcInterval[] {
  const startS = Math.max(0, one.startS + shiftS);
  const endS = Math.min(durationS, one.endS + shiftS);
  if (endS <= startS) return [];
  const openStart = one.openStart || one.startS + shiftS < 0;
  const openEnd = one.openEnd || one.endS + shiftS > durationS;
  return [{ startS, endS, openStart, openEnd }];
}

/** The sound's own verdict, unless the trace alone names another mode. */
function apart(heard: Verdict, seen: Verdict): Verdict {
  if (!heard.mode || !seen.mode || heard.mode === seen.mode) return heard;
  return {
    ...heard,
    status: 'unsure',
    mode: null,
    confidence: null,
    ...because(message('not-of-one-run', { sound: heard.mode, trace: seen.mode })),
  };
}

async function read(recording: Recording, options: AnalyseBothOptions): Promise<HeardSource> {
  const source = extractorFor(recording);
  const model = await modelFor(source.featureSet, options.loadModel);
  const pipeline = new Pipeline(source, recording.sampleRateHz, model, options.settings);
  const sound = recording.kind === 'sound' ? new SoundSeries(recording.sampleRateHz) : null;
  const trace = new TraceSeries(recording.sampleRateHz);
  const windows: HeardSource['windows'] = [];
  const take = (events: ReturnType<Pipeline['push']>): void => {
    for (const event of events) if (event.type === 'window') windows.push(event);
  };
  for await (const { channels } of recording.blocks()) {
    if (sound) sound.push(channels[0]!);
    else trace.push(channels);
    take(pipeline.push(channels));
  }
  take(pipeline.flush());
  const { featureSet, windowS, hopS } = source;
  return { pipeline, model, featureSet, windowS, hopS, windows, bins: (sound ?? trace).finish() };
}

/** Figures of the trace that stand; what it does not show leaves the sound's. */
function shown(figures: Record<string, number | null>): Record<string, number | null> {
  return Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== null));
}

function refuseTwoOfAKind(sound: Recording, trace: Recording): void {
  if (sound.kind === 'sound' && trace.kind === 'electrical') return;
  const said =
    sound.kind === trace.kind ? `two ${sound.kind} recordings` : 'a trace where the sound belongs';
  throw new ArcError({
    code: 'needs-sound-and-trace',
    what: `Judging both at once was given ${said}.`,
    expected: 'one sound recording, and one voltage or current trace of the same run',
    todo: 'Name the sound first and the trace with --with-trace; state a WAV of voltages with --channel.',
  });
}
