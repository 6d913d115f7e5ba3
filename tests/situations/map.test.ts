import { describe, expect, it } from 'vitest';
import { HELD_OUT_SITUATIONS } from './held-out.js';
import { askMap, moveHolds, outcomeHolds } from './judge-map.js';
import { OPEN_SITUATIONS } from './open.js';

// Rejects: walls (12 V and 300 A as dip, 40 V as spray), a dial taken at its worst loss, spray in gases
// that no source gives it in, advice without direction.
describe('situations on the process map', () => {
  it('holds twenty-five and more situations, each with its source, and a second dozen', () => {
    const all = [...OPEN_SITUATIONS, ...HELD_OUT_SITUATIONS];
    expect(OPEN_SITUATIONS.length).toBeGreaterThanOrEqual(25);
    expect(HELD_OUT_SITUATIONS.length).toBeGreaterThanOrEqual(12);
    expect(new Set(all.map((one) => one.name)).size).toBe(all.length);
    for (const one of all) expect(one.source.length).toBeGreaterThan(10);
  });

  it.each(OPEN_SITUATIONS)('$name', (situation) => {
    const { judgement, advice } = askMap(situation);
    expect(outcomeHolds(situation, judgement)).toBe(true);
    expect(moveHolds(situation.move, advice)).toBe(true);
  });

  // Measured once the rules stood: 11 of 14 outcomes and every direction.
  it('scores the situations kept aside', () => {
    const answers = HELD_OUT_SITUATIONS.map((situation) => ({ situation, ...askMap(situation) }));
    const right = answers.filter(({ situation, judgement }) => outcomeHolds(situation, judgement));
    const moved = answers.filter(({ situation, advice }) => moveHolds(situation.move, advice));
    expect(right.length).toBeGreaterThanOrEqual(11);
    expect(moved.length).toBe(answers.length);
  });
});
