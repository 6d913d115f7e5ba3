import { ArcError, didYouMean } from '../core/index.js';
import { SETUP_OPTIONS } from './setup-options.js';

/** Words that say "I do not know". */
const UNKNOWN = /^(unknown|\?|n\/a|not known|none stated)$/iu;

/** Keys brought to one spelling, unknowns set apart. Two different values for one key clash. */
export function rawValues(raw: Readonly<Record<string, string | number>>): {
  values: Map<string, string | number>;
  unknown: string[];
} {
  const values = new Map<string, string | number>();
  const unknown: string[] = [];
  for (const [given, value] of Object.entries(raw)) {
    const key = knownKey(given);
    checkType(given, value);
    const earlier = values.get(key) ?? (unknown.includes(key) ? 'unknown' : undefined);
    if (earlier !== undefined && String(earlier) !== String(value)) clash(key, earlier, value);
    if (typeof value === 'string' && UNKNOWN.test(value.trim())) {
      if (!unknown.includes(key)) unknown.push(key);
    } else values.set(key, value);
  }
  return { values, unknown };
}

function checkType(given: string, value: unknown): void {
  if (typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value))) return;
  throw new ArcError({
    code: 'bad-setup-value',
    what: `The set-up value "${given}" is ${JSON.stringify(value)}.`,
    expected: 'text with a unit, such as "1.2mm", a number of volts or amperes, or "unknown"',
    todo: 'Write the value as text with its unit.',
  });
}

function clash(key: string, earlier: string | number, later: string | number): never {
  throw new ArcError({
    code: 'contradictory-setup',
    what: `The set-up says ${key} twice: "${earlier}" and "${later}".`,
    expected: 'one value for each',
    todo: 'Leave one of them out.',
  });
}

const plain = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]/gu, '');

function knownKey(given: string): string {
  const wanted = plain(given);
  for (const option of SETUP_OPTIONS) {
    if ([option.key, ...option.aliases].some((name) => plain(name) === wanted)) return option.key;
  }
  const names = SETUP_OPTIONS.flatMap((option) => [option.key, ...option.aliases]);
  const bare = names.map(plain);
  const cutShort = names[bare.findIndex((name) => wanted.length >= 4 && name.startsWith(wanted))];
  const hint = didYouMean(wanted, bare);
  const meant = names[bare.findIndex((name) => hint.includes(`"${name}"`))] ?? cutShort;
  throw new ArcError({
    code: 'unknown-setup-key',
    what: `The set-up has no "${given}".`,
    expected: `one of ${SETUP_OPTIONS.map((option) => option.key).join(', ')}`,
    todo: meant === undefined ? 'Check the spelling.' : `Did you mean ${meant}?`,
  });
}
