import type { Mode } from '../../../core/index.js';
import { csvCell, csvHeader, csvRow, jsonText, viewVerdict } from '../../view/index.js';
import type { Judged } from '../messages.js';
import type { Run } from '../storage/database.js';
import { followLanguage } from './follow-language.js';
import { judgeFile } from './judge-file.js';
import type { RunStore } from './run-store.js';
import { saveAs } from './save.js';
import type { Shown } from './state.js';
import type { Store } from './store.js';
import { toTop } from './to-top.js';

/** Prior probability of an arc where somebody says that they welded. */
const SURELY_A_WELD = 0.95;

/** Open, compare, export and delete what has been judged. */
export class RunActions {
  readonly #store: Store;
  readonly #runStore: RunStore;

  constructor(store: Store, runStore: RunStore) {
    this.#store = store;
    this.#runStore = runStore;
  }

  /** `atHand`: the file itself, where the page still holds it. */
  async open(run: Run, atHand: Blob | null = null): Promise<void> {
    const stored = run.hasFile ? await this.#runStore.file(run.id) : null;
    const file = stored ?? atHand;
    const kept = stored ? 'yes' : 'only-result';
    const shown = { run, file, evidence: null, pictures: null, kept, interruption: null } as const;
    this.#store.set({ shown, tab: 'verdict' });
    toTop();
  }

  /** Judges the kept file again, for its pictures; the answer stays the one that was given. */
  async draw(): Promise<void> {
    const { shown } = this.#store.state;
    if (!shown) return;
    const { arcPrior } = shown.run.result.settings.values;
    const judged = await this.#judgeAgain(
      shown,
      typeof arcPrior === 'number' ? arcPrior : undefined,
    );
    if (judged)
      this.#store.set({
        shown: { ...shown, evidence: judged.evidence, pictures: judged.pictures },
      });
    await followLanguage(this.#store);
  }

  /** Judges the kept file again, now that somebody says it is a weld; the new answer takes the old one's place. */
  async judgeAsWeld(): Promise<void> {
    const { shown, words } = this.#store.state;
    if (!shown) return;
    const judged = await this.#judgeAgain(shown, SURELY_A_WELD);
    if (!judged || judged.result.status === 'failed') return;
    // The same recording: what was noted while it was made stands.
    const result = { ...judged.result, source: shown.run.result.source };
    const run = { ...shown.run, result };
    const kept = await this.#runStore.keep(run, shown.file);
    const { evidence, pictures } = judged;
    this.#store.set({
      shown: { ...shown, run, kept, evidence, pictures },
      message: viewVerdict(result, words.view).headline,
    });
    await followLanguage(this.#store);
  }

  /** Null where the file is gone, could not be judged, or another run is shown by now. */
  async #judgeAgain({ run, file }: Shown, arcPrior: number | undefined): Promise<Judged | null> {
    if (!file) return null;
    this.#store.set({ drawing: true });
    const { lang } = this.#store.state.words;
    const options = { lang, arcPrior, onProgress: () => {} };
    const again = judgeFile(file, run.result.source.path, run.setup, options);
    const judged = await again.done.catch(() => null);
    this.#store.set({ drawing: false });
    return this.#store.state.shown?.run.id === run.id ? judged : null;
  }

  /** The trainer's own word on the run that is open; null takes it back. */
  async label(mode: Mode | null): Promise<void> {
    const { shown } = this.#store.state;
    if (!shown) return;
    const { trainerMode: _, ...rest } = shown.run;
    const run: Run = mode === null ? rest : { ...rest, trainerMode: mode };
    this.#store.set({ shown: { ...shown, run } });
    if (shown.kept !== 'no') await this.#runStore.update(run);
  }

  /** Takes a run into the comparison or out of it; a third one replaces the first. */
  pick(id: string): void {
    const { picked } = this.#store.state;
    this.#store.set({
      picked: picked.includes(id) ? picked.filter((one) => one !== id) : [...picked, id].slice(-2),
    });
  }

  async remove(id: string): Promise<void> {
    await this.#runStore.remove(id);
    const { picked, shown, words } = this.#store.state;
    this.#store.set({
      picked: picked.filter((one) => one !== id),
      shown: shown?.run.id === id ? null : shown,
      message: words.page.removed,
    });
  }

  async clear(): Promise<void> {
    await this.#runStore.clear();
    this.#store.set({
      picked: [],
      shown: null,
      asking: false,
      jobs: [],
      leftovers: [],
      student: '',
      booth: '',
      setup: {},
      wrong: {},
      drill: null,
      scores: { simulated: {}, own: {} },
      message: this.#store.state.words.page.deleted,
    });
  }

  saveSound(): void {
    const { shown } = this.#store.state;
    if (shown?.file) saveAs(shown.file, plainName(shown.run.result.source.path));
  }

  saveResult(): void {
    const { shown } = this.#store.state;
    if (!shown) return;
    const { result } = shown.run;
    const text = new Blob([jsonText(result, 'indented')], { type: 'application/json' });
    saveAs(text, `${plainName(result.source.path)}.result.json`);
  }

  saveTable(): void {
    const text = new Blob([runTable(this.#store.state.runs)], { type: 'text/csv;charset=utf-8' });
    saveAs(text, 'runs.csv');
  }
}

/** All runs with who and when, for a spreadsheet; text that would start a formula is disarmed. */
export function runTable(runs: readonly Run[]): string {
  const mark = '\uFEFF';
  const head = `${mark}recorded,student,booth,${csvHeader('excel').replace(mark, '')}`;
  const rows = runs.map(({ createdMs, student, booth, result }) => {
    const who = [new Date(createdMs).toISOString(), student, booth];
    return `${who.map((one) => csvCell(one, 'excel')).join(',')},${csvRow(result, 'excel')}`;
  });
  return head + rows.join('');
}

/** A file name without what systems refuse or hide. */
export function plainName(name: string): string {
  const plain = name
    .replaceAll(/[\p{Cc}\p{Bidi_Control}<>:"/\\|?*]+/gu, '-')
    .replace(/^[.\s-]+/, '')
    .slice(0, 120);
  return plain === '' ? 'run' : plain;
}
