import { BOOST_DEFAULTS, type BoostOptions } from './boost.js';

export interface FitOptions {
  id: string;
  version: string;
  seed: string;
  window: BoostOptions;
  run: BoostOptions;
  gate: BoostOptions;
  stretch: BoostOptions;
  /** Share of the fitted windows that count as known ground. */
  noveltyKeep: number;
}

export const FIT_DEFAULTS: Omit<FitOptions, 'id' | 'version' | 'seed'> = {
  window: { ...BOOST_DEFAULTS, rounds: 150, rate: 0.08 },
  run: { ...BOOST_DEFAULTS, rounds: 180, rate: 0.05, leastHessian: 3 },
  gate: { ...BOOST_DEFAULTS, rounds: 80 },
  stretch: { ...BOOST_DEFAULTS, rounds: 480, depth: 5, rate: 0.05, leastHessian: 3 },
  noveltyKeep: 0.999,
};
