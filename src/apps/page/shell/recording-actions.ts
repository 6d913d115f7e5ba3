import { wavBlob } from '../../report/client/index.js';
import { AnswerSound, hush, speak } from '../capture/answer-sound.js';
import { MicrophoneError } from '../capture/microphone.js';
import { type Recorded, Recorder } from '../capture/recorder.js';
import type { Judged, LiveState, RawSetup } from '../messages.js';
import type { Run } from '../storage/database.js';
import { tagOf } from '../words/index.js';
import { followLanguage } from './follow-language.js';
import { judgeFile } from './judge-file.js';
import type { RunStore } from './run-store.js';
import { glanceOf } from './run-words.js';
import { newId, recordingName, runOf, stated } from './runs.js';
import type { Leftover, Shown } from './state.js';
import type { Store } from './store.js';
import { toTop } from './to-top.js';
import { usableSetup } from './usable-setup.js';

/** Levels kept: the last second at ten a second. */
const LEVELS = 10;

/** Start, stop, and what becomes of a recording. */
export class RecordingActions {
  readonly #store: Store;
  readonly #runStore: RunStore;
  #recorder: Recorder | null = null;
  readonly #sound = new AnswerSound();

  constructor(store: Store, runStore: RunStore) {
    this.#store = store;
    this.#runStore = runStore;
  }

  async start(): Promise<void> {
    const { state } = this.#store;
    if (state.phase !== 'idle') return;
    this.#sound.open();
    // What is still being read out would be heard in the recording.
    hush();
    // Whatever is typed, it records: what can't be used is left out of the comparison.
    const { setup, wrong } = usableSetup(state.setup);
    this.#store.set({
      phase: 'starting',
      wrong,
      sheet: null,
      live: null,
      levels: [],
      keptOn: [],
      notKept: false,
      trouble: null,
    });
    void this.#runStore.keepSetup(state.booth, stated(state.setup));
    const id = newId();
    const name = recordingName(new Date());
    const options = {
      id,
      name,
      setup,
      sound: state.tones,
      countdownS: state.countdownS,
      stopsItself: state.stopsItself,
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
    toTop();
    void this.#tellAnswer(run);
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

  /** By tone, and by voice where that is wanted; after the sign that the recording is over. */
  async #tellAnswer(run: Run): Promise<void> {
    await this.#recorder?.ended;
    const { tones, speaks, words } = this.#store.state;
    const { wanted, spoken } = glanceOf(run, this.#store.state);
    if (tones) await this.#sound.play(wanted?.answer ?? 'open');
    if (speaks) speak(spoken, words.lang);
  }

  /** Judges what was kept of a recording that a closed page left behind. */
  async recover({ id, name, rateHz }: Leftover): Promise<void> {
    this.#store.set({ phase: 'judging' });
    const wav = wavBlob(await this.#runStore.pieces(id), rateHz);
    const { setup, wrong } = usableSetup(this.#store.state.setup);
    this.#store.set({ wrong });
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
    const { levels } = this.#store.state;
    this.#store.set({
      live,
      levels: [...levels, live.peakDb].slice(-LEVELS),
    });
  }
}
