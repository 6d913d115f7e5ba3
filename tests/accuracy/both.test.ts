import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  align,
  parsePooling,
  pool,
  SoundSeries,
  TraceSeries,
} from '../../src/analysis/fusion/index.js';
import { SHIPPED_RECIPE } from '../../src/lab/train/index.js';
import { drawPair, judgePair } from '../support/drawn-pair.js';

const POOLING = join(import.meta.dirname, '../../src/model/shipped/pooling.json');

/** Seeds that neither the models nor the weights have seen; all families and modes once. */
const RECIPE = { ...SHIPPED_RECIPE, seed: 'both 1', arcS: [2, 2.5] as const };
const DRAWN = Array.from({ length: 16 }, (_, i) => {
  const pair = drawPair(RECIPE, i);
  const sound = new SoundSeries(pair.rateHz);
  sound.push(pair.samples);
  const trace = new TraceSeries(pair.run.electricalRateHz);
  trace.push([pair.run.voltageV, pair.run.currentA]);
  const judged = judgePair(pair);
  return { delayS: pair.delayS, sound: sound.finish(), trace: trace.finish(), judged };
});

describe('sound and trace of one drawn arc', () => {
  it('are pooled to answers not worse than either alone', () => {
    const { weights } = parsePooling(JSON.parse(readFileSync(POOLING, 'utf8')));
    const right = { sound: 0, trace: 0, both: 0 };
    for (const { judged } of DRAWN) {
      if (!judged) continue;
      const { sound, trace } = judged;
      const both = Array.from(pool(sound, trace, weights['voltage-current']));
      for (const [name, p] of Object.entries({ sound, trace, both }))
        if (p.indexOf(Math.max(...p)) === judged.truth) right[name as keyof typeof right]++;
    }
    // One run of leeway: on other seeds both equal the better of the two.
    expect(right.both).toBeGreaterThanOrEqual(Math.max(right.sound, right.trace) - 1);
    expect(right.both).toBeGreaterThan(4);
  });

  it('are found to be of one run, and those of two runs are not', () => {
    const found = DRAWN.filter((one) => align(one.sound, one.trace, { sharedClock: false }).found);
    const wrong = DRAWN.filter((one, i) => {
      const other = DRAWN[(i + 5) % DRAWN.length]!;
      return align(one.sound, other.trace, { sharedClock: false }).found;
    });
    // Measured on these draws: 5. Steady spray and slow globular have few common events.
    expect(found.length).toBeGreaterThanOrEqual(5);
    expect(wrong.length).toBe(0);
  });
});
