import type { UnitSystem } from '../../../core/index.js';
import { linkedSetup } from '../../../setup/index.js';
import { chooseUnits, chooseWords } from '../words/index.js';
import { EarActions } from './ear-actions.js';
import { FileActions } from './file-actions.js';
import { followLanguage } from './follow-language.js';
import { fetchAll } from './offline.js';
import { Preferences } from './preferences.js';
import { RecordingActions } from './recording-actions.js';
import { RunActions } from './run-actions.js';
import { RunStore } from './run-store.js';
import { SetupActions } from './setup-actions.js';
import { initialState, type Tab } from './state.js';
import { Store } from './store.js';

/** The page as a whole: its state, and everything a person can do. */
export class App {
  readonly store: Store;
  readonly runStore: RunStore;
  readonly recording: RecordingActions;
  readonly files: FileActions;
  readonly runs: RunActions;
  readonly ears: EarActions;
  readonly setup: SetupActions;
  readonly #preferences = new Preferences();

  constructor() {
    const words = chooseWords(this.#preferences.get('language'), navigator.languages);
    const units = chooseUnits(this.#preferences.get('units'), navigator.languages);
    this.store = new Store(initialState(words, units));
    this.runStore = new RunStore(this.store);
    this.recording = new RecordingActions(this.store, this.runStore);
    this.files = new FileActions(this.store, this.runStore);
    this.runs = new RunActions(this.store, this.runStore);
    this.ears = new EarActions(this.store, this.runStore, this.#preferences);
    this.setup = new SetupActions(this.store, this.runStore, this.#preferences);
  }

  async open(): Promise<void> {
    this.store.set({
      student: this.#preferences.get('student') ?? '',
      booth: this.#preferences.get('booth') ?? '',
      tones: this.#preferences.get('tones') !== 'off',
      speaks: this.#preferences.get('speaks') === 'on',
      stopsItself: this.#preferences.get('stopsItself') !== 'off',
      countdownS: Number(this.#preferences.get('countdownS') ?? 5),
    });
    await this.runStore.open();
    await this.setup.open();
    this.setup.takeLinked(linkedSetup(location.hash));
    // The list alone, for the pictures beside a run; sounds come when they are played.
    void this.ears.load();
  }

  go(tab: Tab): void {
    this.ears.stop();
    this.store.set({ tab, message: '', sheet: null });
    scrollTo(0, 0);
    if (tab === 'listen') void this.ears.load();
  }

  language(lang: string): void {
    this.#preferences.set('language', lang);
    this.store.set({ words: chooseWords(lang, []) });
    void followLanguage(this.store);
  }

  units(units: UnitSystem): void {
    this.#preferences.set('units', units);
    this.store.set({ units });
    void followLanguage(this.store);
  }

  /** A choice of yes or no that is remembered. */
  choose(what: 'tones' | 'speaks' | 'stopsItself', on: boolean): void {
    this.#preferences.set(what, on ? 'on' : 'off');
    this.store.set({ [what]: on });
  }

  countdown(seconds: number): void {
    this.#preferences.set('countdownS', String(seconds));
    this.store.set({ countdownS: seconds });
  }

  /** Brings the readers of all formats onto the device, for use without a network. */
  async fetchReaders(): Promise<void> {
    if (this.store.state.readers === 'fetching') return;
    this.store.set({ readers: 'fetching' });
    const readers = await fetchAll().then(
      () => 'ready' as const,
      () => 'failed' as const,
    );
    this.store.set({ readers });
  }

  async clear(): Promise<void> {
    this.#preferences.clear();
    await this.runs.clear();
  }
}
