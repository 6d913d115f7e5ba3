import type { processMaps } from '../../../setup/index.js';

/** Mode whose colour an outcome has in letters and pictures; faults have the one without a mode. */
export const MAP_HUES: Readonly<Record<processMaps.Outcome, string>> = {
  stubbing: 'none',
  dip: 'short-circuit',
  globular: 'globular',
  'spray-with-shorts': 'spray',
  spray: 'spray',
  'long-arc': 'none',
  'burn-back': 'none',
};
