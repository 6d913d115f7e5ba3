import { fingerprint } from '../core/index.js';
import type { Settings } from './settings.js';

/** The settings as they stand in a result: all values, and one fingerprint that changes with any of them. */
export function settingsRecord(settings: Settings): {
  fingerprint: string;
  values: Record<string, number>;
} {
  return { fingerprint: fingerprint(settings), values: { ...settings } };
}
