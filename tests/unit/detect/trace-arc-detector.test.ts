import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/index.js';
import { dips, runLane, trace } from '../features/electrical/traces.js';

const sine = (hz: number, t: number) => Math.sin(2 * Math.PI * hz * t);

describe('what is no arc', () => {
  const random = createRandom(5);
  const cases: [string, (t: number) => number][] = [
    ['zeros', () => 0],
    ['open circuit of 60 V', () => 60],
    ['open circuit of 35 V, as high as an arc', () => 35],
    ['open circuit of 35 V with sensor noise', () => 35 + random.normal(0, 0.3)],
    ['a dead short', () => 3 + random.normal(0, 0.2)],
    ['hum around zero', (t) => 20 * sine(50, t)],
    ['hum on a level', (t) => 25 + 3 * sine(50, t)],
    ['60 Hz hum on a level', (t) => 25 + 3 * sine(60, t)],
    ['rectified hum', (t) => Math.abs(30 * sine(50, t))],
    ['rectifier ripple on open circuit', (t) => 35 + 4 * Math.abs(sine(50, t))],
    ['sensor noise alone', () => random.normal(0, 3)],
    ['a slow ramp', (t) => 6 * t],
    ['a slow swing', (t) => 25 + 10 * sine(0.3, t)],
    [
      'open circuit switched on and off',
      (t) => (Math.floor(t) % 2 === 1 ? 35 : 0) + random.normal(0, 0.1),
    ],
  ];
  // Rejects: a gate on level alone.
  it.each(cases)('%s', (_, of) => {
    const voltage = trace(5, 10_000, of);
    expect(runLane(10_000, voltage).events).toEqual([]);
    const none = trace(5, 10_000, () => random.normal(0, 0.5));
    expect(runLane(10_000, voltage, none).events).toEqual([]);
  });
});

describe('where an arc begins and ends', () => {
  const rateHz = 10_000;
  const arc = (seconds: number) =>
    dips({ seconds, rateHz, periodS: 0.0123, shortS: 0.002, noiseV: 0.3 });
  const edges = (voltage: Float64Array, current?: Float64Array) =>
    runLane(rateHz, voltage, current).events.filter(
      (event) => event.type === 'arc-start' || event.type === 'arc-stop',
    );

  it('finds both ends of a stretch to the millisecond', () => {
    const voltage = Float64Array.from([
      ...trace(1, rateHz, () => 0),
      ...arc(2),
      ...trace(1, rateHz, () => 0),
    ]);
    const [start, stop, ...rest] = edges(voltage);
    expect(rest).toEqual([]);
    expect(start).toMatchObject({ type: 'arc-start', open: false });
    expect(stop).toMatchObject({ type: 'arc-stop', open: false });
    expect(Math.abs(start!.timeS - 1)).toBeLessThan(0.001);
    expect(Math.abs(stop!.timeS - 3)).toBeLessThan(0.0035);
  });

  it('leaves open what burns at the edges', () => {
    const [start, stop] = edges(arc(2));
    expect(start).toEqual({ type: 'arc-start', timeS: 0, open: true });
    expect(stop).toEqual({ type: 'arc-stop', timeS: 2, open: true });
  });

  it('takes an open circuit of the height of an arc off both ends', () => {
    // Rejects: arc while the voltage is plausible. Open circuit of 38 V, 0.8 s before and after.
    const open = trace(0.8, rateHz, () => 38);
    const [start, stop, ...rest] = edges(Float64Array.from([...open, ...arc(2), ...open]));
    expect(rest).toEqual([]);
    expect(Math.abs(start!.timeS - 0.8)).toBeLessThan(0.02);
    expect(Math.abs(stop!.timeS - 2.8)).toBeLessThan(0.02);
  });

  it('bridges stubbing shorts of 60 ms and a pulsed base', () => {
    const stub = trace(0.06, rateHz, () => 4);
    const voltage = Float64Array.from([...arc(1), ...stub, ...arc(1)]);
    expect(edges(voltage).length).toBe(2);
    const random = createRandom(3);
    const pulsed = trace(2, rateHz, (t) => ((t * 40) % 1 < 0.15 ? 33 : 20) + random.normal(0, 0.2));
    expect(edges(pulsed).length).toBe(2);
  });

  it('ends with the current even where the voltage stays', () => {
    const random = createRandom(4);
    const voltage = Float64Array.from([
      ...arc(2),
      ...trace(1, rateHz, () => 30 + random.normal(0, 0.3)),
    ]);
    const current = trace(3, rateHz, (t) =>
      t < 2 ? 180 + random.normal(0, 2) : random.normal(0, 0.5),
    );
    const [, stop] = edges(voltage, current);
    expect(Math.abs(stop!.timeS - 2)).toBeLessThan(0.015);
  });

  it('notes a trace with its leads swapped instead of guessing', () => {
    const run = runLane(
      rateHz,
      arc(2).map((v) => -v),
    );
    expect(run.events).toEqual([]);
    expect(run.summary.notes.map((note) => note.code)).toEqual(['voltage-negative']);
  });
});
