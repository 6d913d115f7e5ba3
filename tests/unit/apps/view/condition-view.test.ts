import { describe, expect, it } from 'vitest';
import type { Result } from '../../../../src/analysis/result/index.js';
import { GERMAN, NO_PAINT, terminalText } from '../../../../src/apps/view/index.js';
import { timelineBar } from '../../../../src/apps/view/timeline-bar.js';
import { sampleResult } from '../../../support/sample-result.js';

type Condition = NonNullable<Result['arcCondition']>;

const rated = (
  name: string,
  rating: 'good' | 'watch' | 'bad',
  code: string,
  params: Record<string, unknown>,
  text: string,
): Condition['findings'][number] => ({
  name,
  rating,
  value: 1,
  unit: '1',
  text,
  code,
  params,
  usual: 'Usual: none within a weld (own choice).',
  usualMessage: { code: 'condition-usual', params: { of: 'arc-outs', mode: null } },
});

const arcOuts = rated(
  'arc-outs',
  'bad',
  'condition-arc-outs',
  { count: 1, totalS: 1, by: 'trace' },
  'The arc goes out once, 1.00 s in all.',
);
const burnBack = rated('burn-back', 'good', 'condition-burn-back', { count: 0 }, 'No burn-back.');

const result = sampleResult({
  arcCondition: {
    findings: [burnBack, arcOuts],
    marks: [
      { kind: 'long-arc', startS: 2, endS: 4 },
      { kind: 'arc-out', startS: 3, endS: 4 },
      { kind: 'long-short', startS: 6.01, endS: 6.04 },
    ],
    notJudged: [
      'Fusion, cold lap, porosity and undercut are not shown by any recording of the arc.',
    ],
    notJudgedMessages: [{ code: 'condition-no-fusion', params: {} }],
  },
});

describe('disturbances under the bar', () => {
  it('stand where they were, the worse over the others, with what their marks mean', () => {
    // 56 columns wide leave 40 for the bar beside "faults": a quarter of a second each.
    const bar = timelineBar(result, { width: 56, paint: NO_PAINT });
    // By hand: 8 cells to 2 s, 4 of long arc, 4 of arc-out, 8 to 6 s, one for the short of 30 ms.
    expect(bar[2]).toBe(`  faults  ${' '.repeat(8)}^^^^oooo${' '.repeat(8)}|`);
    const key = bar.join('\n');
    expect(key).toContain('| short over 20 ms');
    expect(key).toContain('o arc-out');
    expect(key).not.toContain('dip of the current');
  });
  it('take no line where there are none', () => {
    const bar = timelineBar(sampleResult(), { width: 56, paint: NO_PAINT });
    expect(bar.join('\n')).not.toContain('faults');
  });
});

describe('how the arc behaved, in a terminal', () => {
  const look = { width: 80, paint: NO_PAINT };
  it('names what is off with its rating, and counts the rest', () => {
    const text = terminalText(result, look);
    expect(text).toContain('arc-outs, BAD: The arc goes out once, 1.00 s in all.');
    expect(text).toContain('1 of 2 things looked at are as usual.');
    expect(text).not.toContain('No burn-back.');
  });
  it('names all of it with what is usual, and what is not judged, where all is asked for', () => {
    const text = terminalText(result, { ...look, explain: true });
    expect(text).toContain('burn-back, good: No burn-back.');
    expect(text).toContain('Usual: none within a weld (own choice).');
    expect(text).toMatch(/Fusion, cold lap/u);
  });
  it('says it in German by the codes', () => {
    const text = terminalText(result, { ...look, words: GERMAN });
    expect(text).toContain('Erlöschen, SCHLECHT: Der Lichtbogen erlischt einmal, zusammen 1,00 s.');
  });
});
