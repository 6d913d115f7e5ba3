import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runBatch } from '../../../src/analysis/index.js';

const later = (turns: number): Promise<void> =>
  turns <= 0 ? Promise.resolve() : Promise.resolve().then(() => later(turns - 1));

async function collect<T>(items: AsyncIterable<T>): Promise<T[]> {
  const all: T[] = [];
  for await (const item of items) all.push(item);
  return all;
}

describe('runBatch', () => {
  it('gives each item once, in order when asked, whatever the limit and the durations', async () => {
    // Rejects one that hands on what finishes first, loses the last ones, or doubles any.
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.nat(30), { maxLength: 40 }),
        fc.integer({ min: 1, max: 9 }),
        fc.boolean(),
        async (turns, limit, ordered) => {
          const work = async (n: number, index: number) => {
            await later(n);
            return index * 10;
          };
          const got = await collect(runBatch(turns, work, { limit, ordered }));
          const indices = got.map((one) => one.index);
          const expected = turns.map((_, index) => index);
          expect(ordered ? indices : [...indices].sort((a, b) => a - b)).toEqual(expected);
          for (const one of got)
            expect([one.item, one.value]).toEqual([turns[one.index], one.index * 10]);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  it('takes no item before there is room, even when nobody takes the results', async () => {
    // Rejects one that reads its source ahead: the source here has no end.
    let taken = 0;
    function* endless() {
      for (;;) yield taken++;
    }
    const batch = runBatch(endless(), async (n) => n, { limit: 3, ordered: true });
    for (let i = 0; i < 5; i++) await batch.next();
    await later(50);
    // At most the limit beyond what was handed on.
    expect(taken).toBeLessThanOrEqual(5 + 3);
    await batch.return(undefined);
  });

  it('keeps the limit under way, not fewer', async () => {
    // Rejects one that works through its items one by one.
    let active = 0;
    let most = 0;
    const work = async () => {
      active += 1;
      most = Math.max(most, active);
      await later(20);
      active -= 1;
    };
    await collect(runBatch(Array(20).fill(0), work, { limit: 4, ordered: false }));
    expect(most).toBe(4);
  });

  it('hands a result on while the source waits for it', async () => {
    // Rejects one that fills all its room first: this source gives the next item only after an answer.
    let answer = (): void => {};
    let answers = 0;
    async function* dialogue() {
      for (let i = 0; i < 3; i++) {
        const answered = new Promise<void>((resolve) => {
          answer = resolve;
        });
        yield i;
        await answered;
      }
    }
    for await (const _ of runBatch(dialogue(), async (n) => n, { limit: 8, ordered: true })) {
      answers += 1;
      answer();
    }
    expect(answers).toBe(3);
  });

  it('hands on what was begun after it was stopped', async () => {
    let stop = false;
    const batch = runBatch([1, 2, 3, 4, 5, 6], async (n) => n, {
      limit: 2,
      ordered: true,
      stopped: () => stop,
    });
    await batch.next();
    stop = true;
    // One was handed on and one more begun before the stop.
    expect((await collect(batch)).map((one) => one.value)).toEqual([2]);
  });

  it('ends with an error that leaves the work', async () => {
    const batch = runBatch(
      [1, 2, 3],
      async (n) => {
        if (n === 2) throw new Error('two');
        await later(5);
      },
      { limit: 2, ordered: true },
    );
    await expect(collect(batch)).rejects.toThrow('two');
  });
});
