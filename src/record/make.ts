import { arcTimeOf, type Result } from '../analysis/result/index.js';
import { message, said } from '../messages/index.js';
import type { Procedure } from '../procedure/index.js';
import type { Setup } from '../setup/index.js';
import { limitRows } from './limits.js';
import { modeTime } from './mode-time.js';
import { depositOf, powerOf } from './power.js';
import { type LimitRow, RECORD_FORMAT, type WeldRecord } from './schema.js';

export interface RecordInput {
  result: Result;
  /** What a person stated of this run, without what the procedure says. */
  stated: Setup;
  /** The same with what the procedure fixes, as `fillSetup` gives it. */
  setup: Setup;
  procedure: Procedure;
  /** Identifiers, recorder and meters, as given. */
  ids?: Readonly<Record<string, string>>;
  weldedAt?: WeldRecord['weldedAt'];
}

/**
 * The record of one run: each limit of the procedure inside, outside or not to be judged, with the figures it
 * rests on. Made from the result alone; nothing is judged anew.
 */
export function makeRecord({
  result,
  stated,
  setup,
  procedure,
  ids = {},
  weldedAt = null,
}: RecordInput): WeldRecord {
  const { source, tool, model, status, segments } = result;
  const time = modeTime(result, procedure.modes);
  const power = powerOf(result, setup);
  const limits = limitRows(procedure, result, stated, time, power);
  const statement = message('record-no-qualification');
  return {
    format: RECORD_FORMAT,
    statement: statement.text,
    statementMessage: said(statement),
    tool: { name: tool.name, version: tool.version },
    model: model && `${model.id} ${model.version} (${model.fingerprint})`,
    run: {
      path: source.path,
      sha256: source.sha256,
      kind: source.kind,
      sampleRateHz: source.sampleRateHz,
      durationS: source.durationS,
      status,
      statusReason: result.statusReason,
      statusReasonMessage: result.statusReasonMessage ?? null,
      arcTimeS: arcTimeOf(result),
      arcStretches: result.arcStretches.map(({ startS, endS }) => ({ startS, endS })),
      segments: segments.map(({ startS, endS, mode }) => ({ startS, endS, mode })),
    },
    weldedAt,
    ids: { ...ids },
    procedure: {
      name: procedure.name,
      revision: procedure.revision,
      note: procedure.note,
      joint: procedure.joint,
      pass: procedure.pass,
      modes: [...procedure.modes],
    },
    outcome: outcomeOf(limits),
    limits,
    mode: time,
    power,
    deposit: depositOf(result, setup),
  };
}

/** What is outside counts first; without the mode nothing is called inside. */
function outcomeOf(limits: readonly LimitRow[]): WeldRecord['outcome'] {
  const some = (outcome: LimitRow['outcome']): boolean =>
    limits.some((one) => one.outcome === outcome);
  if (some('outside')) return 'outside';
  if (limits.find((one) => one.limit === 'modeShare')?.outcome !== 'inside') return 'cannot-judge';
  return some('cannot-judge') ? 'inside-as-far-as-judged' : 'inside';
}
