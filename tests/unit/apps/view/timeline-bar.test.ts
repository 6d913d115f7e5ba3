import { describe, expect, it } from 'vitest';
import { NO_PAINT } from '../../../../src/apps/view/index.js';
import { timelineBar } from '../../../../src/apps/view/timeline-bar.js';
import { sampleResult } from '../../../support/sample-result.js';

// 54 columns wide leaves 40 for the bar: a quarter of a second each for the sample of 10 s.
const look = { width: 54, paint: NO_PAINT };

describe('timelineBar', () => {
  it('puts each mode where it was', () => {
    const [letters, heights] = timelineBar(sampleResult(), look);
    // By hand: 1 s without arc, 6 s D, 2 s G, 1 s without.
    expect(letters).toBe(
      `  mode  ${'·'.repeat(4)}${'D'.repeat(24)}${'G'.repeat(8)}${'·'.repeat(4)}`,
    );
    // 0.97 * 8 = 7.76, the eighth bar; 0.6 * 8 = 4.8, the fifth.
    expect(heights).toBe(`  sure  ${' '.repeat(4)}${'█'.repeat(24)}${'▅'.repeat(8)}`);
  });

  it('tells arc left out, mode not clear and no arc apart', () => {
    const result = sampleResult({
      segments: [{ startS: 5, endS: 9, mode: null, confidence: 0 }],
    });
    const [letters] = timelineBar(result, look);
    expect(letters).toBe(
      `  mode  ${'·'.repeat(4)}${'-'.repeat(16)}${'?'.repeat(16)}${'·'.repeat(4)}`,
    );
  });

  it('is absent where the length is unknown', () => {
    const result = sampleResult();
    result.source.durationS = null;
    expect(timelineBar(result, look)).toEqual([]);
  });

  it('draws the event rate below a round height', () => {
    // Rejects heights of the largest rate, with which every steady run would look the same.
    const rates = { meanHz: (fromS: number) => (fromS < 7 ? 30 : null) };
    const bar = timelineBar(sampleResult(), look, rates);
    // By hand: 30 of 50 is 0.6; 0.6 * 8 = 4.8, the fifth bar. Nothing is drawn without arc or rate.
    expect(bar[2]).toBe(`  rate  ${' '.repeat(4)}${'▅'.repeat(24)}`);
    expect(bar.at(-1)).toBe('        rate: events a second, full height 50');
  });

  it('draws no rate that is clear for a moment only', () => {
    // By hand: 8 of the 32 cells with arc, less than a third.
    const rates = { meanHz: (fromS: number) => (fromS < 3 ? 30 : null) };
    expect(timelineBar(sampleResult(), look, rates).join()).not.toContain('rate');
  });
});
