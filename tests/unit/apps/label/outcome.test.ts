import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../../src/analysis/index.js';
import { lostOutcome } from '../../../../src/apps/label/label-one.js';
import { parseOutcome } from '../../../../src/apps/label/queue/outcome.js';
import { ArcError } from '../../../../src/core/index.js';

const task = { path: 'a.wav', origin: 'named' as const, setup: {}, fingerprint: 'f' };
const plan = { settings: defaultSettings(), reading: {}, windows: false };
const error = new ArcError({ code: 'bad-content', what: 'No.', expected: 'yes', todo: 'Look.' });
const good = lostOutcome(task, plan, error);
const record = JSON.parse(good.line);
const line = (changed: object): string => JSON.stringify({ ...record, ...changed });

describe('what comes back from a queue', () => {
  it('is taken where it answers the task', () => {
    expect(parseOutcome(structuredClone(good), task)).toEqual(good);
  });

  // Whatever can write to the Redis could put a row of its own into the table.
  it.each([
    ['nothing', null],
    ['text', 'ok'],
    ['no JSON', { ...good, line: '{' }],
    ['two lines', { ...good, line: `${good.line}\n${good.line}` }],
    ['another file', { ...good, line: line({ path: 'b.wav' }) }],
    ['another question', { ...good, line: line({ fingerprint: 'g' }) }],
    [
      'a result of another file',
      {
        ...good,
        line: line({
          result: { ...record.result, source: { ...record.result.source, path: 'b.wav' } },
        }),
      },
    ],
    ['a mode without a result', { ...good, line: line({ result: { mode: 'spray' } }) }],
    ['another status', { ...good, status: 'ok' }],
    ['more than was asked', { ...good, line: line({ formula: '=1+1' }) }],
  ])('is refused: %s', (_, given) => {
    expect(() => parseOutcome(given, task)).toThrow();
  });
});
