import { describe, expect, it } from 'vitest';
import { judge } from './situation.js';
import { SITUATIONS } from './situations.js';

// Rejects: an order by name or by list position, rules that fire whatever was measured, answers that
// follow the set voltage where a measured one is known, explanations for what agrees.
describe('invented situations: the explanation that must rank first', () => {
  it('covers the situations the judgement has to tell apart', () => {
    expect(SITUATIONS.length).toBeGreaterThanOrEqual(40);
    expect(new Set(SITUATIONS.map((one) => one.name)).size).toBe(SITUATIONS.length);
  });

  it.each(SITUATIONS)('$name: $first, since $because', (situation) => {
    const answer = judge(situation);
    expect(answer.explanations[0]?.id ?? null).toBe(situation.first);
    expect(answer.settings.answer).toBe(situation.settings);
    expect(answer.intended?.answer).toBe(situation.intended);
  });
});
