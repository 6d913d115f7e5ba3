import { ArcError, didYouMean, MODES } from '../../../core/index.js';

/** What a person can say of a run that counts in the scores. */
export const LABELS = [...MODES, 'mixed', 'no-arc'] as const;
export type Label = (typeof LABELS)[number];

/** A person could not tell. */
export const AMBIGUOUS = 'ambiguous';

/** What the tool can answer. */
export const ANSWERS = [...LABELS, 'unsure', 'failed'] as const;

/**
 * Reads what a person wrote: a label, `ambiguous`, or two modes (`globular/spray`, `globular+spray`:
 * either could be said). Case, blanks and underscores do not matter. Null for an empty cell: not judged.
 *
 * @returns the label in one spelling, two modes in the order of {@link MODES} with `/` between
 * @throws ArcError `unknown-label`
 */
export function parseLabel(text: string, where: string): string | null {
  const parts = text
    .trim()
    .toLowerCase()
    .split(/[/+]/)
    .map((part) => part.trim().replaceAll(/[\s_]+/g, '-'));
  if (parts.length === 1 && parts[0] === '') return null;
  const known: readonly string[] = parts.length === 1 ? [...LABELS, AMBIGUOUS] : MODES;
  for (const part of parts) if (!known.includes(part)) throw unknown(text, part, known, where);
  const both = [...new Set(parts)];
  if (both.length > 2) throw unknown(text, text, known, where);
  return both.sort((a, b) => known.indexOf(a) - known.indexOf(b)).join('/');
}

/** True for labels that stand for one answer, so that it can be right or wrong. */
export function isDecided(label: string): label is Label {
  return (LABELS as readonly string[]).includes(label);
}

/** The two modes of a label such as `globular/spray`; null for any other. */
export function eitherOf(label: string): string[] | null {
  return label.includes('/') ? label.split('/') : null;
}

function unknown(text: string, part: string, known: readonly string[], where: string): ArcError {
  return new ArcError({
    code: 'unknown-label',
    what: `${where}: the label "${text.trim()}" is not known.${didYouMean(part, known)}`,
    expected: `one of ${[...LABELS, AMBIGUOUS].join(', ')}, or two modes such as globular/spray`,
    todo: 'Correct the table, or leave the cell empty where nobody judged.',
  });
}
