import {
  type ArcInterval,
  type Disturbance,
  type Mode,
  type RunMode,
  totalS,
} from '../../core/index.js';
import type { DisturbanceReport, RunFigures } from '../../features/index.js';
import { type ColdSign, type Made, message } from '../../messages/index.js';
import { type Finding, rateUpTo, usual } from './finding.js';
import { disturbanceFindings, modeFindings } from './of-trace.js';

/** How the arc of a run behaved. */
export interface ArcCondition {
  findings: Finding[];
  /** Where, for the timeline. */
  marks: Disturbance[];
  /** What this recording cannot show. */
  notJudged: Made[];
}

/** What is known of the run. */
export interface ConditionInput {
  mode: RunMode | null;
  arcIntervals: readonly ArcInterval[];
  figures: RunFigures;
  /** Null without a trace. */
  disturbances: DisturbanceReport | null;
}

/** A longer pause of the sound is the next weld, s; own choice. */
const PAUSE_S = 2;
/** Share of the time shorted from which a dip arc counts as cold; own choice. */
const SHORTED_SHARE = 0.3;

/** Rates what the recording shows of the arc beside its mode; null without an arc. */
export function arcCondition(input: ConditionInput): ArcCondition | null {
  const { disturbances, mode, figures, arcIntervals } = input;
  if (arcIntervals.length === 0) return null;
  const none = message('condition-no-fusion');
  if (!disturbances) {
    const { finding, marks } = interruptions(arcIntervals);
    return {
      findings: [finding],
      marks,
      notJudged: [message('condition-not-by-sound'), none],
    };
  }
  const hasCurrent = !disturbances.notShown.includes('current-dip');
  const hasVoltage = !disturbances.notShown.includes('long-short');
  const named = mode === 'mixed' ? null : mode;
  const findings = [
    ...disturbanceFindings(disturbances, figures, hasVoltage ? 'trace' : 'current'),
    ...(named ? modeFindings(named, figures) : []),
  ];
  const cold = coldLap(named, findings, figures);
  return {
    findings: cold ? [...findings, cold] : findings,
    marks: disturbances.marks,
    notJudged: [
      ...(hasCurrent ? [] : [message('condition-no-current')]),
      ...(hasVoltage ? [] : [message('condition-no-voltage')]),
      ...(named ? [] : [message('condition-no-mode')]),
      none,
    ],
  };
}

/** Pauses of the sound between two arcs. */
function interruptions(arcIntervals: readonly ArcInterval[]) {
  const marks: Disturbance[] = [];
  for (let k = 1; k < arcIntervals.length; k++) {
    const [startS, endS] = [arcIntervals[k - 1]!.endS, arcIntervals[k]!.startS];
    if (endS - startS <= PAUSE_S) marks.push({ kind: 'arc-out', startS, endS });
  }
  const count = marks.length;
  const finding: Finding = {
    name: 'arc-outs',
    // Never worse than "watch": a pause sounds the same.
    rating: rateUpTo(count, 0, Number.POSITIVE_INFINITY),
    value: count,
    unit: '1',
    text: message('condition-arc-outs', { count, totalS: totalS(marks), by: 'sound' }),
    usual: usual('arc-outs'),
  };
  return { finding, marks };
}

/** Never worse than "watch", and silent without a sign: no trace shows cold lap, nor that there is none. */
function coldLap(
  mode: Mode | null,
  findings: readonly Finding[],
  figures: RunFigures,
): Finding | null {
  if (mode !== 'short-circuit' && mode !== 'globular') return null;
  const off = (name: Finding['name']): boolean =>
    findings.some((one) => one.name === name && one.rating !== 'good');
  const signs: ColdSign[] = [];
  if (off('stubbing')) signs.push('stubbing');
  if ((figures.shortShare ?? 0) > SHORTED_SHARE) signs.push('long-time-shorted');
  if (off('current-dips')) signs.push('current-dips');
  if (signs.length === 0) return null;
  return {
    name: 'cold-lap',
    rating: 'watch',
    value: signs.length,
    unit: '1',
    text: message('condition-cold-lap', { signs }),
    usual: usual('cold-lap', mode),
  };
}
