import { type LiveEvent, learnModeBias, type ModeBias, takenFor } from '../../analysis/index.js';
import { ArcError, isArcError, type Mode, type RecordingKind } from '../../core/index.js';
import type { ReadOptions } from '../../recording/index.js';
import { listInputs } from '../terminal/inputs.js';
import type { WatchOptions } from './options.js';
import { replaySource } from './sources/replay.js';
import { StreamHolder } from './stream-holder.js';

/** Recordings of welds that a person vouches for, and what the alarm learned from them. */
export interface GoodWelds {
  recordings: string[];
  /** What each is taken for; null where no mode is likelier than all the others together. */
  takenFor: (Mode | null)[];
  kind: RecordingKind;
  /** What they are recordings of, as models know it: `sound`, `voltage-current` and the like. */
  featureSet: string;
  modeBias: ModeBias;
}

/** Code of wrong use that shows itself only when the source says what it is. */
export const OTHER_KIND = 'good-of-another-kind';

interface Heard {
  path: string;
  kind: RecordingKind;
  featureSet: string;
  /** Beliefs at the windows by which an alarm may be raised. */
  beliefs: Float64Array[];
}

/**
 * Sends each recording through the same stream as what is watched, as fast as it can be read.
 *
 * @throws ArcError for what cannot be read, `no-good-arc`, and `good-of-another-kind`
 */
export async function hearGoodWelds(options: WatchOptions, mode: Mode): Promise<GoodWelds> {
  const heard: Heard[] = [];
  for (const input of await listInputs(options.good)) {
    if (input.origin === 'lost') throw input.error;
    heard.push(await hear(input.path, options));
  }
  const [first, ...rest] = heard as [Heard, ...Heard[]];
  for (const one of rest) refuseOther(one.path, one.featureSet, first.path, first.featureSet);
  return {
    recordings: heard.map(({ path }) => path),
    kind: first.kind,
    featureSet: first.featureSet,
    takenFor: heard.map(({ beliefs }) => takenFor(beliefs)),
    modeBias: learnModeBias(
      mode,
      heard.map(({ beliefs }) => beliefs),
    ),
  };
}

/** @throws ArcError `good-of-another-kind` where the stream is no recording of the kind that was vouched for */
export function refuseOtherKind(good: GoodWelds, name: string, featureSet: string): void {
  refuseOther(good.recordings[0]!, good.featureSet, name, featureSet);
}

async function hear(path: string, options: WatchOptions): Promise<Heard> {
  const { raw, ...stated } = options.reading;
  try {
    return await hearAs(path, options, stated);
  } catch (error) {
    // Bare samples, as the stream is, say nothing of themselves.
    if (!raw || !isArcError(error) || error.code !== 'unknown-format') throw error;
    return hearAs(path, options, options.reading);
  }
}

async function hearAs(path: string, options: WatchOptions, reading: ReadOptions): Promise<Heard> {
  const source = replaySource(path, Number.POSITIVE_INFINITY, reading);
  const streams = new StreamHolder(path, options);
  const heard: Heard = { path, kind: 'sound', featureSet: '', beliefs: [] };
  const take = (event: LiveEvent): void => {
    if (event.type === 'arc-start') streams.arcStart(event.timeS, event.open);
    if (event.type === 'window' && streams.counts(event))
      heard.beliefs.push(event.belief.probabilities);
  };
  for await (const item of source.items(new AbortController().signal)) {
    if (item.type === 'format')
      Object.assign(heard, { kind: item.format.kind }, await streams.begin(item.format));
    if (item.type === 'samples') streams.push(item.channels).forEach(take);
  }
  streams.end().forEach(take);
  if (heard.beliefs.length === 0) throw noArc(path);
  return heard;
}

function refuseOther(path: string, is: string, beside: string, wanted: string): void {
  if (is === wanted) return;
  throw new ArcError({
    code: OTHER_KIND,
    what: `${path} is a recording of ${is}, ${beside} one of ${wanted}.`,
    expected: 'good welds recorded as what is watched: the same channels',
    todo: 'Record a good weld with what you watch with, and give that to --good.',
  });
}

function noArc(path: string): ArcError {
  return new ArcError({
    code: 'no-good-arc',
    what: `${path} holds no arc that burns on after its start.`,
    expected: 'with --good: a recording of a weld, some seconds of it steady',
    todo: 'Look at it with arc-transfer classify, or leave it out.',
  });
}
