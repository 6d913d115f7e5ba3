import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { Channel } from '../types.js';

/** Running figures of one channel. */
export interface ChannelFigures {
  count: number;
  sum: number;
  min: number;
  max: number;
  /** Samples beyond what the limit given to {@link observe} allows, of either sign. */
  beyond: number;
  /** Number and sum of the sizes of samples above {@link SOME}. */
  some: number;
  someSum: number;
}

/** Above what a channel rests at while nothing burns, V or A. */
const SOME = 5;

export function emptyFigures(): ChannelFigures {
  return {
    count: 0,
    sum: 0,
    min: Number.POSITIVE_INFINITY,
    max: Number.NEGATIVE_INFINITY,
    beyond: 0,
    some: 0,
    someSum: 0,
  };
}

/**
 * What no arc of this process has, but for single glitches. Common practice, no source: open-circuit voltage stays
 * below some 115 V, and welding sources end at some 1000 A.
 */
export const MOST = { voltage: 160, current: 2000 } as const;

/** Share of samples beyond {@link MOST} that is more than glitches. */
const GLITCHES = 0.01;

/** Adds samples to the figures. */
export function observe(figures: ChannelFigures, samples: Float64Array, most: number): void {
  let { sum, min, max, beyond, some, someSum } = figures;
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i] as number;
    sum += value;
    if (value < min) min = value;
    if (value > max) max = value;
    const size = value < 0 ? -value : value;
    if (size > most) beyond++;
    if (size > SOME) {
      some++;
      someSum += size;
    }
  }
  figures.sum = sum;
  figures.min = min;
  figures.max = max;
  figures.beyond = beyond;
  figures.some = some;
  figures.someSum = someSum;
  figures.count += samples.length;
}

/**
 * Usual mistakes that the figures give away: millivolts taken for volts, a missing divider or shunt
 * factor, channels or polarity swapped. They are named and nothing is repaired, because a guess would
 * change the evidence. The limits are common practice, no source: arcs burn at some 10 to 45 V and 20 to
 * 600 A, and open-circuit voltage stays below about 115 V.
 */
export function suspectMistakes(
  channels: readonly Channel[],
  figures: readonly ChannelFigures[],
): Note[] {
  const of = (quantity: string): ChannelFigures | undefined => {
    const found = figures[channels.findIndex((channel) => channel.quantity === quantity)];
    return found !== undefined && found.count > 0 ? found : undefined;
  };
  const voltage = of('voltage');
  const current = of('current');
  const swapped = voltage && current ? suspectSwap(voltage, current) : undefined;
  if (swapped !== undefined) return [swapped];
  return [
    ...(voltage ? suspectVoltage(voltage) : []),
    ...(current ? suspectCurrent(current, voltage) : []),
  ];
}

function suspectSwap(voltage: ChannelFigures, current: ChannelFigures): Note | undefined {
  const volts = Math.abs(mean(voltage));
  const amperes = Math.abs(mean(current));
  if (volts < 60 || volts > 800 || amperes < 8 || amperes > 50 || peak(voltage) < 115)
    return undefined;
  return note('swapped-channels', { meanVoltageV: volts, meanCurrentA: amperes });
}

function suspectVoltage(voltage: ChannelFigures): Note[] {
  const notes: Note[] = [];
  const average = mean(voltage);
  const largest = peak(voltage);
  if (voltage.beyond > GLITCHES * voltage.count) {
    notes.push(note('implausible-voltage', { limitV: MOST.voltage, shareOfTime: share(voltage) }));
  }
  if (largest >= 2000) {
    notes.push(note('voltage-too-high', { peakV: largest, looksLike: 'millivolts' }));
  } else if (largest >= 160) {
    notes.push(note('voltage-too-high', { peakV: largest, looksLike: 'no-welding-source' }));
  } else if (largest < 0.3 && largest > 0.005) {
    notes.push(note('voltage-too-low', { peakV: largest, looksLike: 'kilovolts' }));
  } else if (largest < 10 && largest > 0.005) {
    notes.push(note('voltage-too-low', { peakV: largest, looksLike: 'divider-missing' }));
  }
  if (average < 0 && -voltage.min > 2 * Math.max(0, voltage.max)) {
    notes.push(note('negative-voltage', { meanVoltageV: average }));
  }
  return notes;
}

function suspectCurrent(current: ChannelFigures, voltage: ChannelFigures | undefined): Note[] {
  const notes: Note[] = [];
  const average = mean(current);
  const largest = peak(current);
  const tooLow = largest < 12 && largest > 0.001 && (voltage === undefined || peak(voltage) >= 10);
  if (current.beyond > GLITCHES * current.count) {
    notes.push(
      note('implausible-current', {
        how: 'beyond',
        limitA: MOST.current,
        shareOfTime: share(current),
      }),
    );
  } else if (tooLow) {
    notes.push(note('implausible-current', { how: 'too-little', peakA: largest }));
  }
  if (largest >= 5000) {
    notes.push(note('current-too-high', { peakA: largest }));
  } else if (tooLow) {
    notes.push(note('current-too-low', { peakA: largest }));
  }
  if (average < 0 && -current.min > 2 * Math.max(0, current.max)) {
    notes.push(note('negative-current', { meanCurrentA: average }));
  }
  return notes;
}

function mean(figures: ChannelFigures): number {
  return figures.sum / figures.count;
}

function peak(figures: ChannelFigures): number {
  return Math.max(Math.abs(figures.min), Math.abs(figures.max));
}

function share({ beyond, count }: ChannelFigures): number {
  return beyond / count;
}
