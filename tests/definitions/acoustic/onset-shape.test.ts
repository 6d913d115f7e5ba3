import { describe, expect, it } from 'vitest';
import { onsetShape } from '../../../src/features/acoustic/onset-shape.js';

const PERIOD = 40;

/** Octaves of a cycle of 40 frames (10 ms) laid out again and again; the onset is frame 0 of the cycle. */
function cycles(level: (frame: number) => number): { frames: Float64Array; at: number[] } {
  const frames = Float64Array.from({ length: 1000 }, (_, i) => level(i % PERIOD));
  return { frames, at: Array.from({ length: 25 }, (_, k) => k * PERIOD) };
}

describe('the shape of the average event', () => {
  it('is a rise of three octaves that is all gone at once for a crack', () => {
    // By hand: 3 octaves for half a millisecond, then back to 0.
    const { frames, at } = cycles((frame) => (frame < 2 ? 3 : 0));
    expect(onsetShape(frames, at)).toEqual({ rise: 3, decaySoon: 1, decayLate: 1, gapBefore: 0 });
  });

  it('stays for 1 to 2 ms and is gone after 3 to 5 ms for a pulse of 2.5 ms', () => {
    // Rejects a decay measured too early or too late to part a pulse from a crack.
    const { frames, at } = cycles((frame) => (frame < 10 ? 2 : 0));
    // The cycle is 10 ms: frames −32 and −31 are the end of the pulse before, so 2·2/12 of an octave.
    const { gapBefore, ...shape } = onsetShape(frames, at);
    expect(shape).toEqual({ rise: 2, decaySoon: 0, decayLate: 1 });
    expect(gapBefore).toBeCloseTo(1 / 3, 12);
  });

  it('shows the silence of a short before the arc strikes again', () => {
    // Hiss at 1 octave, 2 ms of nothing before each event. Cells −8 to −2 lie in the gap, −32 to −21 before it.
    const { frames, at } = cycles((frame) => (frame < 2 ? 3 : frame >= 32 ? 0 : 1));
    const shape = onsetShape(frames, at);
    expect(shape.gapBefore).toBe(1);
    expect(shape.rise).toBe(3);
  });

  it('is absent with fewer than five events, and where events stand too near the edge', () => {
    const { frames } = cycles(() => 0);
    expect(onsetShape(frames, [100, 200, 300, 400]).rise).toBeNaN();
    expect(onsetShape(frames, [1, 2, 3, 4, 5, 6]).rise).toBeNaN();
  });
});
