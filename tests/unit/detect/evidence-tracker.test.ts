import { describe, expect, it } from 'vitest';
import { type ArcChange, EvidenceTracker } from '../../../src/detect/index.js';

const STEP_S = 0.016;
const HOP_S = 16 * STEP_S;
const WINDOW_S = 4 * HOP_S;

interface Scene {
  windows: number;
  /** Log-odds of the window that ends at a time. */
  score: (window: { startS: number; endS: number }) => number;
  level?: (timeS: number) => number;
}

/** Sends windows of 1.024 s every 0.256 s through a tracker, with their levels. */
function track({ windows, score, level = () => 1 }: Scene): ArcChange[] {
  const tracker = new EvidenceTracker(2.5);
  const changes: ArcChange[] = [];
  for (let i = 0; i < windows; i++) {
    const endS = WINDOW_S + i * HOP_S;
    const window = { startS: endS - WINDOW_S, endS };
    // The first window brings all of its levels, later ones those of the newest hop.
    const fromS = i === 0 ? 0 : endS - HOP_S;
    const steps = Math.round((endS - fromS) / STEP_S);
    const levels = Float64Array.from({ length: steps }, (_, n) =>
      level(fromS + (n + 0.5) * STEP_S),
    );
    changes.push(...tracker.push({ ...window, score: score(window), levels }));
  }
  const durationS = windows > 0 ? WINDOW_S + (windows - 1) * HOP_S : 0.4;
  changes.push(...tracker.flush(durationS));
  return changes;
}

const share = (window: { startS: number; endS: number }, fromS: number, toS: number): number =>
  Math.max(0, Math.min(window.endS, toS) - Math.max(window.startS, fromS)) / WINDOW_S;

