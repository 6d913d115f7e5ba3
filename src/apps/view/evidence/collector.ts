import type { PipelineEvent } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import { DISTURBANCE_KINDS, MODES, type Mode } from '../../../core/index.js';
import type { Recording } from '../../../recording/index.js';
import { CloseUps } from './close-ups.js';
import { TraceEvidence } from './electrical-evidence.js';
import type { EventKind } from './event-tally.js';
import { MARK_S } from './mark-list.js';
import { MinMaxTrace } from './min-max-trace.js';
import { PlaybackBuffer } from './playback-buffer.js';
import { SoundEvidence } from './sound-evidence.js';
import { SpectrumColumns } from './spectrum-columns.js';
import type { Beliefs, Evidence, Marks } from './types.js';
import { VectorSeries } from './vector-series.js';

/** Bins of a thinned trace: every sample of the first 13 s at 10 kHz, some 6 to 10 ms of ten minutes. */
const TRACE_BINS = 131_072;
const CLOSE_UP_S = 0.25;
const MOST_CLOSE_UPS = 12;
/** Height over the floor from which an event line of sound counts as standing clear. */
const DRAWN_LINE = 12;

type Source = Pick<Recording, 'kind' | 'sampleRateHz' | 'channels'>;

/**
 * Gathers what people may look at beside the result, in the one pass in which the samples go through the
 * pipeline: give it the same blocks and the pipeline's events. Memory does not grow with the run.
 */
export class EvidenceCollector {
  readonly #source: Source;
  readonly #traces: MinMaxTrace[];
  readonly #closeUps: CloseUps;
  readonly #sound: SoundParts | null;
  readonly #electrical: TraceEvidence | null;
  #windows: VectorSeries | undefined;
  #firstWindow = { startS: 0, endS: 0 };
  #hopS = 0;
  #rows = 0;
  #waiting: Float64Array | undefined;
  #samples = 0;

