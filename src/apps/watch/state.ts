import type { Mode } from '../../core/index.js';
import type { StripCell, WatchState } from './events.js';
import type { LiveSource } from './sources/types.js';

/** What is so before the first sample. `strip` and the losses of the source stay the same objects. */
export function newState(
  source: LiveSource,
  expected: Mode | null,
  strip: StripCell[],
): WatchState {
  return {
    name: source.name,
    timeS: 0,
    arcOn: false,
    signal: 'waiting',
    weld: 0,
    modes: null,
    eventRateHz: null,
    expected,
    alarm: false,
    alarms: 0,
    losses: source.losses,
    strip,
  };
}
