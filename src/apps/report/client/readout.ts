import { MARK_S } from '../../view/evidence/index.js';
import type { TimePictureWords } from '../../view/index.js';
import { say } from '../charts/frame.js';
import { inArc } from '../charts/mode-tracks.js';
import { sayMoment } from '../charts/time-rows.js';
import type { TimeRun } from '../run-view.js';

/** All values at a moment, with their units, as one sentence for eyes and screen readers. */
export function readoutAt(
  run: TimeRun,
  timeS: number,
  spanS: number,
  words: TimePictureWords,
): string {
  const parts = [
    modeAt(run, timeS, words),
    ...run.evidence.traces.map((_, index) => traceAt(run, index, timeS, words)),
    levelAt(run, timeS, words),
    rateAt(run, timeS, words),
    ...run.evidence.marks.map((marks) => markAt(marks, timeS, words)),
  ].filter((one) => one !== '');
  return words.time.readout.at(sayMoment(timeS, spanS, words.numbers), parts);
}

function modeAt(run: TimeRun, timeS: number, words: TimePictureWords): string {
  const { readout, noArc } = words.time;
  const segment = run.segments.find((one) => timeS >= one.startS && timeS < one.endS);
  if (segment) {
    const name = segment.mode ? words.mode(segment.mode) : readout.modeNotClear;
    return readout.judged(name, words.numbers.percent(segment.confidence));
  }
  return inArc(run, timeS) ? readout.notJudged : noArc;
}

function traceAt(run: TimeRun, index: number, timeS: number, words: TimePictureWords): string {
  const trace = run.evidence.traces[index]!;
  const { readout } = words.time;
  const quantity = words.name(trace.quantity);
  const number = (value: number) => say(value, words.numbers);
  const closeUp = run.evidence.closeUps.find(
    (one) => timeS >= one.startS && timeS < one.startS + one.traces[index]!.length * one.binS,
  );
  if (closeUp) {
    const value = closeUp.traces[index]![Math.floor((timeS - closeUp.startS) / closeUp.binS)]!;
    return `${quantity} ${number(value)} ${words.name(trace.unit)}`;
  }
  const bin = Math.min(trace.min.length - 1, Math.floor(timeS / trace.binS));
  const [low, high] = [trace.min[bin]!, trace.max[bin]!];
  if (Number.isNaN(low)) return readout.notRecorded(quantity);
  const value = trace.everySample ? number(high) : words.numbers.range(number(low), number(high));
  return `${quantity} ${value} ${words.name(trace.unit)}`;
}

function levelAt(
  { evidence }: TimeRun,
  timeS: number,
  { time, numbers }: TimePictureWords,
): string {
  const level = evidence.levelDb;
  if (!level) return '';
  const value = level.values[Math.floor((timeS - level.startS) / level.stepS)];
  return value === undefined ? '' : time.readout.level(say(Math.round(value), numbers));
}

function rateAt(run: TimeRun, timeS: number, words: TimePictureWords): string {
  const { readout } = words.time;
  const rate = run.evidence.eventRate;
  if (!rate || !inArc(run, timeS)) return '';
  const value = rate.values[Math.floor((timeS - rate.startS) / rate.stepS)];
  if (value === undefined || Number.isNaN(value)) return readout.noRate;
  return readout.rate(words.numbers.figure(value), words.name(rate.of));
}

function markAt(
  marks: TimeRun['evidence']['marks'][number],
  timeS: number,
  { time, numbers }: TimePictureWords,
): string {
  const at = timeS / MARK_S;
  const k = lastBefore(marks.starts, at);
  if (k < 0 || marks.lengths[k] === 0 || marks.starts[k]! + marks.lengths[k]! < at) return '';
  return time.readout.inMark(marks.what, numbers.figure(marks.lengths[k]! * MARK_S * 1000));
}

/** Index of the last value that is not above `limit` in a sorted list; −1 without one. */
export function lastBefore(sorted: Uint32Array, limit: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= limit) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
