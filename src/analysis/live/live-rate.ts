import type { Mode } from '../../core/index.js';
import {
  type FeatureSet,
  type FeatureWindow,
  hasClearLine,
  hasClearOnsets,
} from '../../features/index.js';

/** Features that count events in an electrical window, the surest first. */
const RATES = ['shortRateHz', 'pulseRateHz', 'currentPulseRateHz', 'dropStepRateHz'];

/**
 * Events a second (shorts, pulses or drops) in one window; null where none stand clear. The drops of spray are
 * too fast and small for an electrical count, so that in spray only sound shows a rate.
 */
export function liveRateHz(
  window: FeatureWindow,
  set: FeatureSet,
  mode: Mode | null,
): number | null {
  const { sound } = window;
  if (sound) {
    if (hasClearLine(sound)) return sound.lineHz;
    return hasClearOnsets(sound) ? sound.onsetHz : null;
  }
  if (mode === 'spray') return null;
  for (const id of RATES) {
    const at = set.features.findIndex((feature) => feature.id === id);
    const value = at < 0 ? Number.NaN : window.values[at]!;
    if (value > 0) return value;
  }
  return null;
}