  constructor(source: Source) {
    const { sampleRateHz, kind, channels } = source;
    this.#source = source;
    this.#traces = channels.map(() => new MinMaxTrace(TRACE_BINS));
    this.#closeUps = new CloseUps({
      samples: Math.round(CLOSE_UP_S * sampleRateHz),
      every: Math.round(2 * sampleRateHz),
      most: kind === 'sound' ? MOST_CLOSE_UPS / 2 : MOST_CLOSE_UPS,
      channels: channels.length,
    });
    this.#sound = kind === 'sound' ? new SoundParts(sampleRateHz) : null;
    this.#electrical = kind === 'sound' ? null : new TraceEvidence(sampleRateHz, channels);
  }

  push(channels: readonly Float64Array[]): void {
    channels.forEach((samples, c) => {
      this.#traces[c]!.push(samples);
    });
    this.#closeUps.push(channels);
    this.#sound?.push(channels[0]!);
    this.#electrical?.push(channels);
    this.#samples += channels[0]!.length;
  }

  /** What the pipeline says; only its windows matter here. */
  event(event: PipelineEvent): void {
    if (event.type !== 'window') return;
    const { window, judgement } = event;
    const line = window.sound;
    const clear = line !== undefined && line.lineProminence >= DRAWN_LINE;
    const row = Float64Array.of(...judgement.probabilities, clear ? line.lineHz : Number.NaN);
    if (!this.#waiting && !this.#windows) {
      this.#firstWindow = { startS: window.startS, endS: window.endS };
      this.#waiting = row;
      return;
    }
    const offsetS = window.startS - this.#firstWindow.startS;
    if (!this.#windows) {
      // The hop is known only from the second window on.
      this.#hopS = offsetS;
      this.#windows = new VectorSeries(row.length, { stepS: offsetS, most: 4096 });
      this.#windows.push(this.#waiting!);
      this.#rows = 1;
    }
    // Traces have windows within arc intervals only: what lies between holds nothing.
    const index = Math.round(offsetS / this.#hopS);
    const nothing = new Float64Array(row.length).fill(Number.NaN);
    for (; this.#rows < index; this.#rows++) this.#windows.push(nothing);
    if (this.#rows > index) return;
    this.#windows.push(row);
    this.#rows++;
  }

  /** Valid once everything went through; the result says where the arc was. */
  finish(result: Pick<Result, 'arcStretches' | 'mode' | 'features' | 'arcCondition'>): Evidence {
    const { sampleRateHz, channels, kind } = this.#source;
    const arcIntervals = result.arcStretches;
    const traces = channels.map((channel, c) => {
      const trace = this.#traces[c]!;
      const unit = channel.quantity === 'sound' ? 'of full scale' : channel.unit;
      const { quantity } = channel;
      const everySample = trace.binSamples === 1;
      return {
        quantity,
        unit,
        binS: trace.binSamples / sampleRateHz,
        everySample,
        ...trace.bins(),
      };
    });
    const closeUps = traces[0]!.everySample
      ? []
      : this.#closeUps.pieces().map((piece) => ({
          startS: piece.startSample / sampleRateHz,
          binS: 1 / sampleRateHz,
          traces: piece.channels,
        }));
    const beliefs = this.#beliefs();
    const electrical = this.#electrical?.finish(arcIntervals, eventKind(result));
    return {
      kind,
      durationS: this.#samples / sampleRateHz,
      traces,
      closeUps,
      spectrogram: this.#sound?.columns.spectrogram() ?? null,
      levelDb: this.#sound?.columns.level() ?? null,
      levels: null,
      plane: null,
      averageShort: null,
      spectrum: this.#sound?.shape.spectrum(arcIntervals) ?? null,
      intervals: this.#sound?.shape.intervals(arcIntervals) ?? null,
      eventRate: this.#soundRate(),
      beliefs,
      playback: this.#sound?.playback.finish(sampleRateHz) ?? null,
      ...electrical,
      marks: [...(electrical?.marks ?? []), ...disturbanceMarks(result.arcCondition)],
    };
  }

  #beliefs(): Beliefs | null {
    if (!this.#windows) return null;
    const columns = this.#windows.columns();
    const byMode = Object.fromEntries(MODES.map((mode, k) => [mode, columns[k]!]));
    return { ...this.#grid(), byMode: byMode as Record<Mode, Float64Array> };
  }

  #soundRate(): Evidence['eventRate'] {
    if (!this.#windows || !this.#sound) return null;
    const values = this.#windows.columns()[MODES.length]!;
    return { of: 'acoustic events', ...this.#grid(), values };
  }

  /** Values stand for the middle of their windows: half a step to either side. */
  #grid(): { stepS: number; startS: number } {
    const stepS = this.#windows!.stepS;
    const middleS = (this.#firstWindow.startS + this.#firstWindow.endS) / 2;
    return { stepS, startS: Math.max(0, middleS - stepS / 2) };
  }
}

/** A recording whose blocks also go to the collector. */
export function watched(recording: Recording, collector: EvidenceCollector): Recording {
  return Object.create(recording, {
    blocks: {
      value: async function* () {
        for await (const block of recording.blocks()) {
          collector.push(block.channels);
          yield block;
        }
      },
    },
  }) as Recording;
}

class SoundParts {
  readonly columns: SpectrumColumns;
  readonly shape: SoundEvidence;
  readonly playback: PlaybackBuffer;

  constructor(rateHz: number) {
    this.columns = new SpectrumColumns(rateHz);
    this.shape = new SoundEvidence(rateHz);
    this.playback = new PlaybackBuffer(rateHz);
  }

  push(samples: Float64Array): void {
    this.columns.push(samples);
    this.shape.push(samples);
    this.playback.push(samples);
  }
}

/** The disturbances that the result names, a list for each kind that is there. */
function disturbanceMarks(condition: Result['arcCondition']): Marks[] {
  return DISTURBANCE_KINDS.flatMap((what) => {
    const of = condition?.marks.filter((one) => one.kind === what) ?? [];
    if (of.length === 0) return [];
    const units = (seconds: number): number => Math.round(seconds / MARK_S);
    return [
      {
        what,
        total: of.length,
        starts: Uint32Array.from(of, (one) => units(one.startS)),
        lengths: Uint32Array.from(of, (one) => units(one.endS - one.startS)),
      },
    ];
  });
}

/** The events that carry the metal in the mode found; without a mode, what the recording counted most surely. */
function eventKind({ mode, features }: Pick<Result, 'mode' | 'features'>): EventKind {
  if (mode === 'pulsed-spray') return 'pulse';
  const dropsShown = typeof features['dropRateHz'] === 'number';
  if ((mode === 'spray' || mode === 'globular') && dropsShown) return 'drop';
  return 'short';
}
