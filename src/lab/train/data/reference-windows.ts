import * as z from 'zod';
import { ArcError } from '../../../core/index.js';
import type { FeatureSet } from '../../../features/index.js';
import { type LabelledRun, REAL, RERECORDED } from './labelled-run.js';

/**
 * Feature windows of real recordings, kept as numbers because the recordings themselves are not ours to
 * ship. `null` in a vector is absent.
 */
export const referenceWindowsSchema = z.object({
  origin: z.string(),
  featureSet: z.object({ id: z.string(), version: z.number(), features: z.array(z.string()) }),
  recordings: z.array(
    z.object({
      id: z.string(),
      kind: z.string(),
      /** True for a rendering of a recording through a drawn room, noise and device. */
      rerecorded: z.boolean().optional(),
      windows: z.array(
        z.object({
          startS: z.number(),
          endS: z.number(),
          values: z.array(z.number().nullable()),
          levels: z.array(z.number()),
        }),
      ),
    }),
  ),
});
export type ReferenceWindows = z.infer<typeof referenceWindowsSchema>;

const DIGITS = 5;

/** Recordings without an arc as a document. */
export function packReference(
  origin: string,
  featureSet: FeatureSet,
  runs: readonly LabelledRun[],
): ReferenceWindows {
  return {
    origin,
    featureSet: {
      id: featureSet.id,
      version: featureSet.version,
      features: featureSet.features.map((feature) => feature.id),
    },
    recordings: runs.map((run) => ({
      id: run.id,
      kind: run.family,
      ...(run.conditions.includes(RERECORDED) ? { rerecorded: true } : {}),
      windows: run.windows.map(({ window }) => ({
        startS: window.startS,
        endS: window.endS,
        values: Array.from(window.values, (value) => (Number.isNaN(value) ? null : round(value))),
        levels: Array.from(window.sound?.levels ?? [], round),
      })),
    })),
  };
}

/**
 * The recordings of a document, as runs without an arc.
 * @throws ArcError `reference-mismatch` when they were made with other features
 */
export function unpackReference(document: unknown, featureSet: FeatureSet): LabelledRun[] {
  const reference = referenceWindowsSchema.parse(document);
  const names = featureSet.features.map((feature) => feature.id).join();
  if (reference.featureSet.features.join() !== names)
    throw new ArcError({
      code: 'reference-mismatch',
      what: 'The windows of the real recordings were made with other features.',
      expected: `features of "${featureSet.id}" version ${featureSet.version}`,
      todo: 'Make them again with `arc-transfer fit --reference-from <folder>`.',
    });
  return reference.recordings.map(({ id, kind, rerecorded, windows }) => ({
    id,
    family: kind,
    conditions: [rerecorded ? RERECORDED : REAL],
    mode: null,
    unambiguous: true,
    windows: windows.map(({ startS, endS, values, levels }) => ({
      mode: null,
      arc: 'off' as const,
      window: {
        startS,
        endS,
        values: Float64Array.from(values, (value) => value ?? Number.NaN),
        sound: {
          levels: Float64Array.from(levels),
          lineHz: NaN,
          lineProminence: NaN,
          onsetHz: NaN,
          onsetStrength: NaN,
          clippedShare: 0,
        },
      },
    })),
  }));
}

function round(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
