import { ALUMINIUM, ANY_WIRE, type WorkingWindow, windowRows } from './window-row.js';

/** Windows of pulsed spray. No published window of the mean voltage of pulsed transfer was at hand. */
export const PULSED_WINDOWS: readonly WorkingWindow[] = [
  ...windowRows(
    {
      mode: 'pulsed-spray',
      materials: ['carbon-steel', 'stainless-steel'],
      co2Percent: [0, 25],
      source: 'common practice, no source',
      certainty: 'CP',
    },
    [
      [0.6, 0.9, 40, 200, 18, 28],
      [1.0, 1.2, 60, 280, 20, 30],
      [1.4, 1.6, 90, 350, 21, 32],
    ],
  ),
  ...windowRows(
    {
      mode: 'pulsed-spray',
      materials: ALUMINIUM,
      co2Percent: [0, 0],
      source: 'common practice, no source',
      certainty: 'CP',
    },
    [[...ANY_WIRE, 40, 250, 17, 27]],
  ),
];
