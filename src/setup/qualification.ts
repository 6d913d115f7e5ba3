import type { Mode } from '../core/index.js';
import { type CodeRule, type Made, message, textsOf } from '../messages/index.js';
import type { Shown } from './sourced.js';

/** What a code makes of the transfer mode, as far as it was read. */
export interface QualificationRow extends Shown {
  rule: CodeRule;
}

export const QUALIFICATION_ROWS: readonly QualificationRow[] = [
  {
    rule: 'aws-d1',
    source: 'Practical Welding Today, question and answer (2014)',
    certainty: 'F',
  },
  { rule: 'asme-ix', source: 'API RP 577 §11.3', certainty: 'F2' },
  {
    rule: 'iso-15614',
    source: 'secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3',
    certainty: 'F2',
  },
];

/**
 * What a step between two modes may mean for a qualified procedure. Only the step to or from
 * short-circuit is an essential variable in the codes above; the answer is empty for all others.
 */
export function sayQualification(seen: Mode, wanted: Mode): Made[] {
  const short = (mode: Mode): boolean => mode === 'short-circuit';
  if (seen === wanted || short(seen) === short(wanted)) return [];
  return [
    message('essential-variable', { seen, wanted }),
    ...QUALIFICATION_ROWS.map(({ rule, source }) => message('code-rule-from', { rule, source })),
  ];
}

/** The same as texts. */
export const qualificationNotes = (seen: Mode, wanted: Mode): string[] =>
  textsOf(sayQualification(seen, wanted));
