import { basename } from 'node:path';
import { ArcError } from '../../../core/index.js';
import { readSetupTable } from '../../label/setup-table.js';
import { byFile, keysOf } from '../../terminal/table-files.js';

/** Whose run a file is, and of which day. */
export interface Person {
  name: string;
  day: string;
}

/** Tells whose run a file is; undefined for a file that the pattern or table does not know. */
export type PersonOf = (path: string) => Person | undefined;

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * From a pattern of file names such as `{name}_{day}_*.csv`, or from a table with the columns file, name and day.
 * Days are written YYYY-MM-DD.
 * @throws ArcError `bad-progress` for a pattern without both parts and for a table without them
 */
export async function readPeople(given: string): Promise<PersonOf> {
  if (given.includes('{')) return fromPattern(given);
  const { rows } = await readSetupTable(given);
  const people = new Map<string, Person>();
  for (const { file, line, own } of rows) {
    const [name, day] = [own['name']?.trim() ?? '', own['day']?.trim() ?? ''];
    if (name === '' || !DAY.test(day))
      throw bad(`${given}, line ${line}: name "${name}", day "${day}"`);
    for (const key of keysOf(given, file)) {
      if (people.has(key)) throw bad(`${given}, line ${line}: ${file} stands in it twice`);
      people.set(key, { name, day });
    }
  }
  return (path) => byFile(people, path);
}

function fromPattern(pattern: string): PersonOf {
  if (!pattern.includes('{name}') || !pattern.includes('{day}')) throw bad(`"${pattern}"`);
  const source = pattern
    .split(/(\{name\}|\{day\}|\*)/)
    .map((part) => {
      if (part === '{name}') return '(?<name>.+?)';
      if (part === '{day}') return '(?<day>\\d{4}-\\d{2}-\\d{2})';
      return part === '*' ? '.*' : part.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
    })
    .join('');
  const expression = new RegExp(`^${source}$`, 'u');
  return (path) => {
    const groups = expression.exec(basename(path))?.groups;
    return groups ? { name: groups['name']!, day: groups['day']! } : undefined;
  };
}

function bad(what: string): ArcError {
  return new ArcError({
    code: 'bad-progress',
    what: `--progress cannot tell name and day from ${what}.`,
    expected:
      'a pattern such as "{name}_{day}_*.csv", or a CSV table with file, name and day (YYYY-MM-DD)',
    todo: 'Correct the pattern or the table.',
  });
}
