import type { Note } from '../../../core/index.js';
import type { Recording, SampleBlock } from '../../../recording/index.js';

/**
 * A recording whose samples are still to come: `push` puts them in, `end` closes it. Looks to the analysis
 * like the WAV file that is kept of it.
 */
export class LiveRecording implements Recording {
  readonly kind = 'sound';
  readonly format = 'wav';
  readonly sampleRateHz: number;
  readonly channels: Recording['channels'] = [
    { name: 'channel 1', quantity: 'sound', unit: 'full-scale' },
  ];
  readonly notes: Note[];
  readonly #waiting: Float64Array[] = [];
  #ended = false;
  #wake: (() => void) | undefined;

  constructor(sampleRateHz: number, notes: readonly Note[]) {
    this.sampleRateHz = sampleRateHz;
    this.notes = [...notes];
  }

  push(samples: Float64Array): void {
    this.#waiting.push(samples);
    this.#wake?.();
  }

  end(): void {
    this.#ended = true;
    this.#wake?.();
  }

  async *blocks(): AsyncGenerator<SampleBlock> {
    let startSample = 0;
    for (;;) {
      const samples = this.#waiting.shift();
      if (samples) {
        yield { startSample, channels: [samples] };
        startSample += samples.length;
      } else if (this.#ended) return;
      else
        await new Promise<void>((resolve) => {
          this.#wake = resolve;
        });
    }
  }
}
