import { describe, expect, it } from 'vitest';
import { compareResults } from '../../../src/analysis/compare/index.js';
import { doubtsOf } from '../../../src/analysis/index.js';
import { ENGLISH, retell } from '../../../src/messages/index.js';
import { expectModes, parseSetup } from '../../../src/setup/index.js';
import { shippedView } from '../../support/shipped-view.js';
import { judge } from '../setup/check/situation.js';
import { SITUATIONS } from '../setup/check/situations.js';
import { unspoken } from './unspoken.js';

/** As another program would read it. */
const written = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

// Each rejects a sentence without its code, params that do not give back its text once they were written to
// a document, and a list of codes that is out of step with its list of texts.
describe('the sentences of documents', () => {
  const setup = { gas: '82/18', wireDiameter: '1.2mm', setVoltage: '24', wireFeed: '6m/min' };

  it.each(['short-circuit.csv', 'globular.wav', 'pulsed-spray.csv', 'spray.wav'])(
    'come back from a result of %s',
    async (name) => {
      const wanted = name === 'globular.wav' ? 'spray' : 'globular';
      const { result, placement } = await shippedView(name, { ...setup, expect: wanted });
      expect(placement?.bands.length).toBeGreaterThan(2);
      const doubts = doubtsOf(result);
      expect(doubts.length).toBeGreaterThan(0);
      const { left, count } = unspoken(written({ result, placement, doubts }));
      expect(left).toEqual([]);
      expect(count).toBeGreaterThan(20);
    },
  );

  it.each(SITUATIONS)('come back from a comparison with the set-up: $name', (situation) => {
    const { left, count } = unspoken(written(judge(situation)));
    expect(left).toEqual([]);
    expect(count).toBeGreaterThan(3);
  });

  it.each([
    setup,
    {},
    { gas: 'C1', wireDiameter: '0.8mm', setVoltage: '19', plate: '8mm' },
    { gas: 'M21', wireMaterial: 'stainless', source: 'pulsed', feederVolts: '27' },
    { gas: '90/10', wireDiameter: '1.2mm', measuredCurrent: '270', travelSpeed: '300mm/min' },
  ])('come back from what a set-up permits: %o', (raw) => {
    const { left, count } = unspoken(written(expectModes(parseSetup(raw))));
    expect(left).toEqual([]);
    expect(count).toBeGreaterThan(8);
  });

  it('come back from a comparison of two results', async () => {
    const [before, after] = [
      await shippedView('spray.wav', {}),
      await shippedView('globular.csv', {}),
    ];
    const unsure = { ...after.result, status: 'unsure' as const, mode: null, confidence: null };
    for (const other of [before.result, after.result, unsure]) {
      const { left, count } = unspoken(written(compareResults(before.result, other)));
      expect(left).toEqual([]);
      expect(count).toBeGreaterThan(2);
    }
  });

  it('notices a sentence that was changed, and one without its code', () => {
    const note = {
      code: 'midnight',
      message: 'The clock passes midnight; the time was counted on.',
    };
    expect(unspoken([{ ...note, params: {} }]).left).toEqual([]);
    expect(unspoken([{ ...note, message: 'The clock.', params: {} }]).left).toHaveLength(1);
    expect(unspoken([note]).left).toHaveLength(1);
    expect(unspoken({ cautions: ['Mind.', 'Care.'], cautionMessages: [] }).left).toHaveLength(2);
    expect(retell({ ...note, params: {} }, ENGLISH)).toBe(note.message);
  });
});
