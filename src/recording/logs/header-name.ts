import { type LogUnit, parseUnit } from './units.js';

/** Longest name of a column, characters; of a longer one the beginning is kept. */
const LONGEST_NAME = 120;

/**
 * Splits a header cell into name and unit: `U [mV]`, `Current (A)`, `Strom / A`, `time_ms`, `Volt`.
 * The unit is absent where none is written; the text is never shortened by a word that is no unit.
 */
export function splitHeader(text: string): { name: string; unit?: string } {
  const whole = shortened(text.trim().replace(/^"|"$/g, '').trim());
  const bracket = /^(.*?)\s*[[({<]\s*([^\])}>]*)\s*[\])}>]\s*$/s.exec(whole);
  if (bracket?.[2] !== undefined) {
    const name = bracket[1] ?? '';
    const unit = bracket[2].trim();
    return { name: name === '' ? unit : name, unit };
  }
  for (const separator of [
    /^(.+?)\s*\/\s*(\S+)$/,
    /^(.+)_([^_]+)$/,
    /^(.+),\s*(\S+)$/,
    /^(.+)\s+(\S+)$/,
  ]) {
    const parts = separator.exec(whole);
    if (parts?.[1] === undefined || parts[2] === undefined) continue;
    if (parseUnit(parts[2]) !== undefined) return { name: parts[1].trim(), unit: parts[2] };
  }
  return { name: whole };
}

function shortened(name: string): string {
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
}

/** The unit of a column by its unit text, else by a name that is itself a unit (`Volt`, `A`). */
export function unitOf(name: string, unit: string | undefined): LogUnit | undefined {
  return unit !== undefined ? parseUnit(unit) : parseUnit(name);
}
