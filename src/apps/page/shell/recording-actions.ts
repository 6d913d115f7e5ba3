import { parseSetup } from '../../../setup/index.js';
import { wavBlob } from '../../report/client/index.js';
import { MicrophoneError } from '../capture/microphone.js';
import { type Recorded, Recorder } from '../capture/recorder.js';
import type { Judged, LiveState, RawSetup } from '../messages.js';
import { tagOf } from '../words/index.js';
import { followLanguage } from './follow-language.js';
import { judgeFile } from './judge-file.js';
import type { RunStore } from './run-store.js';
import { newId, recordingName, runOf, stated } from './runs.js';
import type { Leftover, Shown } from './state.js';
import type { Store } from './store.js';

/** Levels kept for the strip: the last ten seconds at ten a second. */
const STRIP = 100;

/** Start, stop, and what becomes of a recording. */
export class RecordingActions {
  readonly #store: Store;
  readonly #runStore: RunStore;
  #recorder: Recorder | null = null;

  constructor(store: Store, runStore: RunStore) {
    this.#store = store;
    this.#runStore = runStore;
  }

  async start(): Promise<void> {
    const { state } = this.#store;
    if (state.phase !== 'idle') return;
    const setup = stated(state.setup);
    if (!this.check(setup)) return;
    this.#store.set({
      phase: 'starting',
      live: null,
      levels: [],
      arcs: [],
      keptOn: [],
      notKept: false,
      trouble: null,
    });
    void this.#runStore.keepSetup(state.booth, setup);
    const id = newId();
    const name = recordingName(new Date());
    const options = {
      id,
      name,
      setup,
      sound: state.tones,
      lang: tagOf(state.words.lang, state.units),
    };
    try {
      const recorder = await Recorder.start(options, {
        onLive: (live) => this.#live(live),
        onEnough: () => this.#store.set({ message: this.#store.state.words.page.enough }),
        onNotKept: () => this.#store.set({ notKept: true }),
        onStopping: () => this.#store.set({ phase: 'judging' }),
        onVerdict: (recorded) => void this.#show(id, setup, recorded),
        onDone: (judged) => void this.#finish(id, setup, judged),
      });
      // A recording that can't be judged at all may be over before it has begun.
      if (this.#store.state.phase !== 'starting') return;
      this.#recorder = recorder;
      this.#store.set({ phase: 'recording', keptOn: recorder.keptOn });
    } catch (error) {
      const trouble = error instanceof MicrophoneError ? error.trouble : 'unknown';
      this.#store.set({ phase: 'idle', trouble });
    }
  }

  /** Shows the words and keeps the run; the pictures are still being drawn. */
  async #show(id: string, setup: RawSetup, recorded: Recorded): Promise<void> {
    const { result, wav: file, interruption } = recorded;
    const made = runOf(id, 'microphone', result, { ...this.#store.state, setup });
    const run = { ...made, hasFile: file !== null };
    const shown: Shown = { run, file, interruption, evidence: null, pictures: null, kept: 'yes' };
    this.#store.set({ phase: 'idle', tab: 'verdict', drawing: true, shown });
    const kept = await this.#runStore.keep(run, file);
    const now = this.#store.state.shown;
    if (now?.run.id === id) this.#store.set({ shown: { ...now, kept } });
  }

  async #finish(id: string, setup: RawSetup, judged: Judged & Recorded): Promise<void> {
    this.#recorder = null;
    if (this.#store.state.shown?.run.id !== id) await this.#show(id, setup, judged);
    const now = this.#store.state.shown;
    const { evidence, pictures } = judged;
    this.#store.set({
      drawing: false,
      ...(now?.run.id === id ? { shown: { ...now, evidence, pictures } } : {}),
    });
    await followLanguage(this.#store);
  }

  async stop(): Promise<void> {
    await this.#recorder?.stop();
  }

  /** True where the set-up can be used as typed; else the state says what is wrong. */
  check(setup: Readonly<Record<string, string>>): boolean {
    try {
      parseSetup(setup);
      this.#store.set({ setupError: null });
      return true;
    } catch (error) {
      this.#store.set({ setupError: { error } });
      return false;
    }
  }

  /** Judges what was kept of a recording that a closed page left behind. */
  async recover({ id, name, rateHz }: Leftover): Promise<void> {
    this.#store.set({ phase: 'judging' });
    const wav = wavBlob(await this.#runStore.pieces(id), rateHz);
    const setup = stated(this.#store.state.setup);
    const { lang } = this.#store.state.words;
    const judged = await judgeFile(wav, name, setup, { lang, onProgress: () => {} }).done;
    this.#store.set({ phase: 'idle' });
    if (!judged) return;
    const run = runOf(id, 'microphone', judged.result, { ...this.#store.state, setup });
    const kept = await this.#runStore.keep(run, wav);
    const shown = { run, file: wav, kept, interruption: null, ...judged };
    this.#store.set({ tab: 'verdict', shown });
    if (kept !== 'no') await this.#runStore.dropPieces(id);
    await followLanguage(this.#store);
  }

  #live(live: LiveState): void {
    const { levels, arcs } = this.#store.state;
    this.#store.set({
      live,
      levels: [...levels, live.peakDb].slice(-STRIP),
      arcs: [...arcs, live.arc].slice(-STRIP),
    });
  }
}
