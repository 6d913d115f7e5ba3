import { defaultSettings, settingsRecord } from '../../../analysis/index.js';
import { failedResult } from '../../../analysis/result/index.js';
import type { Judged } from '../messages.js';
import { tagOf } from '../words/index.js';
import { HOST_NAME } from './host.js';
import { type Judging, judgeFile } from './judge-file.js';
import type { RunStore } from './run-store.js';
import { newId, runOf } from './runs.js';
import type { FileJob } from './state.js';
import type { Store } from './store.js';
import { usableSetup } from './usable-setup.js';

/** Files one after another; each can be cancelled. */
export class FileActions {
  readonly #store: Store;
  readonly #runStore: RunStore;
  #current: { id: string; judging: Judging } | null = null;

  constructor(store: Store, runStore: RunStore) {
    this.#store = store;
    this.#runStore = runStore;
  }

  add(files: readonly File[]): void {
    const jobs = files.map(
      (file): FileJob => ({ id: newId(), file, status: 'waiting', share: 0, run: null }),
    );
    this.#store.set({ jobs: [...this.#store.state.jobs, ...jobs] });
    void this.#next();
  }

  cancel(id: string): void {
    if (this.#current?.id === id) this.#current.judging.cancel();
    else this.#change(id, { status: 'cancelled' });
  }

  async #next(): Promise<void> {
    if (this.#current) return;
    const job = this.#store.state.jobs.find((one) => one.status === 'waiting');
    if (!job) return;
    const { setup, wrong } = usableSetup(this.#store.state.setup);
    this.#store.set({ wrong });
    const judging = judgeFile(job.file, job.file.name, setup, {
      lang: tagOf(this.#store.state.words.lang, this.#store.state.units),
      onProgress: (share) => this.#change(job.id, { share }),
    });
    this.#current = { id: job.id, judging };
    this.#change(job.id, { status: 'working' });
    const judged = await judging.done.catch((error: unknown) => broken(job.file.name, error));
    this.#current = null;
    if (judged) await this.#finish(job, judged, setup);
    else this.#change(job.id, { status: 'cancelled' });
    void this.#next();
  }

  async #finish(job: FileJob, judged: Judged, setup: Readonly<Record<string, string>>) {
    const { id, file } = job;
    const run = runOf(id, 'file', judged.result, { ...this.#store.state, setup });
    const kept = await this.#runStore.keep(run, file);
    const hasFile = kept === 'yes';
    this.#change(id, { status: 'done', share: 1, run: { ...run, hasFile } });
    if (kept === 'no') this.#store.set({ message: this.#store.state.words.page.notSaved });
  }

  #change(id: string, change: Partial<FileJob>): void {
    const jobs = this.#store.state.jobs.map((one) => (one.id === id ? { ...one, ...change } : one));
    this.#store.set({ jobs });
  }
}

/** A worker that broke down is a failed input like any other. */
function broken(path: string, error: unknown): Judged {
  const settings = settingsRecord(defaultSettings());
  const result = failedResult({ path, sha256: null, host: HOST_NAME, settings, error });
  return { result, evidence: null, pictures: null };
}
