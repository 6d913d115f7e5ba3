import { describe, expect, it } from 'vitest';
import {
  DepartureWatch,
  hardToSee,
  learnModeBias,
  takenFor,
} from '../../../../src/analysis/index.js';
import { liveBelief } from '../../../../src/analysis/live/live-mode.js';
import { allowFor } from '../../../../src/analysis/live/reference-welds.js';
import { MODES, type Mode } from '../../../../src/core/index.js';

/** Probabilities in the order short-circuit, globular, spray, pulsed-spray. */
const p = (...values: number[]): Float64Array => Float64Array.from(values);
/** Globular against spray at odds of 9 and of 81. */
const NINE = p(0, 0.9, 0.1, 0);
const EIGHTY_ONE = p(0, 81 / 82, 1 / 82, 0);
/** Log-odds ln 9 and ln 81: mean ln 27, standard deviation ln 3; the sum of both less ln 3 is ln 27. */
const learned = learnModeBias('spray', [[NINE, EIGHTY_ONE]]);

describe('what good welds teach', () => {
  it('takes off what brings mean and one standard deviation down to odds of 3', () => {
    // Rejects the mean alone (ln 9), and the deviation of a sample (1.55 in place of ln 3).
    expect(learned.off.globular).toBeCloseTo(Math.log(27), 12);
    expect(learned.windows).toBe(2);
    expect(learned.taken.globular).toBeCloseTo((0.9 + 81 / 82) / 2, 12);
  });

  it('lets a long weld count no more than a short one', () => {
    // One window of ln 9 against three of ln 81 are as one against one: ln 27 and ln 3. Rejects windows that
    // all count alike (mean ln 46.8).
    const { off, windows } = learnModeBias('spray', [[NINE], [EIGHTY_ONE, EIGHTY_ONE, EIGHTY_ONE]]);
    expect(off.globular).toBeCloseTo(Math.log(27), 12);
    expect(windows).toBe(4);
  });

  it('says what a weld is taken for, if for anything', () => {
    // Means by hand: 0.9 and 81 / 82 of globular; then 0.45 of globular and 0.525 of spray. Rejects the
    // likeliest where the others together are likelier.
    const spray = p(0, 0, 0.95, 0.05);
    expect(takenFor([NINE, EIGHTY_ONE])).toBe('globular');
    expect(takenFor([NINE, spray])).toBe('spray');
    expect(takenFor([p(0.45, 0.4, 0.15, 0)])).toBeNull();
  });

  it('takes nothing off modes that were not mistaken for the expected one, nor off that one', () => {
    expect({ ...learned.off, globular: 0 }).toEqual({
      'short-circuit': 0,
      globular: 0,
      spray: 0,
      'pulsed-spray': 0,
    });
  });

  it('leaves a cell that is recognised as it is', () => {
    // Rejects a correction in both directions, which would make the alarm deaf here.
    const { off } = learnModeBias('spray', [[p(0.02, 0.02, 0.94, 0.02)], [p(0.1, 0.3, 0.5, 0.1)]]);
    expect(Object.values(off)).toEqual([0, 0, 0, 0]);
  });

  it('counts no probability below one in ten thousand', () => {
    // Rejects logarithms of 0, which would take off more than all.
    const { off } = learnModeBias('spray', [[p(0, 1, 0, 0)]]);
    expect(off.globular).toBeCloseTo(Math.log(1e4) - Math.log(3), 12);
  });
});

describe('a belief less what is allowed for', () => {
  it('is scaled and names its own mode', () => {
    // 81 : 1 becomes 3 : 1 by ln 27, and 9 : 1 becomes 1 : 3.
    const [worse, better] = [EIGHTY_ONE, NINE].map((one) => allowFor(liveBelief(one), learned));
    expect([...worse!.probabilities]).toEqual([0, 0.75, 0.25, 0].map((x) => expect.closeTo(x, 12)));
    expect(worse!.mode).toBe('globular');
    expect(better!.mode).toBe('spray');
    expect(better!.probability).toBeCloseTo(0.75, 12);
  });

  it('does not touch the belief of the model', () => {
    const belief = liveBelief(EIGHTY_ONE);
    allowFor(belief, learned);
    expect([...belief.probabilities]).toEqual([0, 81 / 82, 1 / 82, 0]);
    expect(belief.mode).toBe('globular');
  });
});

describe('departures that will hardly be seen', () => {
  it('are those that typical evidence does not carry over the alarm any more', () => {
    // ln 27 = 3.3 from 7 leaves 3.7, from 4.5 it leaves 1.2; the alarm needs ln 19 = 2.9.
    expect(hardToSee(learned, 'electrical')).toEqual([]);
    expect(hardToSee(learned, 'sound')).toEqual(['globular']);
  });
});

describe('an alarm that allows', () => {
  const alarms = (watch: DepartureWatch, probabilities: Float64Array): string[] =>
    Array.from({ length: 12 }, (_, i) =>
      watch.push((i + 1) / 4, 0.25, liveBelief(probabilities), null),
    ).flatMap((changes) => changes.map(({ type, mode }) => `${type} ${mode}`));
  const watch = (mode: Mode, modeBias = learned) =>
    new DepartureWatch({ mode, tolerateS: 0.5, alarmAfterS: 1 }, 0.3, modeBias);

  it('is quiet about what good welds look like, and not about the rest', () => {
    const sure = (mode: Mode) => p(...MODES.map((one) => (one === mode ? 0.97 : 0.01)));
    const nothing = learnModeBias('spray', [[sure('spray')]]);
    // EIGHTY_ONE leaves spray 1.2 % and, less ln 27, 25 %: under and over the 5 % of the alarm.
    expect(alarms(watch('spray', nothing), EIGHTY_ONE)).toContain('alarm globular');
    expect(alarms(watch('spray'), EIGHTY_ONE)).toEqual([]);
    expect(alarms(watch('spray'), sure('short-circuit'))).toContain('alarm short-circuit');
  });

  it('holds for the mode that was vouched for alone', () => {
    // Less ln 27, globular would fall from 55 % to 4.3 %: rejects one that always applies.
    expect(alarms(watch('globular'), p(0.05, 0.55, 0.35, 0.05))).toEqual([]);
  });
});
