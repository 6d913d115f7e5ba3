import { extractorFor } from '../../../analysis/index.js';
import type { FeatureExtractor } from '../../../features/index.js';
import { wavBlob } from '../../report/client/index.js';
import type { FromLive, ToLive } from '../messages.js';
import { PieceStore } from '../storage/pieces.js';
import { judge } from './analysis.js';
import { fileHash } from './fingerprint.js';
import { LiveMeter } from './live-meter.js';
import { LiveRecording } from './live-recording.js';
import { toSixteenBit } from './sixteen-bit.js';

/** How often the page is told what is heard, s. */
const TELL_S = 0.1;

type Start = Extract<ToLive, { type: 'start' }>;

/** Worker: samples from the microphone in, live state and at the end a result out. */
class Session {
  readonly #start: Start;
  readonly #meter: LiveMeter;
  readonly #recording: LiveRecording;
  readonly #extractor: FeatureExtractor;
  readonly #pieces: Int16Array[] = [];
  readonly #store: PieceStore;
  readonly #lateNotes: Start['notes'] = [];
  #untold = 0;
  #lastCame: () => void = () => {};
  readonly #last = new Promise<void>((resolve) => {
    this.#lastCame = resolve;
  });

  constructor(start: Start) {
    this.#start = start;
    this.#recording = new LiveRecording(start.rateHz, start.notes);
    this.#extractor = extractorFor(this.#recording, true);
    this.#meter = new LiveMeter(start.rateHz, this.#extractor);
    this.#store = new PieceStore(start.id, start.rateHz, start.name, (reason) =>
      tell({ type: 'not-kept', reason }),
    );
    start.port.onmessage = ({ data }: MessageEvent<{ samples?: Float32Array; end?: true }>) => {
      if (data.samples) this.#add(data.samples);
      if (data.end) this.#lastCame();
    };
    void this.#run();
  }

  /** Waits for the samples still on their way; an audio thread that was taken away never sends an end. */
  async stop(notes: Start['notes']): Promise<void> {
    this.#lateNotes.push(...notes);
    await Promise.race([this.#last, new Promise((resolve) => setTimeout(resolve, 400))]);
    this.#recording.end();
  }

  #add(samples: Float32Array): void {
    const piece = toSixteenBit(samples);
    this.#pieces.push(piece);
    this.#store.add(piece);
    this.#meter.samples(piece);
    // What is judged is what is kept, so that the kept file gives the same answer.
    this.#recording.push(Float64Array.from(piece, (value) => value / 32768));
    this.#untold += piece.length;
    if (this.#untold < TELL_S * this.#start.rateHz) return;
    this.#untold = 0;
    tell({ type: 'live', state: this.#meter.read() });
  }

  async #run(): Promise<void> {
    const { name, setup, rateHz, lang } = this.#start;
    let wav: Blob | null = null;
    const judged = await judge(async () => this.#recording, {
      name,
      setup,
      lang,
      notes: this.#lateNotes,
      extractor: this.#extractor,
      onEvent: (event) => this.#meter.event(event),
      onResult: (result) => tell({ type: 'verdict', wav, result }),
      sha256: async () => {
        wav = wavBlob(this.#pieces, rateHz);
        return fileHash(wav);
      },
    });
    await this.#store.flush();
    tell({ type: 'done', wav: this.#pieces.length > 0 ? wav : null, ...judged });
  }
}

let session: Session | undefined;

addEventListener('message', ({ data }: MessageEvent<ToLive>) => {
  if (data.type === 'start') session = new Session(data);
  else void session?.stop(data.notes);
});
tell({ type: 'ready' });

function tell(message: FromLive): void {
  postMessage(message);
}
