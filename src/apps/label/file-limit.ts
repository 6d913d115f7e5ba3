import { ArcError } from '../../core/index.js';
import { FILE_ACCESS } from '../../files/file-access.js';

/** Every file may take this, s, and more by its size: a fifth of what the slowest reader needs on a slow machine. */
const LEAST_S = 120;
const BYTES_A_SECOND = 250_000;

/** How long a file may take, s, where the user states nothing: 2 minutes, and one more for each 15 MB. */
export async function usualLimitS(path: string): Promise<number> {
  const stats = await FILE_ACCESS.stat(path).catch(() => null);
  return LEAST_S + Number(stats?.size ?? 0) / BYTES_A_SECOND;
}

/** For an input that was given up. */
export function tookTooLong(path: string, limitS: number): ArcError {
  return new ArcError({
    code: 'took-too-long',
    what: `${path} was given up after ${Math.round(limitS)} s.`,
    expected: 'a recording that is read in that time',
    todo: 'Look at it alone with arc-transfer inspect, or allow more with --time-limit.',
  });
}
