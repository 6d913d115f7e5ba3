import * as z from 'zod';
import { ArcError, MODES } from '../../core/index.js';

export const MACHINE_VERSION = '1.0';

const known = z.number().nullable();

/** One setting of a machine and what it gave. */
const step = z.object({
  /** Recording and the stretch of it, s. */
  path: z.string(),
  fromS: z.number(),
  toS: z.number(),
  status: z.enum(['ok', 'no-arc', 'unsure', 'failed']),
  mode: z.enum([...MODES, 'mixed']).nullable(),
  confidence: known,
  /** Means of the trace. */
  meanVoltageV: known,
  meanCurrentA: known,
  /** Dial and feed, where a table states them. */
  setVoltageV: known,
  wireFeedMPerMin: known,
  /** Spread that tells how even the mode ran: the smaller, the more even; null where not shown. */
  regularity: known,
  /** What was rated "watch" or "bad". */
  off: z.array(z.string()),
});

/** What one machine, wire and gas gave at the settings that were tried. */
export const machineSchema = z.object({
  kind: z.literal('arc-transfer-machine'),
  version: z.literal(MACHINE_VERSION),
  /** As the user calls it. */
  machine: z.string(),
  wireMaterial: z.string().nullable(),
  wireDiameterMm: known,
  /** Composition in per cent, as `expect --json` writes it; null where not stated. */
  gas: z.unknown(),
  steps: z.array(step).min(1),
});

export type Machine = z.infer<typeof machineSchema>;
export type SweepStep = z.infer<typeof step>;

/** @throws ArcError `bad-machine-file` */
export function parseMachine(text: string, path: string): Machine {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (cause) {
    throw bad(path, 'it is not one JSON document', cause);
  }
  const checked = machineSchema.safeParse(parsed);
  if (checked.success) return checked.data;
  const first = checked.error.issues[0];
  throw bad(
    path,
    first ? `${first.path.join('.') || 'the document'}: ${first.message}` : 'unknown',
  );
}

function bad(path: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'bad-machine-file',
    what: `The machine file ${path} cannot be used: ${why}.`,
    expected: 'a file written by sweep --machine-file',
    todo: 'Name such a file, or leave --machine out.',
    cause,
  });
}
