import type { UsualSigns } from './usual-range.js';

/**
 * Where the measured signs lie in arcs drawn by the simulator, by mode: 10th, 50th and 90th percentile over the runs of a
 * mode, and the share of runs that show the sign. Of 256 drawn arcs, 2 recordings each, those whose mode is not in doubt by
 * itself; nothing here was measured on a real weld. Made by bin/build/usual-signs.js.
 */
export const USUAL_SIGNS: UsualSigns = {
  crackRateHz: {
    'short-circuit': {
      low: 0.962,
      middle: 39.8,
      high: 109,
      shown: 1,
    },
    globular: {
      low: 0.5,
      middle: 2.88,
      high: 30.8,
      shown: 0.98,
    },
    spray: {
      low: 0.5,
      middle: 0.572,
      high: 9.74,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.588,
      middle: 44.5,
      high: 128,
      shown: 1,
    },
  },
  crackSpacingCv: {
    'short-circuit': {
      low: 0.219,
      middle: 0.591,
      high: 0.841,
      shown: 1,
    },
    globular: {
      low: 0.55,
      middle: 0.699,
      high: 0.943,
      shown: 0.98,
    },
    spray: {
      low: 0.6,
      middle: 0.693,
      high: 0.892,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.0623,
      middle: 0.42,
      high: 0.733,
      shown: 1,
    },
  },
  beatRateHz: {
    'short-circuit': {
      low: 35.5,
      middle: 101,
      high: 199,
      shown: 0.18,
    },
    globular: {
      low: 24.9,
      middle: 117,
      high: 217,
      shown: 0.09,
    },
    spray: {
      low: 42.6,
      middle: 99.6,
      high: 768,
      shown: 0.03,
    },
    'pulsed-spray': {
      low: 45.2,
      middle: 105,
      high: 173,
      shown: 0.54,
    },
  },
  beatClearness: {
    'short-circuit': {
      low: 5.2,
      middle: 7.22,
      high: 32.6,
      shown: 1,
    },
    globular: {
      low: 5.54,
      middle: 6.83,
      high: 17.9,
      shown: 0.98,
    },
    spray: {
      low: 5.73,
      middle: 7.01,
      high: 8.84,
      shown: 1,
    },
    'pulsed-spray': {
      low: 7.54,
      middle: 28.7,
      high: 219,
      shown: 1,
    },
  },
  quietMomentsDb: {
    'short-circuit': {
      low: 6,
      middle: 7.85,
      high: 11.7,
      shown: 1,
    },
    globular: {
      low: 5.13,
      middle: 6.55,
      high: 11.4,
      shown: 0.98,
    },
    spray: {
      low: 4.89,
      middle: 6.04,
      high: 9.31,
      shown: 1,
    },
    'pulsed-spray': {
      low: 5.93,
      middle: 8.07,
      high: 11.9,
      shown: 1,
    },
  },
  loudMomentsDb: {
    'short-circuit': {
      low: 4.7,
      middle: 8.89,
      high: 16.4,
      shown: 1,
    },
    globular: {
      low: 3.75,
      middle: 5.4,
      high: 10.2,
      shown: 0.98,
    },
    spray: {
      low: 3.61,
      middle: 4.93,
      high: 6.85,
      shown: 1,
    },
    'pulsed-spray': {
      low: 5.21,
      middle: 8.87,
      high: 16.5,
      shown: 1,
    },
  },
  slowSwingShare: {
    'short-circuit': {
      low: 0.0303,
      middle: 0.0525,
      high: 0.109,
      shown: 1,
    },
    globular: {
      low: 0.0294,
      middle: 0.0563,
      high: 0.129,
      shown: 0.98,
    },
    spray: {
      low: 0.027,
      middle: 0.0414,
      high: 0.0871,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.0265,
      middle: 0.0407,
      high: 0.0869,
      shown: 1,
    },
  },
  fastSwingShare: {
    'short-circuit': {
      low: 0.133,
      middle: 0.224,
      high: 0.402,
      shown: 1,
    },
    globular: {
      low: 0.106,
      middle: 0.141,
      high: 0.239,
      shown: 0.98,
    },
    spray: {
      low: 0.102,
      middle: 0.124,
      high: 0.161,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.129,
      middle: 0.258,
      high: 0.452,
      shown: 1,
    },
  },
};
