import { access, constants, stat } from 'node:fs/promises';
import { delimiter, isAbsolute, join, sep } from 'node:path';
import { ArcError } from '../../core/index.js';

/**
 * Refuses a program that is not there or may not be run: that it cannot be started must not show at the first alarm.
 *
 * @throws ArcError `no-alarm-program`
 */
export async function checkProgram(program: string): Promise<void> {
  const named = isAbsolute(program) || program.includes('/') || program.includes(sep);
  const folders = named ? [''] : (process.env['PATH'] ?? '').split(delimiter);
  const endings =
    process.platform === 'win32' ? ['', ...(process.env['PATHEXT'] ?? '.EXE').split(';')] : [''];
  for (const folder of folders)
    for (const ending of endings)
      if (await isProgram(folder === '' ? program + ending : join(folder, program + ending)))
        return;
  throw new ArcError({
    code: 'no-alarm-program',
    what: `--on-alarm names "${program}", which ${named ? 'is not there or may not be run' : 'is in no folder of PATH'}.`,
    expected: 'a program that this user may run',
    todo: 'Correct the name, or give the whole path; a script needs the right to be run (chmod +x).',
  });
}

async function isProgram(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK);
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}
