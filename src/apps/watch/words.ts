import { isArcError } from '../../core/index.js';

/** An error in a few words for a line of a running log. */
export function sayShort(error: unknown): string {
  if (isArcError(error)) return `${error.message} [${error.code}]`;
  return error instanceof Error ? error.message : String(error);
}

/** `75` as `1:15`, `3700` as `1:01:40`. */
export function clock(seconds: number): string {
  const whole = Math.floor(seconds);
  const [h, m, s] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (n: number): string => String(n).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}
