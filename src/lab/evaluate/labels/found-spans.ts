import type { Result } from '../../../analysis/result/index.js';
import type { Span } from '../score/spans.js';
import type { LabelledSpan } from './truth-runs.js';
import { isDecided } from './vocabulary.js';

/** What the tool says where an arc burns but it names no mode. */
export const SILENT = 'undetermined';

/** The result as spans that tile all time: modes, {@link SILENT} arc, and `no-arc` between. */
export function foundSpans(result: Result): Span[] {
  const spans: Span[] = [];
  let atS = 0;
  const upTo = (timeS: number, label: string): void => {
    if (timeS > atS) spans.push({ startS: atS, endS: timeS, label });
    atS = Math.max(atS, timeS);
  };
  for (const arcInterval of result.arcStretches) {
    upTo(arcInterval.startS, 'no-arc');
    for (const one of result.segments) {
      if (one.startS < arcInterval.startS - 1e-9 || one.startS >= arcInterval.endS) continue;
      upTo(one.startS, SILENT);
      upTo(Math.min(one.endS, arcInterval.endS), one.mode ?? SILENT);
    }
    upTo(arcInterval.endS, SILENT);
  }
  // Labelled time may lie beyond what was read; a failed file says nothing at all.
  upTo(Number.MAX_VALUE, result.status === 'failed' ? SILENT : 'no-arc');
  return spans;
}

/** The parts whose label can be right or wrong. */
export function decidedSpans(spans: readonly LabelledSpan[]): LabelledSpan[] {
  return spans.filter((span) => isDecided(span.label) && span.label !== 'mixed');
}

/** Share of the time of an arc (of the recording where none was found) that the parts cover. */
export function coveredShare(spans: readonly LabelledSpan[], result: Result): number {
  const duration = result.source.durationS ?? 0;
  const arcs =
    result.arcStretches.length > 0 ? result.arcStretches : [{ startS: 0, endS: duration }];
  let total = 0;
  let covered = 0;
  for (const arc of arcs) {
    total += arc.endS - arc.startS;
    for (const span of spans)
      covered += Math.max(0, Math.min(arc.endS, span.endS) - Math.max(arc.startS, span.startS));
  }
  return total > 0 ? covered / total : 0;
}
