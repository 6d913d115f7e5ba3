import { ArcError, didYouMean } from '../../core/index.js';
import { SETUP_OPTIONS } from '../../setup/index.js';

/** What a column of a set-up table holds. */
export type SetupColumn =
  | { holds: 'file' }
  /** `unit` is the one named in the heading, for cells that are bare numbers. */
  | { holds: 'setup'; key: string; unit: string }
  /** The user's own: goes into the table of results as it is. */
  | { holds: 'own'; name: string };

const FILE_NAMES = ['file', 'path', 'recording', 'filename'];

/** Short words of the shop floor beside the names and aliases of the set-up options. */
const SHORT: Readonly<Record<string, string>> = {
  volts: 'setVoltage',
  voltage: 'setVoltage',
  feed: 'wireFeed',
  feedspeed: 'wireFeed',
  amps: 'measuredCurrent',
  current: 'measuredCurrent',
  material: 'wireMaterial',
  wanted: 'expect',
};

const UNITS: Readonly<Record<string, string>> = {
  v: 'V',
  a: 'A',
  m: 'm',
  mm: 'mm',
  in: 'in',
  mmin: 'm/min',
  mpermin: 'm/min',
  mmmin: 'mm/min',
  mmpermin: 'mm/min',
  inmin: 'in/min',
  ipm: 'in/min',
};

const letters = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/g, '');

const KNOWN: Readonly<Record<string, string>> = {
  ...SHORT,
  ...Object.fromEntries(
    SETUP_OPTIONS.flatMap(({ key, flag, aliases }) =>
      [key, flag, ...aliases].map((name) => [letters(name), key]),
    ),
  ),
};

/**
 * Reads a heading: `wire`, `wire_mm`, `wire [mm]`, `Wire feed (m/min)`. One that is neither a set-up key
 * nor near one is the user's own column.
 *
 * @throws ArcError `unknown-setup-column` for one that is probably misspelt.
 */
export function readHeading(heading: string): SetupColumn {
  if (FILE_NAMES.includes(letters(heading))) return { holds: 'file' };
  for (const [name, unit] of readings(heading)) {
    const key = KNOWN[letters(name)];
    if (key !== undefined) return { holds: 'setup', key, unit };
  }
  const names = [...Object.keys(KNOWN), ...FILE_NAMES];
  const hint = didYouMean(letters(heading), names);
  if (hint === '' || letters(heading).length < 4) return { holds: 'own', name: ownName(heading) };
  throw new ArcError({
    code: 'unknown-setup-column',
    what: `The set-up table has a column "${heading}".${hint}`,
    expected: `file, ${SETUP_OPTIONS.map((option) => option.key).join(', ')}, or columns of your own`,
    todo: 'Correct the heading, or rename a column of your own so that it is not near one of these.',
  });
}

/** The heading whole, and parted into name and unit where it ends in one. */
function readings(heading: string): [name: string, unit: string][] {
  const found: [string, string][] = [[heading, '']];
  const bracket = /^(.*?)\s*[[(]([^\])]*)[\])]\s*$/.exec(heading);
  if (bracket) return [[bracket[1]!, UNITS[letters(bracket[2]!)] ?? bracket[2]!.trim()]];
  const parts = heading.trim().split(/[\s_]+/);
  for (let at = 1; at < parts.length; at++) {
    const unit = UNITS[letters(parts.slice(at).join(''))];
    if (unit !== undefined) found.push([parts.slice(0, at).join(''), unit]);
  }
  return found;
}

function ownName(heading: string): string {
  return heading
    .trim()
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '_');
}