describe('EvidenceTracker', () => {
  it('leaves both ends open where the arc burns all along', () => {
    // Rejects an ignition invented at 0 and an end at the last window.
    const changes = track({ windows: 20, score: () => 3 });
    expect(changes.map(({ type, open }) => [type, open])).toEqual([
      ['arc-start', true],
      ['arc-stop', true],
    ]);
    expect(changes[0]!.timeS).toBe(0);
    expect(changes[1]!.timeS).toBeCloseTo(WINDOW_S + 19 * HOP_S, 9);
  });

  it('says nothing where no window speaks for an arc', () => {
    expect(track({ windows: 20, score: () => -3 })).toEqual([]);
    expect(track({ windows: 0, score: () => 3 })).toEqual([]);
  });

  it('takes a recording of one window', () => {
    // Rejects waiting for a second window that never comes.
    const changes = track({ windows: 1, score: () => 3 });
    expect(changes.map((one) => one.type)).toEqual(['arc-start', 'arc-stop']);
  });

  it('puts both edges where the level leaps, not at the edges of windows', () => {
    // Arc from 3.2 s to 8 s, 20 dB above the rest; a window is only 1.024 s sharp.
    const changes = track({
      windows: 40,
      score: (window) => 6 * share(window, 3.2, 8) - 3,
      level: (timeS) => (timeS >= 3.2 && timeS < 8 ? 1 : 0.01),
    });
    expect(changes.map(({ type, open }) => [type, open])).toEqual([
      ['arc-start', false],
      ['arc-stop', false],
    ]);
    expect(Math.abs(changes[0]!.timeS - 3.2)).toBeLessThanOrEqual(STEP_S);
    expect(Math.abs(changes[1]!.timeS - 8)).toBeLessThanOrEqual(STEP_S);
    // 1 over 0.01 in power is 20 dB by definition.
    expect(changes[0]!.stepDb).toBeCloseTo(20, 3);
    expect(changes[1]!.stepDb).toBeCloseTo(20, 3);
  });

  it('sees an arc that starts within the first window', () => {
    // Rejects calling the start open because the first window already speaks for an arc.
    const changes = track({
      windows: 20,
      score: () => 3,
      level: (timeS) => (timeS >= 0.48 ? 1 : 0.01),
    });
    expect(changes[0]!.open).toBe(false);
    expect(Math.abs(changes[0]!.timeS - 0.48)).toBeLessThanOrEqual(STEP_S);
    expect(changes[1]!.open).toBe(true);
  });

  it('sees an arc that ends shortly before the recording does', () => {
    // The last windows still hold mostly arc, so only the level tells. Duration 5.888 s.
    const changes = track({
      windows: 20,
      score: () => 3,
      level: (timeS) => (timeS < 5.44 ? 1 : 0.001),
    });
    const stop = changes.at(-1)!;
    expect([stop.type, stop.open]).toEqual(['arc-stop', false]);
    expect(Math.abs(stop.timeS - 5.44)).toBeLessThanOrEqual(STEP_S);
  });

  it('does not end on a single doubtful window', () => {
    // Rejects a tracker without hold times.
    const changes = track({
      windows: 24,
      score: ({ endS }) => (Math.abs(endS - 4) < 0.13 ? -2 : 3),
    });
    expect(changes).toHaveLength(2);
    expect(changes[1]!.open).toBe(true);
  });

  it('tells two arcs with a second of quiet between them apart, in order', () => {
    const burning = (timeS: number) => (timeS >= 2 && timeS < 5) || (timeS >= 6.5 && timeS < 9);
    const changes = track({
      windows: 40,
      score: (window) => 6 * (share(window, 2, 5) + share(window, 6.5, 9)) - 3,
      level: (timeS) => (burning(timeS) ? 1 : 0.01),
    });
    expect(changes.map((one) => one.type)).toEqual([
      'arc-start',
      'arc-stop',
      'arc-start',
      'arc-stop',
    ]);
    [2, 5, 6.5, 9].forEach((timeS, i) => {
      expect(Math.abs(changes[i]!.timeS - timeS)).toBeLessThanOrEqual(STEP_S);
    });
  });

  it('begins at a leap wherever it falls between two windows', () => {
    // Rejects a search that ends with the first window in favour, which may end before the leap: steady
    // hiss scores below the threshold and is an arc only because it began so suddenly.
    for (let k = 0; k < 16; k++) {
      const leapS = 2 + k * STEP_S;
      const changes = track({
        windows: 24,
        score: () => -2,
        level: (timeS) => (timeS >= leapS ? 1 : 0.01),
      });
      expect(Math.abs(changes[0]!.timeS - leapS)).toBeLessThanOrEqual(STEP_S + 1e-9);
      // By hand: a hundred times the power, less what a step of 16 ms across the leap takes.
      expect(changes[0]!.stepDb).toBeGreaterThan(17);
    }
  });

  it('takes no crack that dies away for a beginning', () => {
    // Rejects a leap judged by its first moments: steady noise after the last pops of a crater would be
    // an arc that never ends.
    const crack = (timeS: number) => timeS >= 2 && timeS < 2.06;
    const changes = track({
      windows: 24,
      score: () => -2,
      level: (timeS) => (crack(timeS) ? 1 : 0.01),
    });
    expect(changes).toEqual([]);
  });

  it('counts the fall of a room that goes on sounding', () => {
    // 60 dB in 0.8 s is 0.7586 a step of 16 ms: over eight steps 0.7586^8, or 9.6 dB, over three 3.6 dB.
    // Rejects a fall measured as sharply as a rise: in a room no arc would ever stop at once.
    const changes = track({
      windows: 40,
      score: (window) => 6 * share(window, 2, 5) - 3,
      level: (timeS) =>
        timeS < 2 ? 1e-6 : timeS < 5 ? 1 : Math.max(1e-6, 10 ** ((-6 * (timeS - 5)) / 0.8)),
    });
    const stop = changes.at(-1)!;
    expect(stop.type).toBe('arc-stop');
    expect(stop.stepDb).toBeCloseTo(9.6, 1);
  });

  it('counts no leap out of digital silence, which proves an edit', () => {
    const changes = track({
      windows: 24,
      score: (window) => 6 * share(window, 2, 99) - 3,
      level: (timeS) => (timeS >= 2 ? 1 : 0),
    });
    expect(Math.abs(changes[0]!.timeS - 2)).toBeLessThanOrEqual(STEP_S);
    expect(changes[0]!.stepDb).toBe(0);
  });

  it('counts a leap only where the recorder is surely open already, and still is', () => {
    // Rejects taking the fade of a recorder that opens or closes for an ignition or the end of an arc.
    const durationS = WINDOW_S + 19 * HOP_S;
    const leaps = (afterS: number, beforeEndS: number) => {
      const [onS, offS] = [afterS, durationS - beforeEndS];
      const changes = track({
        windows: 20,
        score: () => 3,
        level: (timeS) => (timeS >= onS && timeS < offS ? 1 : 0.01),
      });
      expect(changes.map(({ open }) => open)).toEqual([false, false]);
      expect(Math.abs(changes[0]!.timeS - onS)).toBeLessThanOrEqual(STEP_S);
      expect(Math.abs(changes[1]!.timeS - offS)).toBeLessThanOrEqual(STEP_S);
      return changes.map(({ stepDb }) => Math.round(stepDb!));
    };
    expect(leaps(7 * STEP_S, 7 * STEP_S)).toEqual([0, 0]);
    expect(leaps(20 * STEP_S, 20 * STEP_S)).toEqual([20, 20]);
  });
});
