import { type Range, range, type Sourced } from './sourced.js';
import type { WireMaterial } from './wire-words.js';
import { gramsPerMetre } from './wires.js';

/** Share of the melted wire that ends up in the weld, as taught; the figures differ. */
export const DEPOSITION_EFFICIENCY: readonly (Sourced & { what: string; share: Range })[] = [
  {
    what: 'share of wire that ends up in the weld, taught for wire processes at large',
    share: range(0.8, 0.8),
    source: 'teaching figure',
    certainty: 'CP',
  },
  {
    what: 'solid wire in argon mixes, usually put above',
    share: range(0.9, 0.98),
    source: 'teaching figure',
    certainty: 'CP',
  },
];

/** Wire lost at the end of a spool: 15–25 ft, in metres. */
export const SPOOL_END_LOSS = {
  metres: range(15 * 0.3048, 25 * 0.3048),
  source: 'teaching figure',
  certainty: 'CP',
} as const;

/** Gas-shielded wire deposits a larger share than self-shielded wire or sticks. */
export const DEPOSITION_ORDER: readonly string[] = [
  'gas-shielded wire',
  'self-shielded wire',
  'stick electrode',
];

/** Wire melted in kg/h at a feed in m/min. */
export function meltingRateKgPerH(
  material: WireMaterial,
  diameterMm: number,
  feedMPerMin: number,
): number {
  return (gramsPerMetre(material, diameterMm) * feedMPerMin * 60) / 1000;
}

/** Metal deposited in kg/h, as the range that the taught efficiencies span. */
export function depositionRateKgPerH(
  material: WireMaterial,
  diameterMm: number,
  feedMPerMin: number,
): Range {
  const melted = meltingRateKgPerH(material, diameterMm, feedMPerMin);
  const least = Math.min(...DEPOSITION_EFFICIENCY.map((row) => row.share.min));
  const most = Math.max(...DEPOSITION_EFFICIENCY.map((row) => row.share.max));
  return range(melted * least, melted * most);
}
