import type { UnitSystem } from '../../../core/index.js';
import { linkedSetup } from '../../../setup/index.js';
import { chooseUnits, chooseWords } from '../words/index.js';
import { FileActions } from './file-actions.js';
import { followLanguage } from './follow-language.js';
import { fetchAll } from './offline.js';
import { Preferences } from './preferences.js';
import { RecordingActions } from './recording-actions.js';
import { RunActions } from './run-actions.js';
import { RunStore } from './run-store.js';
import { stated } from './runs.js';
import { initialState, type Tab } from './state.js';
import { Store } from './store.js';

/** The page as a whole: its state, and everything a person can do. */
export class App {
  readonly store: Store;
  readonly runStore: RunStore;
  readonly recording: RecordingActions;
  readonly files: FileActions;
  readonly runs: RunActions;
  readonly #preferences = new Preferences();
  #typed = 0;

  constructor() {
    const words = chooseWords(this.#preferences.get('language'), navigator.languages);
    const units = chooseUnits(this.#preferences.get('units'), navigator.languages);
    this.store = new Store(initialState(words, units));
    this.runStore = new RunStore(this.store);
    this.recording = new RecordingActions(this.store, this.runStore);
    this.files = new FileActions(this.store, this.runStore);
    this.runs = new RunActions(this.store, this.runStore);
  }

  async open(): Promise<void> {
    this.store.set({
      student: this.#preferences.get('student') ?? '',
      booth: this.#preferences.get('booth') ?? '',
      tones: this.#preferences.get('tones') !== 'off',
    });
    await this.runStore.open();
    if (this.#typed === 0) await this.#loadSetup(this.store.state.booth);
    this.#takeLinked();
  }

  go(tab: Tab): void {
    this.store.set({ tab, message: '' });
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

  tones(on: boolean): void {
    this.#preferences.set('tones', on ? 'on' : 'off');
    this.store.set({ tones: on });
  }

  student(name: string): void {
    this.#preferences.set('student', name);
    this.store.set({ student: name });
  }

  /** While its name is typed: a redraw meanwhile must not take it back. */
  typeBooth(name: string): void {
    this.store.set({ booth: name });
  }

  /** Another booth brings the set-up last used there. */
  async booth(name: string): Promise<void> {
    this.#preferences.set('booth', name);
    this.store.set({ booth: name });
    await this.#loadSetup(name);
  }

  /** While it is typed: what stands there is what will be used. */
  type(key: string, text: string): void {
    this.#typed += 1;
    this.store.set({ setup: { ...this.store.state.setup, [key]: text } });
  }

  /** When a field is left: says what is wrong, else remembers it for the booth. */
  async setupDone(): Promise<void> {
    const { booth, setup } = this.store.state;
    if (this.recording.check(stated(setup))) await this.runStore.keepSetup(booth, setup);
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

  /** What a procedure fixes, from the address that was opened, goes before what was kept. */
  #takeLinked(): void {
    const linked = linkedSetup(location.hash);
    if (Object.keys(linked).length === 0 || this.#typed > 0) return;
    const setup = { ...this.store.state.setup, ...linked };
    this.store.set({ setup, setupError: null });
  }

  async #loadSetup(booth: string): Promise<void> {
    const typed = this.#typed;
    const setup = await this.runStore.setup(booth);
    // What was typed meanwhile is newer than what was kept.
    if (typed !== this.#typed) return;
    if (this.store.state.booth === booth && Object.keys(setup).length > 0)
      this.store.set({ setup, setupError: null });
  }
}
