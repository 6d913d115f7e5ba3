import type { Random } from '../../../core/index.js';
import { MODES, type Mode } from '../../../core/index.js';

/** Sounds in one drill. */
export const DRILL_LENGTH = 10;

/**
 * What can be answered. Whether drops that fly freely are coarse or fine is asked of real runs alone: simulated
 * globular and spray are no proof of how real ones sound.
 */
export type DrillAnswer = Mode | 'free-flight';
export type DrillKind = 'simulated' | 'own';

/** One sound of the pool: an example by its place in the list, a run by its name. */
export interface DrillSound {
  id: string;
  truth: DrillAnswer;
}

export interface DrillQuestion extends DrillSound {
  answer: DrillAnswer | null;
}

/** How often each was asked and told right. */
export type DrillScore = Partial<Record<DrillAnswer, { asked: number; right: number }>>;

export const CHOICES: Readonly<Record<DrillKind, readonly DrillAnswer[]>> = {
  simulated: ['short-circuit', 'free-flight', 'pulsed-spray'],
  own: MODES,
};

/** What a simulated sound counts as in a drill. */
export function simulatedTruth(mode: Mode): DrillAnswer {
  return mode === 'globular' || mode === 'spray' ? 'free-flight' : mode;
}

/** Whether there is anything to tell apart. */
export function canDrill(pool: readonly DrillSound[]): boolean {
  return new Set(pool.map((one) => one.truth)).size > 1;
}

/** Ten sounds by chance: each answer as likely as any other, never the same sound twice in a row. */
export function makeDrill(pool: readonly DrillSound[], random: Random): DrillQuestion[] {
  const truths = [...new Set(pool.map((one) => one.truth))];
  const questions: DrillQuestion[] = [];
  while (canDrill(pool) && questions.length < DRILL_LENGTH) {
    const truth = random.pick(truths);
    const last = questions.at(-1)?.id;
    const sounds = pool.filter((one) => one.truth === truth && one.id !== last);
    if (sounds.length > 0) questions.push({ ...random.pick(sounds), answer: null });
  }
  return questions;
}

/** A score with the answered questions of a drill added. */
export function withDrill(score: DrillScore, questions: readonly DrillQuestion[]): DrillScore {
  const sum: DrillScore = { ...score };
  for (const { truth, answer } of questions) {
    if (answer === null) continue;
    const { asked, right } = sum[truth] ?? { asked: 0, right: 0 };
    sum[truth] = { asked: asked + 1, right: right + (answer === truth ? 1 : 0) };
  }
  return sum;
}
