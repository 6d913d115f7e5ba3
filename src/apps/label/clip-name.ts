import { createHash } from 'node:crypto';
import { basename, extname } from 'node:path';
import { shortName } from './short-name.js';

/** A clip by its name. */
export const CLIP_NAME = /-[0-9a-f]{8}-\d+\.\d{3}-\d+\.\d{3}s\.wav(\.partial)?$/;

/** Longest first part of a name, bytes: file systems take 255 for the whole. */
const STEM_BYTES = 160;

/** The name holds what makes a clip another one: file, content and times. */
export function clipName(
  path: string,
  sha256: string | null,
  startS: number,
  endS: number,
): string {
  const mark = createHash('sha256').update(`${path}\n${sha256}`).digest('hex').slice(0, 8);
  const stem = basename(path, extname(path)).replaceAll(/[^\p{L}\p{N}._-]+/gu, '_');
  return `${shortName(stem, STEM_BYTES)}-${mark}-${startS.toFixed(3)}-${endS.toFixed(3)}s.wav`;
}
