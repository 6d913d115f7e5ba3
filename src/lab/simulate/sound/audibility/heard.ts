import type { RunMode } from '../../../../core/index.js';
import type { EventKind } from '../event-kinds.js';
import type { Audibility } from './audibility.js';

/** What can be said of an arc by ear: its mode, or free flight whose drop size nobody can tell. */
export type HeardMode = RunMode | 'free-flight';

/** From so many audible shorts a second on a free flight is told to be coarse by them: own choice. */
const TELLING_SHORTS_PER_S = 1;

/**
 * The truth by ear. Globular and spray differ in their drops; where these are not audible, the truth is
 * `free-flight`. A globular arc that touches the pool now and then is told by that, as spray never does: it keeps
 * its name where the shorts are audible and there is at least one a second. Pulses and bridges name the other
 * modes, and what crosses by them is not questioned here.
 */
export function heardMode(
  mode: RunMode | null,
  audible: Partial<Record<EventKind, Audibility>>,
  shortsPerS: number,
): HeardMode | null {
  if (mode !== 'globular' && mode !== 'spray') return mode;
  if (audible.drop?.isAudible) return mode;
  const touches =
    shortsPerS >= TELLING_SHORTS_PER_S &&
    (audible.reignition?.isAudible || audible.short?.isAudible);
  return mode === 'globular' && touches ? mode : 'free-flight';
}
