import { ArcError } from '../../core/index.js';

/** Below it the arc cannot be told from an idle source by its unrest; own choice, tried on drawn arcs. */
const LOWEST_RATE_HZ = 50;
/** From this rate on samples are taken as they are; below it each is held, up to this rate. */
const AS_IT_IS_HZ = 400;

/** Options of {@link createElectricalExtractor}. Channels are pushed in the order voltage, current. */
export interface ElectricalExtractorOptions {
  sampleRateHz: number;
  hasVoltage: boolean;
  hasCurrent: boolean;
  /** Length of a window in seconds, rounded to whole slots of about 50 ms; 0.5 by default. */
  windowS?: number;
  /** From window to window in seconds; 0.25 by default. */
  hopS?: number;
  /** Figures for each arc interval apart (see `takeSummary`), for a stream without an end; false by default. */
  perArcInterval?: boolean;
}

/** Refuses options that no feature extractor can be made of. */
export function checkOptions({
  sampleRateHz,
  hasVoltage,
  hasCurrent,
  windowS = 0.5,
  hopS = 0.25,
}: ElectricalExtractorOptions) {
  if (!(sampleRateHz >= LOWEST_RATE_HZ && Number.isFinite(sampleRateHz)))
    throw new ArcError({
      code: 'bad-sample-rate',
      what: `The sampling rate is ${sampleRateHz} Hz.`,
      expected: `at least ${LOWEST_RATE_HZ} Hz for means, and 5000 Hz or more for short circuits`,
      todo: 'Record at 5 to 20 kHz, or state the rate that the recording has.',
    });
  if (!hasVoltage && !hasCurrent)
    throw new ArcError({
      code: 'no-channel',
      what: 'Neither voltage nor current was given.',
      expected: 'a voltage channel, a current channel, or both.',
      todo: 'Say which channel is which.',
    });
  if (!(hopS >= 0.02 && windowS >= hopS && windowS <= 10))
    throw new ArcError({
      code: 'bad-window',
      what: `The window is ${windowS} s with a hop of ${hopS} s.`,
      expected: 'a hop of at least 0.02 s and a window from one hop to 10 s.',
      todo: 'Leave both at 0.5 and 0.25 s unless you know why not.',
    });
}

/** How many times each sample is held: 1 from 400 Hz on. */
export function heldTimes(sampleRateHz: number): number {
  return Math.max(1, Math.ceil(AS_IT_IS_HZ / sampleRateHz));
}
