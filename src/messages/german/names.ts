import type { Mode, RunMode, Status } from '../../core/index.js';
import type { VoltsPlace } from '../terms.js';
import type { Writer } from '../writer.js';
import { AT_FEEDER } from './glossary.js';

/** What a result was answered with. */
export const STATUS: Readonly<Record<Status, string>> = {
  ok: 'beurteilt',
  unsure: 'unsicher',
  'no-arc': 'kein Lichtbogen',
  failed: 'nicht auswertbar',
};

/** Where volts stay, as it stands behind a voltage. */
export const PLACES: Readonly<Record<VoltsPlace, string>> = {
  set: 'eingestellt',
  source: 'an der Stromquelle',
  feeder: AT_FEEDER,
  arc: 'am Lichtbogen',
  trace: 'in der Messreihe',
};

/** The mode of a run, which may be mixed. */
export const runMode = (mode: RunMode, write: Writer): string =>
  mode === 'mixed' ? 'gemischt' : write.mode(mode);

/** Modes as a list. */
export const modes = (list: readonly Mode[], write: Writer): string =>
  write.and(list.map((mode) => write.mode(mode)));
