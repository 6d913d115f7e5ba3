/**
 * The time grid of the acoustic analysis. Sound of any sample rate is brought to envelope frames of
 * 0.25 ms, so that everything after the front end is the same for 8 kHz and 96 kHz recordings.
 */
export const FRAME_RATE_HZ = 4000;
/** Cells a hop: 0.256 s. */
export const HOP_FRAMES = 1024;
/** Cells a window: 1.024 s, four hops. */
export const WINDOW_FRAMES = 4096;
/** Cells of the newest half of a window, 0.512 s, and frames from one to the next, 0.128 s: for live answers. */
export const SHORT_WINDOW_FRAMES = WINDOW_FRAMES / 2;
export const SHORT_WINDOW_HOP_FRAMES = HOP_FRAMES / 2;

/** Lower edge of the analysis band: above voices' first formants and shop rumble. */
export const BAND_LOW_HZ = 1500;
/** Top of the lower half-band and bottom of the upper: a gap between them keeps noise from leaking across. */
export const LOW_BAND_TOP_HZ = 2400;
export const HIGH_BAND_BOTTOM_HZ = 3000;
/** Upper edge of the analysis band where the sample rate allows it. */
export const BAND_HIGH_HZ = 12_000;
/** Lowest sample rate whose band still has both halves. */
export const MINIMUM_RATE_HZ = 7600;

/** Upper edge of the analysis band at a sample rate, in Hz. */
export function bandTopHz(rateHz: number): number {
  return Math.min(BAND_HIGH_HZ, 0.45 * rateHz);
}
