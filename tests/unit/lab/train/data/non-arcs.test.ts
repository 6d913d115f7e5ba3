import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { SOUND_FEATURES } from '../../../../../src/features/index.js';
import {
  type LabelledRun,
  REAL,
  RERECORDED,
} from '../../../../../src/lab/train/data/labelled-run.js';
import { rerecord } from '../../../../../src/lab/train/data/make-non-arcs.js';
import { foldsOf } from '../../../../../src/lab/train/fit/fit-arc-classifier.js';
import {
  packReference,
  SHIPPED_RECIPE,
  unpackReference,
} from '../../../../../src/lab/train/index.js';

const RATE_HZ = 22_050;
const random = createRandom('hiss');
const HISS = {
  id: 'Rain/1-77-A.ogg',
  kind: 'Rain',
  samples: Float64Array.from({ length: 4 * RATE_HZ }, () => 0.05 * random.normal()),
  rateHz: RATE_HZ,
};

describe('a real sound as others would have recorded it', () => {
  const runs = rerecord(HISS, 6, SHIPPED_RECIPE);

  it('lasts three quarters to four thirds as long, whatever its rate', () => {
    // Rejects a clip of another rate taken for one of 44.1 kHz, which would last half as long.
    const ends = runs.map(({ windows }) => windows.at(-1)!.window.endS);
    for (const endS of ends) {
      expect(endS).toBeGreaterThan((4 * 3) / 4 - 0.3);
      expect(endS).toBeLessThan((4 * 4) / 3 + 0.01);
    }
    // Rejects one speed for all.
    expect(Math.max(...ends) - Math.min(...ends)).toBeGreaterThan(0.2);
  });

  it('is another each time, and the same when made again', () => {
    const first = (run: LabelledRun) => [...run.windows[4]!.window.values];
    expect(first(runs[1]!)).not.toEqual(first(runs[0]!));
    expect(first(rerecord(HISS, 1, SHIPPED_RECIPE)[0]!)).toEqual(first(runs[0]!));
    expect(runs.every(({ mode, windows }) => mode === null && windows[0]!.arc === 'off')).toBe(
      true,
    );
  });

  it('stays told from the recording itself in the document', () => {
    const real = { ...runs[0]!, id: HISS.id, conditions: [REAL] };
    const document = JSON.parse(
      JSON.stringify(packReference('', SOUND_FEATURES, [real, runs[0]!])),
    );
    const conditions = unpackReference(document, SOUND_FEATURES).map((run) => run.conditions);
    expect(conditions).toEqual([[REAL], [RERECORDED]]);
  });
});

describe('what a held-out gate has not met', () => {
  const run = (id: string, family: string, mode: LabelledRun['mode'], conditions: string[] = []) =>
    ({ id, family, mode, conditions, unambiguous: true, windows: [] }) satisfies LabelledRun;

  it('is the source of a real clip with its takes and renderings, the kind of a drawn sound, the family of an arc', () => {
    const arcs = [run('a/0', 'capillary', 'spray'), run('a/1', 'necking', 'spray')];
    const clips = ['Rain/1-77-A.ogg', 'Rain/1-77-B.ogg', 'Rain/2-88-A.ogg'].flatMap((id) => [
      run(id, 'Rain', null, [REAL]),
      run(`${id}#0`, 'Rain', null, ['chain shop', RERECORDED]),
    ]);
    const drawn = ['x/0', 'x/1', 'y/0'].map((id) => run(id, id[0]!, null));
    const foldOf = foldsOf(arcs, [...clips, ...drawn]);
    // Rejects takes or renderings of one clip on both sides, which would flatter the threshold.
    const folds = clips.map(foldOf);
    expect(new Set(folds.slice(0, 4)).size).toBe(1);
    expect(folds[4]).not.toBe(folds[0]);
    expect(folds[5]).toBe(folds[4]);
    expect(foldOf(drawn[0]!)).toBe(foldOf(drawn[1]!));
    expect(foldOf(drawn[2]!)).not.toBe(foldOf(drawn[0]!));
    expect(foldOf(arcs[0]!)).not.toBe(foldOf(arcs[1]!));
  });
});
