import type { WorkingWindow } from './window-row.js';
import { DIP_WINDOWS } from './windows-dip.js';
import { GLOBULAR_WINDOWS } from './windows-globular.js';
import { PULSED_WINDOWS } from './windows-pulsed.js';
import { SPRAY_WINDOWS } from './windows-spray.js';

export * from './window-row.js';
export { EVENT_WINDOWS } from './windows-events.js';

/** Every window of voltage and current. */
export const WORKING_WINDOWS: readonly WorkingWindow[] = [
  ...DIP_WINDOWS,
  ...GLOBULAR_WINDOWS,
  ...SPRAY_WINDOWS,
  ...PULSED_WINDOWS,
];
