import {
  type ArcChange,
  type ArcEvidence,
  type ArcTracker,
  fallAtEnd,
} from './evidence-tracker.js';
import { LevelHistory } from './level-edge.js';

/** Blocks averaged before the arc counts as burning, and before it counts as out (own choice). */
const ON_BLOCKS = 3;
const OFF_BLOCKS = 6;
/** A single block cannot outvote the others by more than this log-odds. */
const SCORE_CUT = 3;
/** Log-odds from which a block before the arc was noticed belongs to it. */
const PART_OF_ARC = -0.5;
/** The level leaps within this time of where the network's belief changes, s. */
const EDGE_REACH_S = 0.3;
/** Level steps (power ratios) that place an edge: within a recording, and in its first moments. */
const EDGE_STEP = 2;
const EDGE_STEP_AT_START = 4;
const FIRST_S = 0.2;
const LEVEL_STEP_S = 0.016;
const KEPT_S = 6;

interface Block {
  startS: number;
  endS: number;
  score: number;
}

/**
 * Where an arc burns, from what a network believes block by block (about an eighth of a second). The edges are then put
 * where the level leaps close by; where it does not, they stay at the edge of the block.
 */
export class HeardTracker implements ArcTracker {
  readonly #levels = new LevelHistory(LEVEL_STEP_S, KEPT_S);
  #recent: Block[] = [];
  #on = false;
  /** Time of the last change, s. */
  #sinceS = 0;
  #toldS = 0;

  push({ levels, blocks = [] }: ArcEvidence): ArcChange[] {
    this.#levels.push(levels);
    const changes: ArcChange[] = [];
    for (const block of blocks) {
      // Windows overlap: a block is told by each of them.
      if (block.endS <= this.#toldS + 1e-9) continue;
      this.#toldS = block.endS;
      const score = Math.max(-SCORE_CUT, Math.min(SCORE_CUT, block.score));
      this.#recent.push({ ...block, score });
      if (this.#recent.length > OFF_BLOCKS) this.#recent.shift();
      const change = this.#on ? this.#stop() : this.#start();
      if (change) changes.push(change);
    }
    return changes;
  }

  flush(durationS: number): ArcChange[] {
    if (!this.#on) return [];
    this.#on = false;
    return [fallAtEnd(this.#levels, this.#sinceS, durationS)];
  }

  #start(): ArcChange | null {
    const last = this.#recent.slice(-ON_BLOCKS);
    if (last.length < ON_BLOCKS || mean(last) <= 0) return null;
    const before = this.#recent.findLastIndex(({ score }) => score <= PART_OF_ARC);
    const first = this.#recent[before + 1] ?? last[0]!;
    this.#on = true;
    this.#recent = [];
    return this.#change('arc-start', this.#startEdge(first));
  }

  #startEdge({ startS }: Block): { timeS: number; open: boolean } {
    const fromS = Math.max(this.#sinceS, startS - EDGE_REACH_S);
    const step = this.#levels.sharpest('rise', fromS, startS + EDGE_REACH_S);
    const atStart = startS < FIRST_S;
    const needed = atStart ? EDGE_STEP_AT_START : EDGE_STEP;
    if (step && step.ratio >= needed) return { timeS: step.timeS, open: false };
    return atStart ? { timeS: 0, open: true } : { timeS: startS, open: false };
  }

  #stop(): ArcChange | null {
    if (this.#recent.length < OFF_BLOCKS || mean(this.#recent) >= 0) return null;
    const first = this.#recent.find(({ score }) => score < 0)!;
    this.#on = false;
    this.#recent = [];
    const fromS = Math.max(this.#sinceS, first.startS - EDGE_REACH_S);
    const step = this.#levels.sharpest('fall', fromS, first.startS + EDGE_REACH_S);
    const timeS = step && step.ratio <= 1 / EDGE_STEP ? step.timeS : first.startS;
    return this.#change('arc-stop', { timeS: Math.max(this.#sinceS, timeS), open: false });
  }

  #change(type: ArcChange['type'], edge: { timeS: number; open: boolean }): ArcChange {
    this.#sinceS = edge.timeS;
    return { type, ...edge };
  }
}

function mean(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { score }) => sum + score, 0) / blocks.length;
}
