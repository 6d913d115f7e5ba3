import type { Mode } from '../core/index.js';
import type { Sourced } from './sourced.js';

/** What a code makes of the transfer mode, as far as it was read. */
export interface QualificationRow extends Sourced {
  rule: string;
}

export const QUALIFICATION_ROWS: readonly QualificationRow[] = [
  {
    rule: 'AWS D1.1 does not prequalify short-circuit transfer: a procedure with it needs its own qualification test. AWS D1.3 (sheet) allows it prequalified.',
    source: 'Practical Welding Today, question and answer (2014)',
    certainty: 'F',
  },
  {
    rule: 'ASME IX QW-409.2 counts a change from globular, spray or pulsed to short-circuit, or the reverse, among the essential variables.',
    source: 'API RP 577 §11.3',
    certainty: 'F2',
  },
  {
    rule: 'ISO 15614-1: short-circuit qualifies only short-circuit; spray, pulse or globular qualifies spray, pulse and globular.',
    source: 'secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3',
    certainty: 'F2',
  },
];

export const CHECK_THE_CODE = "Check your code's current edition.";

/**
 * What a step between two modes may mean for a qualified procedure. Only the step to or from
 * short-circuit is an essential variable in the codes above; the answer is empty for all others.
 */
export function qualificationNotes(seen: Mode, intended: Mode): string[] {
  const short = (mode: Mode): boolean => mode === 'short-circuit';
  if (seen === intended || short(seen) === short(intended)) return [];
  return [
    `${seen} instead of ${intended} may be a change of an essential variable. ${CHECK_THE_CODE}`,
    ...QUALIFICATION_ROWS.map(
      (row) => `${row.rule} (${row.source}, second hand.) ${CHECK_THE_CODE}`,
    ),
  ];
}
