import type { Result } from '../../analysis/result/index.js';
import type { Mode } from '../../core/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import type { Words } from './words/words.js';

export type StripKind = Mode | 'not-clear' | 'left-out' | 'no-arc';

/** A part of the run in one mode, or without one. */
export interface StripPart {
  startS: number;
  endS: number;
  kind: StripKind;
  /** "D short-circuit", "no arc": a letter never stands without its word. */
  name: string;
}

/** The run from start to end: the picture that terminal and report share. */
export interface StripView {
  /** They tile the recording; neighbours differ in kind. */
  parts: readonly StripPart[];
  durationS: number;
  end: string;
  /** "short-circuit at first, globular from 2 s"; empty where no mode is named anywhere. */
  said: string;
}

/** More changes than these are counted, not told one by one. */
const MOST_TOLD = 4;

/** Null where the length of the recording is not known or 0. */
export function viewStrip(result: Result, words: Words): StripView | null {
  const durationS = result.source.durationS ?? 0;
  if (!(durationS > 0)) return null;
  const parts = partsOf(result, durationS).map(({ startS, endS, kind }) => ({
    startS,
    endS,
    kind,
    name: nameOf(kind, words),
  }));
  return { parts, durationS, end: words.numbers.time(durationS), said: sayParts(parts, words) };
}

type Part = Pick<StripPart, 'startS' | 'endS' | 'kind'>;

function partsOf({ arcStretches, segments }: Result, durationS: number): Part[] {
  const parts: Part[] = [];
  let atS = 0;
  const put = (toS: number, kind: StripKind): void => {
    const endS = Math.min(toS, durationS);
    if (!(endS > atS)) return;
    const last = parts.at(-1);
    if (last?.kind === kind) last.endS = endS;
    else parts.push({ startS: atS, endS, kind });
    atS = endS;
  };
  for (const arc of arcStretches) {
    put(arc.startS, 'no-arc');
    for (const one of segments) {
      if (one.endS <= arc.startS || one.startS >= arc.endS) continue;
      put(one.startS, 'left-out');
      put(one.endS, one.mode ?? 'not-clear');
    }
    put(arc.endS, 'left-out');
  }
  put(durationS, 'no-arc');
  return parts;
}

function nameOf(kind: StripKind, words: Words): string {
  if (kind === 'no-arc') return words.time.noArc;
  if (kind === 'left-out') return words.answer.strip.leftOut;
  return kind === 'not-clear' ? `? ${words.notClear}` : `${MODE_LETTERS[kind]} ${words.mode(kind)}`;
}

function sayParts(parts: readonly Part[], words: Words): string {
  const { strip } = words.answer;
  const judged = parts.filter(({ kind }) => kind !== 'no-arc' && kind !== 'left-out');
  const told = judged.filter(({ kind }, k) => kind !== judged[k - 1]?.kind);
  const name = ({ kind }: Part): string =>
    kind === 'not-clear' ? words.notClear : words.mode(kind as Mode);
  const [first, ...later] = told;
  if (!first || told.every(({ kind }) => kind === 'not-clear')) return '';
  if (later.length === 0) return strip.throughout(name(first));
  if (told.length > MOST_TOLD) return strip.changes(later.length);
  return [
    strip.first(name(first)),
    ...later.map((one) => strip.from(name(one), words.numbers.time(one.startS))),
  ].join(', ');
}
