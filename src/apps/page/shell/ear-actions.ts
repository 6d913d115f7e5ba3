import { createRandom, MODES, type Mode } from '../../../core/index.js';
import {
  type DrillAnswer,
  type DrillKind,
  type DrillScore,
  type DrillSound,
  makeDrill,
  simulatedTruth,
  withDrill,
} from '../sounds/drill.js';
import { Examples } from '../sounds/examples.js';
import type { Run } from '../storage/database.js';
import type { Preferences } from './preferences.js';
import type { RunStore } from './run-store.js';
import { newId } from './runs.js';
import type { Store } from './store.js';

/** So much of a run is played, s. */
const RUN_S = 3;
const SCORES = 'scores';

/** Sounds to listen to: examples, one's own runs, and the drill. One at a time. */
export class EarActions {
  readonly #store: Store;
  readonly #runStore: RunStore;
  readonly #preferences: Preferences;
  readonly #examples = new Examples();
  #context: AudioContext | null = null;
  #source: AudioBufferSourceNode | null = null;
  #startedS = 0;

  constructor(store: Store, runStore: RunStore, preferences: Preferences) {
    this.#store = store;
    this.#runStore = runStore;
    this.#preferences = preferences;
  }

  /** The list of examples, and the scores of who listens. */
  async load(): Promise<void> {
    this.#store.set({ scores: this.#scores() });
    try {
      this.#store.set({ examples: await this.#examples.list() });
    } catch {
      this.#store.set({ message: this.#store.state.words.page.hear.notThere });
    }
  }

  /** How far the sound that plays has come, s. */
  positionS(): number {
    return this.#context ? this.#context.currentTime - this.#startedS : 0;
  }

  stop(): void {
    this.#source?.stop();
    this.#source = null;
    if (this.#store.state.playing) this.#store.set({ playing: null });
  }

  /** The first example of a mode, or the one named. */
  async playExample(id: string): Promise<void> {
    const context = this.#open();
    try {
      const example = (await this.#examples.list())[Number(id)];
      if (!example) return;
      const samples = await this.#examples.samples(example);
      const buffer = context.createBuffer(1, samples.length, example.rateHz);
      buffer.copyToChannel(samples, 0);
      this.#play(context, buffer, 0, `example ${id}`);
    } catch {
      this.#store.set({ message: this.#store.state.words.page.hear.notThere });
    }
  }

  async playMode(mode: Mode): Promise<void> {
    await this.load();
    const at = this.#store.state.examples.findIndex((one) => one.mode === mode);
    if (at >= 0) await this.playExample(String(at));
  }

  /** A few seconds from the middle of the arc. */
  async playRun(run: Run, atHand: Blob | null = null): Promise<void> {
    const context = this.#open();
    const file = atHand ?? (await this.#runStore.file(run.id));
    const buffer =
      file && (await context.decodeAudioData(await file.arrayBuffer()).catch(() => null));
    if (buffer) this.#play(context, buffer, middleOf(run, buffer.duration), `run ${run.id}`);
    else this.#store.set({ message: this.#store.state.words.page.hear.notThere });
  }

  /** What a drill of a kind can be made of. */
  pool(kind: DrillKind): DrillSound[] {
    const { examples, runs } = this.#store.state;
    if (kind === 'simulated')
      return examples.map(({ mode }, k) => ({ id: String(k), truth: simulatedTruth(mode) }));
    return runs
      .filter(({ hasFile, result }) => hasFile && result.source.kind === 'sound')
      .flatMap(({ id, trainerMode }) => (trainerMode ? [{ id, truth: trainerMode }] : []));
  }

  startDrill(kind: DrillKind): void {
    const questions = makeDrill(this.pool(kind), createRandom(newId()));
    this.#store.set({ drill: { kind, questions, at: 0 } });
    void this.playQuestion();
  }

  async playQuestion(): Promise<void> {
    const { drill, runs } = this.#store.state;
    const id = drill?.questions[drill.at]?.id;
    if (!drill || id === undefined) return;
    if (drill.kind === 'simulated') return this.playExample(id);
    const run = runs.find((one) => one.id === id);
    if (run) await this.playRun(run);
  }

  answer(answer: DrillAnswer): void {
    const { drill } = this.#store.state;
    const question = drill?.questions[drill.at];
    if (!drill || !question || question.answer !== null) return;
    const answered = { ...question, answer };
    this.#keep(drill.kind, withDrill(this.#scores()[drill.kind], [answered]));
    const questions = drill.questions.map((one, k) => (k === drill.at ? answered : one));
    this.#store.set({ drill: { ...drill, questions } });
  }

  next(): void {
    const { drill } = this.#store.state;
    if (!drill) return;
    this.stop();
    this.#store.set({ drill: { ...drill, at: drill.at + 1 } });
    void this.playQuestion();
  }

  endDrill(): void {
    this.stop();
    this.#store.set({ drill: null });
  }

  #open(): AudioContext {
    this.#context ??= new AudioContext();
    void this.#context.resume();
    return this.#context;
  }

  #play(context: AudioContext, buffer: AudioBuffer, fromS: number, id: string): void {
    this.stop();
    const lengthS = Math.min(RUN_S, buffer.duration - fromS);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(context.destination);
    source.addEventListener('ended', () => {
      if (this.#source === source) this.stop();
    });
    source.start(0, fromS, lengthS);
    this.#source = source;
    this.#startedS = context.currentTime;
    this.#store.set({ playing: id });
  }

  /** Of the student that is named on the page; a device that keeps nothing has none. */
  #scores(): Record<DrillKind, DrillScore> {
    const all = read(this.#preferences.get(SCORES));
    return all[this.#store.state.student] ?? { simulated: {}, own: {} };
  }

  #keep(kind: DrillKind, score: DrillScore): void {
    const all = read(this.#preferences.get(SCORES));
    const scores = { ...this.#scores(), [kind]: score };
    all[this.#store.state.student] = scores;
    this.#preferences.set(SCORES, JSON.stringify(all));
    this.#store.set({ scores });
  }
}

type Scores = Record<string, Record<DrillKind, DrillScore>>;

function read(text: string | null): Scores {
  if (text === null) return {};
  try {
    return JSON.parse(text) as Scores;
  } catch {
    return {};
  }
}

function middleOf({ result }: Run, lengthS: number): number {
  const first = result.arcStretches[0];
  const middleS = first ? (first.startS + first.endS) / 2 : lengthS / 2;
  return Math.max(0, Math.min(lengthS - RUN_S, middleS - RUN_S / 2));
}

/** Runs that the trainer has named, by mode. */
export function labelledCounts(runs: readonly Run[]): { mode: Mode; count: number }[] {
  return MODES.map((mode) => ({
    mode,
    count: runs.filter(({ trainerMode, hasFile }) => hasFile && trainerMode === mode).length,
  }));
}
