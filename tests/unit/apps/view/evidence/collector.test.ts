import { describe, expect, it } from 'vitest';
import { MARK_S } from '../../../../../src/apps/view/evidence/index.js';
import { MADE, madeRun, madeSound } from '../../../../support/report-run.js';

describe('the evidence of a trace made by hand', () => {
  const evidence = madeRun().evidence!;

  it('marks every short circuit where it was put, as long as it was', () => {
    // Rejects marks that count from the arc start, from a block start, or miss the first of an arc.
    const [marks] = evidence.marks;
    expect(marks?.what).toBe('short circuit');
    expect(marks?.starts.length).toBe(MADE.shorts);
    marks!.starts.forEach((start, k) => {
      expect(Math.abs(start * MARK_S - (MADE.firstShortS + k * MADE.everyS))).toBeLessThan(3e-4);
      expect(Math.abs(marks!.lengths[k]! * MARK_S - MADE.shortS)).toBeLessThan(6e-4);
    });
  });

  it('counts 50 a second, and intervals of 20 ms', () => {
    const rate = evidence.eventRate!;
    const middle = rate.values[Math.floor(5 / rate.stepS)]!;
    // 0.25 s hold 12 or 13 shorts of 50 a second.
    expect(middle).toBeGreaterThanOrEqual(48);
    expect(middle).toBeLessThanOrEqual(52);
    const { counts, fromS, ratio, total } = evidence.intervals!;
    const bin = Math.floor(Math.log(0.02 / fromS) / Math.log(ratio) + 1e-9);
    expect((counts[bin - 1] ?? 0) + counts[bin]! + counts[bin + 1]!).toBeGreaterThan(0.95 * total);
  });

  it('splits the voltage by phase: 4 ms in 20 near 3 V', () => {
    const { arc, short, fromValue, width } = evidence.levels!;
    const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0);
    // 495 shorts of 4 ms in 10 s of arc, less the slots at its edges.
    expect(sum(short) / (sum(arc) + sum(short))).toBeCloseTo(0.199, 2);
    const at = (volts: number) => Math.floor((volts - fromValue) / width);
    expect(short[at(2.9)]! + short[at(3.1)]!).toBe(sum(short));
    expect(arc[at(21.9)]! + arc[at(22.1)]!).toBe(sum(arc));
  });

  it('lays the shorts over each other', () => {
    const average = evidence.averageShort!;
    const volts = average.quantities[0]!.curves.middle;
    const at = (seconds: number) => volts[Math.round((seconds - average.startS) / average.stepS)]!;
    expect(average.quantities.map((one) => one.name)).toEqual(['voltage', 'current']);
    expect(at(-0.001)).toBeCloseTo(22, 0);
    expect(at(0.002)).toBeCloseTo(3, 0);
    expect(at(0.006)).toBeCloseTo(22, 0);
  });

  it('does not depend on how the samples were split into blocks', () => {
    const other = madeRun({}, 777).evidence!;
    expect(other).toEqual(evidence);
  });

  it('keeps nothing of sound', () => {
    const { spectrogram, levelDb, playback } = evidence;
    expect({ spectrogram, levelDb, playback }).toEqual({
      spectrogram: null,
      levelDb: null,
      playback: null,
    });
  });
});

describe('the evidence of a sound made by hand', () => {
  const evidence = madeSound().evidence!;

  it('has its rhythm at the rate at which it was made loud', () => {
    // Rejects a spectrum of the sound itself, whose power lies in the kilohertz.
    const { power, binHz } = evidence.spectrum!;
    let best = 10;
    for (let k = 10; k < power.length; k++) if (power[k]! > power[best]!) best = k;
    expect(best * binHz).toBeCloseTo(90, -0.3);
  });

  it('has a picture, a level and something to listen to, and no electrical pictures', () => {
    const { spectrogram, levelDb, playback, levels, plane, averageShort } = evidence;
    expect(spectrogram!.cells.length % spectrogram!.rows).toBe(0);
    expect(levelDb!.values.every((one) => one < 0 && one > -30)).toBe(true);
    expect(playback!.samples.length / playback!.rateHz).toBeCloseTo(10, 2);
    expect({ levels, plane, averageShort }).toEqual({
      levels: null,
      plane: null,
      averageShort: null,
    });
  });
});
