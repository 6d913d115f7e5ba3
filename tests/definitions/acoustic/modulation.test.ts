import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/index.js';
import { WINDOW_FRAMES } from '../../../src/features/acoustic/grid.js';
import {
  MODULATION_BIN_HZ,
  ModulationAnalyser,
} from '../../../src/features/acoustic/modulation.js';

const FRAME_RATE_HZ = 4000;

/** Cell energies whose fourth root is `1 + depth·cos(2π·f·t)`. */
function energies(depth: number, frequencyHz: number): Float64Array {
  return Float64Array.from(
    { length: WINDOW_FRAMES },
    (_, i) => (1 + depth * Math.cos((2 * Math.PI * frequencyHz * i) / FRAME_RATE_HZ)) ** 4,
  );
}

describe('modulation spectra', () => {
  it('show a sine of depth a as a²/2 over its bins', () => {
    // Closed form: the power of a·cos is a²/2. Rejects a two-sided spectrum (a²/4), and one that is not
    // divided by the energy of the window (3/8 of it).
    const bin = 100;
    const frames = energies(0.2, bin * MODULATION_BIN_HZ);
    const { cross, low } = new ModulationAnalyser().analyse(frames, frames);
    const around = (values: Float64Array) =>
      values.subarray(bin - 2, bin + 3).reduce((sum, value) => sum + value, 0);
    expect(around(low)).toBeCloseTo(0.02, 6);
    expect(around(cross)).toBeCloseTo(0.02, 6);
  });

  it('do not depend on the level', () => {
    // Rejects power that is not divided by the squared mean.
    const frames = energies(0.3, 80);
    const quiet = frames.map((value) => value * 1e-8);
    const loud = new ModulationAnalyser().analyse(frames, frames).cross.slice();
    const soft = new ModulationAnalyser().analyse(quiet, quiet).cross;
    for (let k = 0; k < 400; k++) expect(soft[k]).toBeCloseTo(loud[k]!, 10);
  });

  it('keep in the cross-spectrum only what both halves share', () => {
    // Rejects the product of the two powers in place of the cross-spectrum: it would not average out.
    const random = createRandom(440);
    const noise = () => Float64Array.from({ length: WINDOW_FRAMES }, () => 1 + 0.3 * random.next());
    const { low, high, cross } = new ModulationAnalyser().analyse(noise(), noise());
    const sum = (values: Float64Array) => values.subarray(10).reduce((total, v) => total + v, 0);
    expect(Math.abs(sum(cross))).toBeLessThan(0.15 * Math.sqrt(sum(low) * sum(high)));
  });

  it('are all zero for silence', () => {
    const silence = new Float64Array(WINDOW_FRAMES);
    const { cross } = new ModulationAnalyser().analyse(silence, silence);
    expect(Math.max(...cross)).toBe(0);
  });
});
