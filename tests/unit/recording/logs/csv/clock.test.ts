import { describe, expect, it } from 'vitest';
import { readClock } from '../../../../../src/recording/logs/csv/clock.js';
import { ClockBytes } from '../../../../../src/recording/logs/csv/clock-bytes.js';

/* Expected values: hand calculation; dates by JavaScript's Date.UTC. */

const DAY = Date.UTC(2026, 0, 2) / 1000;

const CASES: [text: string, seconds: number, fast: boolean][] = [
  ['00:00:00', 0, true],
  ['01:02:03', 3723, true],
  ['1:02:03.5', 3723.5, true],
  ['23:59:59,999', 86_399.999, true],
  ['2026-01-02T00:00:01.25Z', DAY + 1.25, true],
  ['2026/01/02 10:00:00', DAY + 36_000, true],
  ['02:03.5', 123.5, false],
  ['12:00:00 AM', 0, false],
  ['01:00:00 PM', 46_800, false],
  ['31.12.2025 00:00:02', 2, false],
  ['2026-01-02T00:00:01+01:00', DAY + 1, false],
];

describe('clock text', () => {
  it.each(CASES)('%s', (text, seconds, fast) => {
    expect(readClock(text)).toBeCloseTo(seconds, 9);
    const bytes = new TextEncoder().encode(`${text};`);
    const clock = new ClockBytes();
    const value = clock.read(bytes, 0, 0x3b);
    const whole = clock.at === text.length && !Number.isNaN(value);
    expect(whole).toBe(fast);
    if (fast) expect(value).toBeCloseTo(seconds, 9);
  });

  it.each(['', '12', '12:', ':1:2', '1:2:3:4:5', '2026-01-02', '2026-13-02T00:00:00', 'noon'])(
    'refuses %j',
    (text) => {
      const bytes = new TextEncoder().encode(`${text};`);
      const clock = new ClockBytes();
      const value = clock.read(bytes, 0, 0x3b);
      expect(clock.at === text.length && !Number.isNaN(value)).toBe(false);
    },
  );
});
