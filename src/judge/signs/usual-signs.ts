import type { UsualSigns } from './usual-range.js';

/**
 * Where the measured signs lie in arcs drawn by the simulator, by mode: 10th, 50th and 90th percentile over the runs of a
 * mode, and the share of runs that show the sign. Of 320 drawn arcs, 2 recordings each, those whose mode is not in doubt by
 * itself; nothing here was measured on a real weld. Made by bin/build/usual-signs.js.
 */
export const USUAL_SIGNS: UsualSigns = {
  crackRateHz: {
    'short-circuit': {
      low: 0.96,
      middle: 40,
      high: 110,
      shown: 1,
    },
    globular: {
      low: 0.5,
      middle: 2.6,
      high: 30,
      shown: 0.99,
    },
    spray: {
      low: 0.5,
      middle: 0.58,
      high: 10,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.7,
      middle: 43,
      high: 130,
      shown: 1,
    },
  },
  crackSpacingCv: {
    'short-circuit': {
      low: 0.21,
      middle: 0.57,
      high: 0.83,
      shown: 1,
    },
    globular: {
      low: 0.55,
      middle: 0.7,
      high: 0.88,
      shown: 0.98,
    },
    spray: {
      low: 0.6,
      middle: 0.69,
      high: 0.9,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.063,
      middle: 0.41,
      high: 0.72,
      shown: 1,
    },
  },
  beatRateHz: {
    'short-circuit': {
      low: 36,
      middle: 100,
      high: 180,
      shown: 0.19,
    },
    globular: {
      low: 30,
      middle: 120,
      high: 210,
      shown: 0.08,
    },
    spray: {
      low: 43,
      middle: 100,
      high: 770,
      shown: 0.02,
    },
    'pulsed-spray': {
      low: 51,
      middle: 100,
      high: 220,
      shown: 0.54,
    },
  },
  beatClearness: {
    'short-circuit': {
      low: 5.2,
      middle: 7.3,
      high: 44,
      shown: 1,
    },
    globular: {
      low: 5.5,
      middle: 6.8,
      high: 15,
      shown: 0.99,
    },
    spray: {
      low: 5.8,
      middle: 6.9,
      high: 9,
      shown: 1,
    },
    'pulsed-spray': {
      low: 7.2,
      middle: 22,
      high: 220,
      shown: 1,
    },
  },
  quietMomentsDb: {
    'short-circuit': {
      low: 6,
      middle: 7.9,
      high: 12,
      shown: 1,
    },
    globular: {
      low: 5.1,
      middle: 6.5,
      high: 10,
      shown: 0.99,
    },
    spray: {
      low: 4.9,
      middle: 6,
      high: 9.7,
      shown: 1,
    },
    'pulsed-spray': {
      low: 6,
      middle: 8.2,
      high: 12,
      shown: 1,
    },
  },
  loudMomentsDb: {
    'short-circuit': {
      low: 4.8,
      middle: 8.9,
      high: 17,
      shown: 1,
    },
    globular: {
      low: 3.8,
      middle: 5.4,
      high: 9.9,
      shown: 0.99,
    },
    spray: {
      low: 3.6,
      middle: 5,
      high: 6.9,
      shown: 1,
    },
    'pulsed-spray': {
      low: 5.4,
      middle: 9.3,
      high: 16,
      shown: 1,
    },
  },
  slowSwingShare: {
    'short-circuit': {
      low: 0.03,
      middle: 0.053,
      high: 0.1,
      shown: 1,
    },
    globular: {
      low: 0.029,
      middle: 0.056,
      high: 0.12,
      shown: 0.99,
    },
    spray: {
      low: 0.027,
      middle: 0.042,
      high: 0.089,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.028,
      middle: 0.042,
      high: 0.087,
      shown: 1,
    },
  },
  fastSwingShare: {
    'short-circuit': {
      low: 0.13,
      middle: 0.22,
      high: 0.41,
      shown: 1,
    },
    globular: {
      low: 0.11,
      middle: 0.14,
      high: 0.24,
      shown: 0.99,
    },
    spray: {
      low: 0.1,
      middle: 0.13,
      high: 0.16,
      shown: 1,
    },
    'pulsed-spray': {
      low: 0.13,
      middle: 0.26,
      high: 0.46,
      shown: 1,
    },
  },
};
