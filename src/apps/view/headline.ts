import type { Result } from '../../analysis/result/index.js';
import { type Look, wrap } from './layout.js';
import { sayLeaning, sayRates, sayWhere } from './sentences.js';
import { MODE_WORDS, plain, sayConfidence, sayRate, sayTime } from './words.js';

/** What was judged: name, kind, format, rate and length, on one line where it fits. */
export function sourceLine(result: Result, look: Look): string[] {
  const { path, kind, format, sampleRateHz, durationS } = result.source;
  const facts = [
    kind === 'electrical' ? 'voltage/current trace' : kind,
    format,
    sampleRateHz === null ? null : sayRate(sampleRateHz),
    durationS === null ? null : sayTime(durationS),
  ].filter((one) => one !== null);
  const name = plain(path);
  return beside(
    look.paint.bold(name),
    name.length,
    look.paint.dim(facts.join(', ')),
    facts.join(', '),
    look,
  );
}

/** Two painted texts on one line, or below each other where they don't fit. */
function beside(
  left: string,
  leftWidth: number,
  right: string,
  rightPlain: string,
  look: Look,
): string[] {
  if (rightPlain === '') return [left];
  if (leftWidth + 3 + rightPlain.length <= look.width) return [`${left}   ${right}`];
  return [left, `  ${right}`];
}

/** The verdict itself, to be read in five seconds. */
export function headline(result: Result, look: Look): string[] {
  const { paint } = look;
  switch (result.status) {
    case 'ok':
      return [...okLines(result, look), ...where(result, look), ...rates(result)];
    case 'unsure':
      return [
        `  ${paint.warn(paint.bold('UNSURE'))}   no mode is named`,
        ...wrap(plain(result.statusReason), look.width, 2),
        ...wrap(sayLeaning(result), look.width, 2),
        ...(mayBeAnArc(result) ? wrap(KNOWN_ARC, look.width, 2) : []),
        ...where(result, look),
        ...rates(result),
      ];
    case 'no-arc':
      return [
        `  ${paint.warn(paint.bold('NO ARC'))}   nothing here is judged as a weld`,
        ...wrap(plain(result.statusReason), look.width, 2),
      ];
    case 'failed':
      return [
        `  ${paint.bad(paint.bold('FAILED'))}   this input could not be judged`,
        ...wrap(plain(result.error?.message ?? result.statusReason), look.width, 2),
      ];
  }
}

const KNOWN_ARC = 'If somebody surely welded here, --arc-prior 0.95 judges it with that known.';

/** Leans to a mode, but no arc interval was taken as an arc. */
function mayBeAnArc({ source, segments, probabilities }: Result): boolean {
  return source.kind === 'sound' && segments.length === 0 && probabilities !== null;
}

function okLines(result: Result, look: Look): string[] {
  const { paint } = look;
  const sure = result.confidence === null ? '' : sayConfidence(result.confidence);
  if (result.mode === 'mixed' || result.mode === null) {
    const title = '  MIXED TRANSFER';
    return beside(paint.bold(title), title.length, sure, sure, look);
  }
  const { name, letter } = MODE_WORDS[result.mode];
  const title = `${name.toUpperCase()} TRANSFER (${letter})`;
  const painted = `  ${paint.bold(paint.mode(result.mode, title))}`;
  return beside(painted, title.length + 2, sure, sure, look);
}

function where(result: Result, look: Look): string[] {
  return wrap(sayWhere(result), look.width, 2);
}

function rates(result: Result): string[] {
  const said = sayRates(result);
  return said === '' ? [] : [`  ${said}`];
}
