import type { RateTrack } from '../../../analysis/compare/index.js';
import type { PipelineEvent } from '../../../analysis/index.js';
import { type FeatureWindow, VOLTAGE_FEATURES } from '../../../features/index.js';
import type { Recording } from '../../../recording/index.js';

const SHORT_RATE = VOLTAGE_FEATURES.features.findIndex(({ id }) => id === 'shortRateHz');

/** Keeps the event rate of every window of the burning arc; a window without a rate is left out. */
export class RateCollector {
  readonly track: RateTrack = { timesS: [], ratesHz: [] };
  readonly #rateOf: (window: FeatureWindow) => number;

  constructor(recording: Recording) {
    const hasVoltage = recording.channels.some(({ quantity }) => quantity === 'voltage');
    this.#rateOf = (window) => {
      if (window.sound) return window.sound.lineHz;
      return hasVoltage ? (window.values[SHORT_RATE] ?? Number.NaN) : Number.NaN;
    };
  }

  take(event: PipelineEvent): void {
    if (event.type !== 'window' || !event.arcOn) return;
    const rate = this.#rateOf(event.window);
    if (!(rate > 0)) return;
    this.track.timesS.push((event.window.startS + event.window.endS) / 2);
    this.track.ratesHz.push(rate);
  }
}
