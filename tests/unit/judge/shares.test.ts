import { describe, expect, it } from 'vitest';
import type { ArcInterval, Mode, Segment } from '../../../src/core/index.js';
import { shareOfArcTime, steadyPart } from '../../../src/judge/index.js';

const arcInterval = (
  startS: number,
  endS: number,
  open: Partial<ArcInterval> = {},
): ArcInterval => ({
  startS,
  endS,
  openStart: false,
  openEnd: false,
  ...open,
});
const segment = (startS: number, endS: number, mode: Mode | null): Segment => ({
  startS,
  endS,
  mode,
  confidence: 0.9,
});

describe('shareOfArcTime', () => {
  it('counts seconds inside the steady part only', () => {
    // Arc interval [1, 6) less 0.5 s at either end is [1.5, 5.5): 4 s. Globular [1, 2.5) keeps 1 s, spray
    // [2.5, 6) keeps 3 s. Rejects whole segments (1.5 : 3.5) and shares of the recording.
    const shares = shareOfArcTime(
      [arcInterval(1, 6)],
      [segment(1, 2.5, 'globular'), segment(2.5, 6, 'spray')],
      0.5,
      0.5,
    );
    expect(shares?.globular).toBeCloseTo(0.25, 12);
    expect(shares?.spray).toBeCloseTo(0.75, 12);
  });

  it('adds up to 1 over stretches, unnamed time included', () => {
    const shares = shareOfArcTime(
      [arcInterval(0, 2), arcInterval(5, 9)],
      [segment(0, 2, 'spray'), segment(5, 8, null), segment(8, 9, 'spray')],
      0,
      0,
    )!;
    expect(shares.undetermined).toBeCloseTo(0.5, 12);
    expect(Object.values(shares).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  });

  it('is null where no time was judged', () => {
    expect(shareOfArcTime([], [], 0.3, 0.3)).toBeNull();
  });
});

describe('steadyPart', () => {
  it('leaves nothing out at an open end, which shows no ignition and no crater', () => {
    const open = { openStart: true, openEnd: true };
    expect(steadyPart(arcInterval(0, 5, open), 0.3, 0.4)).toEqual({ fromS: 0, toS: 5 });
    expect(steadyPart(arcInterval(0, 5), 0.3, 0.4)).toEqual({ fromS: 0.3, toS: 4.6 });
  });

  it('takes the whole of a stretch shorter than its masks', () => {
    // Rejects a part that ends before it starts.
    expect(steadyPart(arcInterval(2, 2.5), 0.3, 0.3)).toEqual({ fromS: 2, toS: 2.5 });
  });
});
