import type { Note } from '../../core/index.js';
import type { ReadOptions } from '../types.js';
import type { Inspection } from './inspection.js';

/** What the suggestion rests on. */
export type Findings = Pick<Inspection, 'name' | 'notes' | 'problem' | 'series'>;

/**
 * The command line to go on with: what the user stated already, what the file needs beyond that, and
 * the scale that would undo a suspected mistake. What only the user can know stands in angle brackets.
 */
export function suggestCommand(found: Findings, options: ReadOptions): string {
  const map = new Map(
    Object.entries(options.channelMap ?? {}).map(([key, value]) => [key, String(value)]),
  );
  const scale = new Map(
    Object.entries(options.scale ?? {}).map(([key, value]) => [key, String(value)]),
  );
  const flags: string[] = [];
  let rate = options.sampleRateHz === undefined ? undefined : String(options.sampleRateHz);
  const code = found.problem?.code;
  if (code === 'unknown-columns' || code === 'bad-channel') map.set('voltage', '<column>');
  if (code === 'no-time' || code === 'no-sample-rate') rate ??= '<Hz>';
  if (code === 'no-time-steps' || code === 'rate-contradiction' || code === 'length-mismatch') {
    map.set('time', 'none');
    rate ??= '<Hz>';
  }
  if (code === 'unknown-format') {
    flags.push('--format <layout>');
    rate ??= '<Hz>';
  }
  for (const one of found.notes) suggestScale(one, scale);
  if (found.notes.some((note) => note.code === 'swapped-channels')) swapColumns(found, map);
  if (map.size > 0) flags.push(`--map ${quoted(list(map))}`);
  if (scale.size > 0) flags.push(`--scale ${quoted(list(scale))}`);
  if (rate !== undefined) flags.push(`--sample-rate ${rate}`);
  return ['arc-transfer classify', quoted(found.name), ...flags].join(' ');
}

function suggestScale({ code, params }: Note, scale: Map<string, string>): void {
  const [quantity, doubt] = /^(voltage|current)-too-(high|low)$/.exec(code)?.slice(1) ?? [];
  if (quantity === undefined || scale.has(quantity)) return;
  const looksLike = params?.['looksLike'];
  const milli = code === 'current-too-high' || looksLike === 'millivolts';
  if (doubt === 'high') scale.set(quantity, milli ? '0.001' : '<factor>');
  else scale.set(quantity, looksLike === 'kilovolts' ? '1000' : '<factor>');
}

function swapColumns({ series }: Findings, map: Map<string, string>): void {
  const voltage = series.find(({ readAs }) => readAs === 'voltage');
  const current = series.find(({ readAs }) => readAs === 'current');
  if (voltage === undefined || current === undefined) return;
  map.set('voltage', String(current.number));
  map.set('current', String(voltage.number));
}

function list(pairs: Map<string, string>): string {
  return [...pairs].map(([key, value]) => `${key}=${value}`).join(',');
}

/** Quotes a word for a shell where it needs that. */
function quoted(word: string): string {
  return /^[\w@%+=:,./-]+$/.test(word) ? word : `"${word.replace(/(["\\$`])/g, '\\$1')}"`;
}
