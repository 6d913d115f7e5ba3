import type { Disturbance, DisturbanceKind } from '../core/index.js';

/** What a trace shows of disturbances. */
export interface DisturbanceReport {
  /** In order of time; the first 500 of each kind. */
  marks: Disturbance[];
  /** How many there were and how long they lasted together, s. */
  totals: Record<DisturbanceKind, { count: number; totalS: number; longestS: number }>;
  /** Arc time in which long arcs, dips and slow swings were looked for, s. */
  judgedS: number;
  /** Kinds that the channels at hand cannot show. */
  notShown: DisturbanceKind[];
}

/** The same in the time of a recording that began `byS` seconds earlier. */
export function laterBy(report: DisturbanceReport, byS: number): DisturbanceReport {
  const marks = report.marks.map(({ kind, startS, endS }) => ({
    kind,
    startS: Math.max(0, startS + byS),
    endS: Math.max(0, endS + byS),
  }));
  return { ...report, marks };
}
