import { describe, expect, it } from 'vitest';
import { currentForFeed, currentRangeForFeed, processMaps } from '../../src/setup/index.js';

const { ALUMINIUM_FEED_ROWS, BRONZE_FEED_ROWS, currentOfFeed, meltingConstant } = processMaps;

// An aluminium wire maker's table of recommended parameters (read in the table): 1.2 mm, 10.4 m/min, 180 A.
describe('aluminium: the current a feed draws', () => {
  it('1.2 mm at 10 m/min draws some 170 A, not 237–320 A', () => {
    const found = currentRangeForFeed(
      { material: 'aluminium', diameterMm: 1.2, stickOutMm: null },
      10,
    )!;
    expect(found.min).toBeLessThan(173);
    expect(found.max).toBeGreaterThan(173);
    expect(found.max).toBeLessThan(205);
  });

  // Rejects a constant that fits one size alone.
  it.each(ALUMINIUM_FEED_ROWS)('$diameterMm mm, $feedMPerMin m/min: $currentA A', (row) => {
    const wire = { material: 'aluminium', stickOutMm: null } as const;
    const range = currentRangeForFeed({ ...wire, diameterMm: row.diameterMm }, row.feedMPerMin)!;
    const share = row.currentA / ((range.min + range.max) / 2);
    // The rows themselves part by some 15 % for one size and feed.
    expect(share).toBeGreaterThan(0.83);
    expect(share).toBeLessThan(1.19);
  });

  it('the constant held is the mean of the table, worked out there again', () => {
    const { mean, sd } = meltingConstant(ALUMINIUM_FEED_ROWS);
    const drawn = currentForFeed({ material: 'aluminium', diameterMm: 1, stickOutMm: 15 }, 6)!;
    expect(100 / drawn).toBeCloseTo(mean, 1);
    expect((2 * sd) / mean).toBeLessThan(0.17);
  });
});

// A silicon-bronze wire data sheet (read in the sheet), middles of its ranges.
describe('silicon bronze', () => {
  it.each(BRONZE_FEED_ROWS)('$diameterMm mm, $feedMPerMin m/min: $currentA A', (row) => {
    const wire = { material: 'silicon-bronze', stickOutMm: null, polarity: null } as const;
    const { mean, sd } = currentOfFeed({ ...wire, diameterMm: row.diameterMm }, row.feedMPerMin)!;
    expect(Math.abs(row.currentA - mean)).toBeLessThan(2.5 * sd);
  });
});
