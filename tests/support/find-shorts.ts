import { planSlots } from '../../src/features/electrical/decimation.js';
import { IncipientRule } from '../../src/features/electrical/incipient.js';
import { type Short, ShortDetector } from '../../src/features/electrical/short-detector.js';
import {
  type ShortThresholds,
  ThresholdTracker,
} from '../../src/features/electrical/thresholds.js';

/** A short of a whole trace, with its times in seconds from the first sample. */
export interface FoundShort extends Short {
  startS: number;
  endS: number;
  /** A touch without transfer, judged by the shorts up to half a second after it. */
  incipient: boolean;
}

/** All shorts of a trace and the thresholds last in force. */
export interface FoundShorts {
  shorts: FoundShort[];
  thresholds: ShortThresholds | null;
}

/**
 * Shorts of a whole arc-phase trace by the very thresholds and rules of the streaming feature extractor, block by block.
 * Unlike the feature extractor it does not ask whether there is an arc. An empty, constant or all-zero trace has none;
 * samples that are not numbers are neither below nor above a threshold.
 */
export function findShorts(
  voltageV: Float64Array,
  sampleRateHz: number,
  currentA: Float64Array | null = null,
): FoundShorts {
  const block = planSlots(sampleRateHz, 0.5, 0.25).samples;
  const tracker = new ThresholdTracker(sampleRateHz);
  const detector = new ShortDetector(sampleRateHz);
  const found: Short[] = [];
  let thresholds: ShortThresholds | null = null;
  for (let from = 0; from < voltageV.length; from += block) {
    const part = voltageV.subarray(from, from + block);
    thresholds = tracker.update(part);
    found.push(
      ...detector.scan(part, currentA?.subarray(from, from + block) ?? null, thresholds).shorts,
    );
  }
  const arcA = currentA ? meanOutside(currentA, found) : Number.NaN;
  return { shorts: judge(found, sampleRateHz, arcA), thresholds };
}

function judge(found: readonly Short[], sampleRateHz: number, arcA: number): FoundShort[] {
  const rule = new IncipientRule();
  const ahead = 0.5 * sampleRateHz;
  let learnt = 0;
  return found.map((short) => {
    for (; learnt < found.length && found[learnt]!.endSample <= short.endSample + ahead; learnt++)
      rule.learn((found[learnt]!.endSample - found[learnt]!.startSample) / sampleRateHz);
    const startS = short.startSample / sampleRateHz;
    const endS = short.endSample / sampleRateHz;
    return { ...short, startS, endS, incipient: rule.isIncipient(short, endS - startS, arcA) };
  });
}

function meanOutside(values: Float64Array, shorts: readonly Short[]): number {
  let sum = 0;
  let count = 0;
  let from = 0;
  for (let s = 0; s <= shorts.length; s++) {
    const to = shorts[s]?.startSample ?? values.length;
    for (let n = from; n < to; n++) sum += values[n]!;
    count += Math.max(0, to - from);
    from = shorts[s]?.endSample ?? values.length;
  }
  return sum / count;
}
