import type { Preferences } from './preferences.js';
import type { RunStore } from './run-store.js';
import { stated } from './runs.js';
import type { SheetKey } from './sheet-keys.js';
import type { Store } from './store.js';
import { understood, usableSetup } from './usable-setup.js';

/** Asked for one after another where nothing is known yet; volts and feed are left to a tap of their own. */
const IN_TURN: readonly SheetKey[] = ['expect', 'wireDiameter', 'gas', 'wireMaterial'];
/** Longest number on the pad, signs. */
const DIGITS = 5;

/** Who welds, on which machine, and what it is set to. Nothing here can stop a recording. */
export class SetupActions {
  readonly #store: Store;
  readonly #runStore: RunStore;
  readonly #preferences: Preferences;
  #typed = 0;

  constructor(store: Store, runStore: RunStore, preferences: Preferences) {
    this.#store = store;
    this.#runStore = runStore;
    this.#preferences = preferences;
  }

  async open(): Promise<void> {
    if (this.#typed === 0) await this.#load(this.#store.state.booth);
  }

  /** What a procedure fixes, from the address that was opened, goes before what was kept. */
  takeLinked(linked: Readonly<Record<string, string>>): void {
    if (Object.keys(linked).length === 0 || this.#typed > 0) return;
    const setup = { ...this.#store.state.setup, ...linked };
    this.#store.set({ setup, wrong: usableSetup(setup).wrong });
  }

  student(name: string): void {
    this.#preferences.set('student', name);
    this.#store.set({ student: name });
  }

  /** While its name is typed: a redraw meanwhile must not take it back. */
  typeBooth(name: string): void {
    this.#store.set({ booth: name });
  }

  /** Another machine brings the set-up last used on it. */
  async booth(name: string): Promise<void> {
    this.#preferences.set('booth', name);
    this.#store.set({ booth: name });
    await this.#load(name);
  }

  /** While it is typed: what stands there is what will be used. */
  type(key: string, text: string): void {
    this.#typed += 1;
    this.#store.set({ setup: { ...this.#store.state.setup, [key]: text } });
  }

  /** When a field is left: units that can only have been meant are added, wrong fields marked, all remembered. */
  async done(): Promise<void> {
    const { booth, setup } = this.#store.state;
    const meant = Object.fromEntries(
      Object.entries(setup).map(([key, text]) => [key, understood(key, text)]),
    );
    this.#store.set({ setup: meant, wrong: usableSetup(meant).wrong });
    await this.#runStore.keepSetup(booth, stated(meant));
  }

  openSheet(key: SheetKey): void {
    this.#store.set({ sheet: { key, digits: '' } });
  }

  closeSheet(): void {
    this.#store.set({ sheet: null });
  }

  /** Takes a value from a list and goes on to the next that is not known yet. */
  pick(key: SheetKey, value: string): void {
    const before = this.#store.state.setup;
    const first = IN_TURN.every((one) => (before[one] ?? '') === '');
    const going = first || IN_TURN.indexOf(key) > 0;
    this.type(key, value);
    void this.done();
    const { setup } = this.#store.state;
    const next = IN_TURN.find((one) => (setup[one] ?? '') === '');
    const on = value !== '' && going && IN_TURN.includes(key) && next !== undefined;
    this.#store.set({ sheet: on ? { key: next, digits: '' } : null });
  }

  /** Who or where, from a list or typed. */
  name(key: 'student' | 'booth', value: string): void {
    if (key === 'student') this.student(value);
    else void this.booth(value);
    this.closeSheet();
  }

  /** A key of the number pad: a digit, the point, or `back`. Goes by the newest state: fingers are faster than a redraw. */
  press(key: string): void {
    const { sheet } = this.#store.state;
    if (!sheet) return;
    const { digits } = sheet;
    const longer =
      key === '.' && digits.includes('.') ? digits : `${digits}${key}`.slice(0, DIGITS);
    this.#store.set({ sheet: { ...sheet, digits: key === 'back' ? digits.slice(0, -1) : longer } });
  }

  /** Takes what is on the number pad, in a unit; nothing typed changes nothing. */
  takeNumber(unit: string): void {
    const { sheet } = this.#store.state;
    if (!sheet || sheet.digits === '') this.closeSheet();
    else this.pick(sheet.key, `${sheet.digits.replace(/\.$/, '')} ${unit}`);
  }

  async #load(name: string): Promise<void> {
    const typed = this.#typed;
    const setup = await this.#runStore.setup(name);
    // What was typed meanwhile is newer than what was kept.
    if (typed !== this.#typed) return;
    if (this.#store.state.booth === name && Object.keys(setup).length > 0)
      this.#store.set({ setup, wrong: usableSetup(setup).wrong });
  }
}
