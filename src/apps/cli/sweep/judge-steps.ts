import type { Settings } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import {
  findSteps,
  regularityOf,
  type SweepStep,
  sweepBlocks,
} from '../../../analysis/sweep/index.js';
import { ArcError } from '../../../core/index.js';
import { type Recording, samplesRecording } from '../../../recording/index.js';
import { parseSetup, type Setup } from '../../../setup/index.js';
import { HOST } from '../../terminal/judge/classify-one.js';
import type { Engine } from '../../terminal/judge/engine.js';

/** More samples are not held at once: some half an hour of two channels at 20 kHz. */
const MOST_SAMPLES = 80_000_000;
/** After a turn of dial or feed the arc settles; left out at either end of a found step, s. Own choice. */
const SETTLING_S = 0.3;

/** A stretch to judge, with what a table says of it. */
export interface StatedStep {
  fromS: number | null;
  toS: number | null;
  setup: Setup;
}

export interface StepJob {
  engine: Engine;
  settings: Settings;
}

/** Judges the stated steps of a recording, or those found in it; a sound without a table is one step. */
export async function judgeSteps(
  recording: Recording,
  path: string,
  stated: readonly StatedStep[],
  job: StepJob,
): Promise<SweepStep[]> {
  const channels = await samplesOf(recording);
  const { sampleRateHz } = recording;
  const durationS = channels[0]!.length / sampleRateHz;
  const steps =
    stated.length > 0
      ? stated.map((one) => ({ ...one, fromS: one.fromS ?? 0, toS: one.toS ?? durationS }))
      : foundIn(recording, channels, durationS);
  const judged: SweepStep[] = [];
  for (const { fromS, toS, setup } of steps) {
    const [from, to] = [fromS, toS].map((at) =>
      Math.max(0, Math.min(channels[0]!.length, Math.round(at * sampleRateHz))),
    ) as [number, number];
    if (to - from < sampleRateHz / 2)
      throw new ArcError({
        code: 'step-too-short',
        what: `The step of ${path} from ${fromS} to ${toS} s holds less than half a second of the recording, which lasts ${durationS.toFixed(2)} s.`,
        expected: 'a stretch of the recording, 2 s or longer',
        todo: 'Correct from_s and to_s in the table of steps.',
      });
    const cut = channels.map((one) => one.subarray(from, to));
    const part = samplesRecording(cut, { sampleRateHz, quantity: quantityOf(recording) });
    const result = await job.engine.analyse(part, {
      setup: parseSetup({}),
      settings: job.settings,
      path,
      sha256: null,
      host: HOST,
    });
    judged.push(stepOf(result, { path, fromS, toS, setup }));
  }
  return judged;
}

function foundIn(recording: Recording, channels: readonly Float64Array[], durationS: number) {
  const whole = [{ fromS: 0, toS: durationS, setup: parseSetup({}) }];
  const at = (quantity: string): number =>
    recording.channels.findIndex((one) => one.quantity === quantity);
  const [volts, amperes] = [channels[at('voltage')], channels[at('current')]];
  if (!volts || !amperes) return whole;
  const found = findSteps(sweepBlocks(volts, amperes, recording.sampleRateHz));
  if (found.length === 0) return whole;
  return found.map(({ fromS, toS }) => ({
    fromS: fromS + SETTLING_S,
    toS: toS - SETTLING_S,
    setup: parseSetup({}),
  }));
}

async function samplesOf(recording: Recording): Promise<Float64Array[]> {
  const parts: Float64Array[][] = recording.channels.map(() => []);
  let count = 0;
  for await (const { channels } of recording.blocks()) {
    count += channels[0]!.length;
    if (count * channels.length > MOST_SAMPLES)
      throw new ArcError({
        code: 'sweep-too-long',
        what: `The recording holds more than ${MOST_SAMPLES} samples.`,
        expected: 'a sweep of some minutes',
        todo: 'Cut it into parts and name them one after the other.',
      });
    channels.forEach((one, c) => {
      parts[c]!.push(one.slice());
    });
  }
  return parts.map((list) => {
    const all = new Float64Array(count);
    let at = 0;
    for (const one of list) {
      all.set(one, at);
      at += one.length;
    }
    return all;
  });
}

function quantityOf({ channels }: Recording) {
  const names = channels.map((one) => one.quantity);
  if (names.includes('sound')) return 'sound' as const;
  if (names.includes('voltage')) return names.includes('current') ? 'voltage-current' : 'voltage';
  return 'current' as const;
}

function stepOf(
  result: Result,
  { path, fromS, toS, setup }: { path: string; fromS: number; toS: number; setup: Setup },
): SweepStep {
  const { status, mode, confidence, features, arcCondition } = result;
  return {
    path,
    fromS,
    toS,
    status,
    mode,
    confidence,
    meanVoltageV: features.meanVoltageV ?? setup.feederVoltsV,
    meanCurrentA: features.meanCurrentA ?? setup.measuredCurrentA,
    setVoltageV: setup.setVoltageV,
    wireFeedMPerMin: setup.wireFeedMPerMin,
    regularity: mode === null || mode === 'mixed' ? null : regularityOf(mode, result),
    off: (arcCondition?.findings ?? [])
      .filter((one) => one.rating !== 'good')
      .map((one) => one.name),
  };
}
