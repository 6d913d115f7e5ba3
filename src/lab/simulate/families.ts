import type { BridgingLaw, DetachmentLaw, PoolLaw } from './scenario.js';

/**
 * Families of assumptions about the arc. Each has its own laws for how a drop lets go, how long a
 * bridge lasts and how the pool moves, so one can be held out whole when a model is judged.
 */
export const ELECTRICAL_FAMILIES = ['capillary', 'necking', 'empirical', 'dynamic'] as const;
export type ElectricalFamily = (typeof ELECTRICAL_FAMILIES)[number];

/** Laws and leanings of one family. Ranges are [low, high]. */
export interface FamilyTraits {
  detachment: DetachmentLaw;
  bridging: BridgingLaw;
  pool: PoolLaw;
  /** Bridging time in capillary times (ms for `drawn`). */
  timeFactor: readonly [number, number];
  spread: readonly [number, number];
  dropScatter: readonly [number, number];
  transitionWidth: readonly [number, number];
  poolDamping: readonly [number, number];
  riseS: readonly [number, number];
  noiseScale: number;
}

export const FAMILY_TRAITS: Readonly<Record<ElectricalFamily, FamilyTraits>> = {
  capillary: {
    detachment: 'force-balance',
    bridging: 'capillary-pinch',
    pool: 'resonant',
    timeFactor: [0.6, 2.8],
    spread: [0.05, 0.4],
    dropScatter: [0.03, 0.2],
    transitionWidth: [0.03, 0.15],
    poolDamping: [0.05, 0.35],
    riseS: [2e-5, 1.5e-4],
    noiseScale: 1,
  },
  necking: {
    detachment: 'pinch-switch',
    bridging: 'neck',
    pool: 'forced',
    timeFactor: [0.8, 3.5],
    spread: [0.05, 0.35],
    dropScatter: [0.02, 0.15],
    transitionWidth: [0.02, 0.08],
    poolDamping: [0.01, 0.2],
    riseS: [3e-5, 2e-4],
    noiseScale: 0.7,
  },
  empirical: {
    detachment: 'size-map',
    bridging: 'drawn',
    pool: 'drift',
    timeFactor: [0.7, 5],
    spread: [0.1, 0.6],
    dropScatter: [0.08, 0.3],
    transitionWidth: [0.08, 0.25],
    poolDamping: [0.1, 0.5],
    riseS: [1.5e-5, 1e-4],
    noiseScale: 1.4,
  },
  dynamic: {
    detachment: 'spring-mass',
    bridging: 'wet-then-action',
    pool: 'two-mode',
    timeFactor: [0.5, 2.5],
    spread: [0.1, 0.5],
    dropScatter: [0.03, 0.2],
    transitionWidth: [0.03, 0.2],
    poolDamping: [0.05, 0.3],
    riseS: [2e-5, 2e-4],
    noiseScale: 1,
  },
};
