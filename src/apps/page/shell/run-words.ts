import type { Mode } from '../../../core/index.js';
import { parseExpectedMode } from '../../../setup/index.js';
import { type GlanceView, viewGlance, wordsFor } from '../../view/index.js';
import type { RawSetup } from '../messages.js';
import type { Run } from '../storage/database.js';
import type { State } from './state.js';

/** The mode that a set-up wants; null where none is stated, or not one that is known. */
export function wantedOf({ expect }: RawSetup): Mode | null {
  if (expect === undefined || expect === '') return null;
  try {
    return parseExpectedMode(expect);
  } catch {
    return null;
  }
}

/** The answer of a run, as it is read from afar. */
export function glanceOf(run: Run, { words, units }: Pick<State, 'words' | 'units'>): GlanceView {
  return viewGlance(run.result, wantedOf(run.setup), wordsFor(words.view, { units }));
}
