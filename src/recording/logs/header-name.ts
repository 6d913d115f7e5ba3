import { type LogUnit, parseUnit } from './units.js';

/**
 * Splits a header cell into name and unit: `U [mV]`, `Current (A)`, `Strom / A`, `time_ms`, `Volt`.
 * The unit is absent where none is written; the text is never shortened by a word that is no unit.
 */
export function splitHeader(text: string): { name: string; unit?: string } {
  const whole = text.trim().replace(/^"|"$/g, '').trim();
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

/** The unit of a column by its unit text, else by a name that is itself a unit (`Volt`, `A`). */
export function unitOf(name: string, unit: string | undefined): LogUnit | undefined {
  return unit !== undefined ? parseUnit(unit) : parseUnit(name);
}
