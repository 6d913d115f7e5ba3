import { audibility } from '../../src/lab/simulate/sound/audibility/audibility.js';
import { heardMode } from '../../src/lab/simulate/sound/audibility/heard.js';
import type {
  Condition,
  EventKind,
  ForeignArc,
  ForeignRecording,
  ForeignWorld,
} from '../foreign/world.js';

export const CONDITIONS: readonly Condition[] = [
  'quiet',
  'shop',
  'loud-shop',
  'clipped',
  'lossy',
  'open-ended',
  'switched',
];

/** One recording of the fixed draw of a world. */
export interface ForeignItem {
  arc: ForeignArc;
  condition: Condition;
  recording: ForeignRecording;
  /** Whether an ideal listener could tell the mode from this sound; false is "free flight, drop size not audible". */
  isHeard: boolean;
}

/** Seconds of arc in the fixed draw. */
const ARC_S = 3;

/** The fixed draw: arcs `first` to `first + count − 1`, modes in turn, each recorded in every one of the conditions. */
export function* foreignItems(
  world: ForeignWorld,
  first: number,
  count: number,
  conditions: readonly Condition[] = CONDITIONS,
): Generator<ForeignItem> {
  for (let seed = first; seed < first + count; seed++) {
    const arc = world.drawArc(seed, ARC_S);
    for (const condition of conditions) {
      const recording = world.record(arc, condition, seed);
      yield { arc, condition, recording, isHeard: isHeard(arc, recording) };
    }
  }
}

function isHeard(arc: ForeignArc, recording: ForeignRecording): boolean {
  const { mode, shortsPerS, eventsS } = arc.truth;
  if (mode !== 'globular' && mode !== 'spray') return true;
  const shiftS = shiftOf(arc, recording);
  const { sampleRateHz, linear, arcStartS, arcEndS } = recording;
  const moved = Object.fromEntries(
    Object.entries(eventsS).map(([kind, times]) => [
      kind,
      times.map((t) => t + shiftS).filter((t) => t >= arcStartS && t < arcEndS),
    ]),
  );
  const heard = audibility({
    rateHz: sampleRateHz,
    events: linear.events,
    rest: linear.rest,
    eventsS: moved,
    startS: arcStartS,
    endS: arcEndS,
  });
  return heardMode(mode, heard, shortsPerS) === mode;
}

/** Steps of the envelopes that are laid over each other, s. */
const STEP_S = 0.002;

/** Where the first sample of the arc lies in the recording, s: the best fit of the envelopes of its events. */
function shiftOf(arc: ForeignArc, recording: ForeignRecording): number {
  const own = envelope(Object.values(arc.dry.events), arc.dry.sampleRateHz);
  const there = envelope(Object.values(recording.linear.events), recording.sampleRateHz);
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let shift = -own.length; shift < there.length; shift++) {
    let sum = 0;
    for (let i = Math.max(0, -shift); i < own.length && i + shift < there.length; i++)
      sum += own[i]! * there[i + shift]!;
    if (sum > most) {
      most = sum;
      best = shift;
    }
  }
  return most > 0 ? best * STEP_S : recording.arcStartS;
}

function envelope(parts: readonly Float32Array[], rateHz: number): Float64Array {
  const length = Math.max(...parts.map((part) => part.length));
  const step = Math.round(STEP_S * rateHz);
  const out = new Float64Array(Math.ceil(length / step));
  for (const part of parts)
    for (let i = 0; i < part.length; i++) out[Math.floor(i / step)]! += part[i]! ** 2;
  return out.map(Math.sqrt);
}

export type { EventKind };
