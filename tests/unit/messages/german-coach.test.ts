import { describe, expect, it } from 'vitest';
import { GERMAN, say } from '../../../src/messages/index.js';
import { forecast, parseSetup } from '../../../src/setup/index.js';
import { OPEN_SITUATIONS } from '../../situations/open.js';

// Rejects a sentence of the forecast that stays English, or English numbers within German ones.
describe('the coach in German', () => {
  it.each(OPEN_SITUATIONS.filter((one) => one.material === undefined))('$name', ({ setup }) => {
    const { likeliest, chances, advice, howTo } = forecast(parseSetup(setup));
    const all = [...(likeliest ? [likeliest] : []), ...chances, ...advice, ...howTo];
    for (const one of all) {
      const german = say(one, GERMAN);
      expect(german).not.toBe(one.text);
      expect(german).not.toMatch(/\d\.\d/u);
      expect(german).not.toMatch(
        /\b(?:spray|globular|short-circuit|likely|feeder|volts|at|the|feed)\b/u,
      );
    }
  });
});
