import { describe, expect, it } from 'vitest';
import { DepartureWatch, type LiveBelief } from '../../../../src/analysis/index.js';
import { MODES, type Mode } from '../../../../src/core/index.js';

const HOP = 0.25;

function belief(mode: Mode | null, probability = 0.94): LiveBelief {
  const rest = (1 - probability) / 3;
  const probabilities = Float64Array.from(MODES, (one) => (one === mode ? probability : rest));
  if (mode === null) probabilities.fill(0.25);
  return { mode, probability: mode ? probability : 0.25, probabilities };
}

/** Pushes one window a letter: s the expected short-circuit, g globular, u unclear; `rateHz` of events. */
function run(letters: string, rateHz: number | null = 90, watch = newWatch()): string[] {
  const modes: Record<string, Mode | null> = { s: 'short-circuit', g: 'globular', u: null };
  return [...letters].flatMap((letter, i) =>
    watch
      .push((i + 1) * HOP, HOP, belief(modes[letter]!), rateHz)
      .map((c) => `${c.type}@${c.timeS}`),
  );
}

function newWatch(tolerateS = 0.5, alarmAfterS = 1): DepartureWatch {
  return new DepartureWatch({ mode: 'short-circuit', tolerateS, alarmAfterS }, 0.3);
}

// All times are hand counts of windows of 0.25 s.
describe('leaving the expected mode', () => {
  it('passes over what is tolerated', () => {
    expect(run('sssggssssggssss')).toEqual([]);
  });

  it('says a departure beyond the tolerance and alarms after the alarm time', () => {
    expect(run('ssssgggg')).toEqual(['departed@1.75', 'alarm@2']);
  });

  it('takes more than a likelier mode: what is expected was set for', () => {
    // 10 % (a third of 0.3) is left to the expected mode. Rejects an alarm by the likeliest mode alone.
    const watch = newWatch();
    for (let i = 1; i <= 12; i++)
      expect(watch.push(i * HOP, HOP, belief('globular', 0.7), 90)).toEqual([]);
  });

  it('stays awake over a flicker: a return shorter than the tolerance does not set the clock back', () => {
    // Rejects a clock that restarts at every window in the mode.
    expect(run('ggsggsggsgg')).toContain('alarm@1.25');
  });

  it('does not chatter: the alarm ends only when the return has lasted', () => {
    expect(run('ggggsggsggsg').filter((one) => one.startsWith('alarm'))).toEqual(['alarm@1']);
    expect(run('ggggssss')).toEqual(['departed@0.75', 'alarm@1', 'alarm-end@2']);
  });

  it('waits until a slow mode has had ten events', () => {
    // 10 events at 5 a second take 2 s.
    expect(run('gggggggg', 5)).toEqual(['departed@0.75', 'alarm@2']);
  });

  it('counts no unclear window as departure, and says so when it lasts', () => {
    expect(run('u'.repeat(24))).toEqual(['unclear@5']);
  });

  it('forgets what began in the crater when the arc stops', () => {
    const watch = newWatch();
    run('ssggg', 90, watch);
    expect(watch.arcStop(1.25).map((one) => one.why)).toEqual(['arc-end']);
    expect(watch.alarm).toBe(false);
    expect(run('gg', 90, watch)).toEqual([]);
  });

  it('does not take a lost signal for a departure, nor an alarm away', () => {
    const watch = newWatch();
    run('ggg', 90, watch);
    watch.signalLost();
    expect(run('g', 90, watch)).toEqual([]);
    run('gggg', 90, watch);
    expect(watch.alarm).toBe(true);
    watch.signalLost();
    expect(watch.alarm).toBe(true);
  });
});
