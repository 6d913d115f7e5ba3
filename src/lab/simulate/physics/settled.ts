import type { Random } from '../../../core/index.js';
import type { ArcScenario } from '../scenario.js';

/** Share of dip transfer drawn as a well-set robot run. */
export const SETTLED_SHARE = 0.45;

/**
 * Takes most of the chance out of a run: measured dip transfer can be "very regular" (R. D. Smith,
 * "Waveform analysis for MIG/GMAW dip-transfer", 2011/2017), above all where the source or the wire
 * drive sets the cycle.
 */
export function settle(random: Random, scenario: ArcScenario): void {
  const rest = random.uniform(0.05, 0.35);
  const { bridging, detachment, pool, arc, wire } = scenario;
  bridging.spread *= rest;
  bridging.incipientShare = 0;
  detachment.scatter *= rest;
  detachment.wobble *= rest;
  detachment.leapShare = 0;
  pool.noiseMm *= rest;
  pool.kickMm *= rest;
  pool.impactMm *= rest;
  arc.slowV *= rest;
  wire.feedJitter *= rest;
  scenario.hand = { wanderMm: random.uniform(0, 0.05), wanderHz: 1, weaveMm: 0, weaveHz: 0 };
}
