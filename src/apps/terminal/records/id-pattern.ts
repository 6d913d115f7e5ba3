import { basename, extname } from 'node:path';
import { ArcError } from '../../../core/index.js';

/** What a name says: identifiers, and the wall-clock time where it holds one. */
export interface NameIds {
  ids: Record<string, string>;
  /** `2026-12-01T07:04:10`, in the clock of whoever named the file; null without a date. */
  time: string | null;
}

/** Reads a name; null where it does not fit. */
export type ReadName = (path: string) => NameIds | null;

const PARTS: Readonly<Record<string, string>> = {
  date: String.raw`(\d{4}-?\d{2}-?\d{2})`,
  time: String.raw`(\d{2}[-.:h]?\d{2}(?:[-.:m]?\d{2})?)`,
};

/**
 * Reads `{part}_{seam}_{robot}_{date}T{time}`: names in braces are identifiers, `{date}` and `{time}` the
 * wall-clock time, `{}` anything, and everything else stands for itself. The pattern holds for the whole name
 * without its ending.
 *
 * @throws ArcError `bad-id-pattern`
 */
export function idPattern(pattern: string): ReadName {
  const names: string[] = [];
  const parts = pattern.split(/(\{[^{}]*\})/u).map((part) => {
    const name = /^\{(.*)\}$/u.exec(part)?.[1]?.trim();
    if (name === undefined) return part.replaceAll(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);
    if (name === '') return '.*?';
    if (!/^[a-z][a-z0-9_]*$/u.test(name) || names.includes(name)) throw bad(pattern, name);
    names.push(name);
    return PARTS[name] ?? '(.+?)';
  });
  if (names.length === 0) throw bad(pattern, '');
  const whole = new RegExp(`^${parts.join('')}$`, 'u');
  return (path) => {
    const found = whole.exec(basename(path, extname(path)));
    if (!found) return null;
    const read = Object.fromEntries(names.map((name, k) => [name, found[k + 1]!]));
    const { date, time, ...ids } = read;
    return { ids, time: date === undefined ? null : clock(date, time) };
  };
}

function clock(date: string, time: string | undefined): string {
  const [day, hour] = [date, time ?? ''].map((one) => one.replaceAll(/\D/gu, ''));
  const on = `${day!.slice(0, 4)}-${day!.slice(4, 6)}-${day!.slice(6, 8)}`;
  const at = (hour!.match(/\d{2}/gu) ?? []).join(':');
  return at === '' ? on : `${on}T${at}`;
}

function bad(pattern: string, name: string): ArcError {
  return new ArcError({
    code: 'bad-id-pattern',
    what: `--id-pattern is "${pattern}"${name === '' ? ', which names nothing' : `, and "{${name}}" is twice in it or no plain name`}.`,
    expected: 'names of small letters in braces, each once, such as "{part}_{seam}_{date}-{time}"',
    todo: 'Quote the pattern; {date} and {time} read the wall-clock time, {} passes anything over.',
  });
}
