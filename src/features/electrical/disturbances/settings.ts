/**
 * Limits of the disturbances. A short over 20 ms is called stubbing by common practice, no source; so are the
 * volts below which a wire touches (8 to 12 V are in use). The others are our own choice.
 */
export const DISTURBANCE_LIMITS = {
  /** Shorts longer than this are stubs, s. */
  longShortS: 0.02,
  /** A wire that touches has less than this, V … */
  touchV: 9,
  /** … and, where no current is measured, more than this: a source that is off has none. */
  sourceOnV: 1,
  /** Current below which nothing burns, A. */
  deadA: 10,
  /** Longer than a controlled source cuts its current at a short, s. */
  arcOutS: 0.01,
  /** Without a current the arc is out where the voltage stands above this: open circuit, V. */
  openCircuitV: 48,
  /** After a longer pause a new weld began, s. */
  resumedWithinS: 2,
  /** Long arc: volts above the run's own median of the arc phase … */
  longArcV: 3,
  /** … for at least this long, s. */
  longArcS: 0.1,
  /** A dip: the current over 0.2 s below this share of the run's median. */
  dipShare: 0.8,
  /** Current is averaged over this time for dips and slow swings, s. */
  blockS: 0.2,
  /** Burn-back: volts above the run's median in the last moment before the arc goes out. */
  burnBackV: 4,
} as const;
