import type { Mode } from '../../../core/index.js';
import type { DropTruth, FreeFlight, Release } from '../run.js';
import type { ArcScenario } from '../scenario.js';

/**
 * Mean drop diameter, in wire diameters, at which spray and globular part. Published definitions put the boundary at
 * the wire diameter (MIG handbook ch. 1 p. 6, and the sense of AWS A3.0), while projected spray has drops about as
 * thick as the wire (Komen et al. 2018), so sizes must scatter about it: up to {@link SPRAY_RATIO} is spray without
 * doubt, from {@link GLOBULAR_RATIO} on globular, and the middle parts what lies between. Both are own choice.
 */
const SPRAY_RATIO = 1;
const GLOBULAR_RATIO = 1.15;
const MIDDLE_RATIO = (SPRAY_RATIO + GLOBULAR_RATIO) / 2;

/**
 * Wires under 0.035 in never gave drops below their diameter in mixes under 30 % CO2 (Soderstrom & Mendez, Welding J.
 * May 2008, 124-s). There the regime decides: in line from the drawn wire end, and at least this many a second
 * (100/s: the projected spray of Komen et al. 2018), at up to 1.5 wire diameters (own choice).
 */
const THIN_MM = 0.889;
const THIN_CO2_PERCENT = 30;
const AXIAL_RATE_HZ = 100;
const THIN_SPRAY_RATIO = 1.5;

/** Largest drop, in wire diameters, that still counts as a pulse's own; without doubt up to 1.1. Own choice. */
const PULSE_DROP_RATIO = 1.2;
const CLEAR_PULSE_DROP_RATIO = 1.1;

/** A regime is a state of the arc, not of a single drop: drops are named together by tenths of a second. Own choice. */
const REGIME_S = 0.1;

/** Projected spray has drops about as thick as the wire, streaming spray smaller ones; where between is own choice. */
const STREAMING_RATIO = 0.75;

/** What crossed freely in an arc interval. */
export interface FreeMetal {
  /** mm³ by the mode that its regime is called. */
  volumes: Partial<Record<Mode, number>>;
  /** Volume-weighted mean diameter in wire diameters; NaN without drops. */
  meanDropRatio: number;
  /** Shares of the volume by how the drops let go. */
  releases: Record<Release, number>;
}

/** Free drops, in order of time, named by their regimes. */
export function freeMetal(scenario: ArcScenario, drops: readonly DropTruth[]): FreeMetal {
  const volumes: Partial<Record<Mode, number>> = {};
  for (const together of inTenths(drops)) {
    const mode = freeMode(scenario, together);
    const mm3 = together.reduce((sum, drop) => sum + ballMm3(drop), 0);
    volumes[mode] = (volumes[mode] ?? 0) + mm3;
  }
  return {
    volumes,
    meanDropRatio: meanRatio(scenario, drops),
    releases: releaseShares(drops),
  };
}

/** How the free drops of a source that does not pulse crossed; null without drops. */
export function flightForm({ volumes, meanDropRatio, releases }: FreeMetal): FreeFlight | null {
  if (Number.isNaN(meanDropRatio)) return null;
  if ((volumes.spray ?? 0) > (volumes.globular ?? 0)) {
    return meanDropRatio > STREAMING_RATIO ? 'projected' : 'streaming';
  }
  return releases.repelled >= 0.5 ? 'repelled' : 'drop';
}

/**
 * Whether the mean free drop is clear of the boundary that names the mode. Of thin wires the regime is the boundary,
 * held in 85 % of the free metal. A pulse has 0.6 to 2.5 drops; `dropsPerPulse` is NaN where nothing pulses.
 */
export function clearOfBoundary(
  scenario: ArcScenario,
  mode: Mode,
  { meanDropRatio: ratio, releases }: FreeMetal,
  dropsPerPulse: number,
): boolean {
  const thin = isThin(scenario);
  if (mode === 'pulsed-spray') {
    const clear = thin ? THIN_SPRAY_RATIO : CLEAR_PULSE_DROP_RATIO;
    return ratio <= clear && dropsPerPulse >= 0.6 && dropsPerPulse <= 2.5;
  }
  if (Number.isFinite(dropsPerPulse)) return ratio >= 1.15 * PULSE_DROP_RATIO;
  if (mode === 'globular') {
    return thin ? releases.column <= 0.15 && ratio >= 1.15 * SPRAY_RATIO : ratio >= GLOBULAR_RATIO;
  }
  return thin ? releases.column >= 0.85 && ratio <= THIN_SPRAY_RATIO : ratio <= SPRAY_RATIO;
}

function ballMm3({ diameterMm }: DropTruth): number {
  return (Math.PI / 6) * diameterMm ** 3;
}

/** Volume-weighted mean diameter in wire diameters; NaN of none. */
function meanRatio({ wire }: ArcScenario, drops: readonly DropTruth[]): number {
  let cubes = 0;
  let fourths = 0;
  for (const { diameterMm } of drops) {
    cubes += diameterMm ** 3;
    fourths += diameterMm ** 4;
  }
  return cubes > 0 ? fourths / cubes / wire.diameterMm : Number.NaN;
}

function releaseShares(drops: readonly DropTruth[]): Record<Release, number> {
  const volumes: Record<Release, number> = { hanging: 0, repelled: 0, column: 0 };
  for (const drop of drops) volumes[drop.release] += ballMm3(drop);
  const total = volumes.hanging + volumes.repelled + volumes.column;
  if (total > 0)
    for (const key of ['hanging', 'repelled', 'column'] as const) volumes[key] /= total;
  return volumes;
}

/** Drops in order of time, those of one tenth of a second together. */
function inTenths(drops: readonly DropTruth[]): DropTruth[][] {
  const groups: DropTruth[][] = [];
  let tenth = Number.NaN;
  for (const drop of drops) {
    const at = Math.floor(drop.timeS / REGIME_S);
    if (at !== tenth) groups.push([]);
    groups.at(-1)!.push(drop);
    tenth = at;
  }
  return groups;
}

/** Name of what free drops within a tenth of a second do. */
function freeMode(scenario: ArcScenario, together: readonly DropTruth[]): Mode {
  const ratio = meanRatio(scenario, together);
  const thin = isThin(scenario);
  if (scenario.source.kind === 'pulsed') {
    return ratio <= (thin ? THIN_SPRAY_RATIO : PULSE_DROP_RATIO) ? 'pulsed-spray' : 'globular';
  }
  const releases = releaseShares(together);
  if (releases.repelled >= 0.5) return 'globular';
  if (ratio <= (thin ? SPRAY_RATIO : MIDDLE_RATIO)) return 'spray';
  const axial = releases.column >= 0.5 && ratio <= THIN_SPRAY_RATIO;
  return thin && axial && rateHz(together) >= AXIAL_RATE_HZ ? 'spray' : 'globular';
}

function isThin({ wire, gas }: ArcScenario): boolean {
  return wire.diameterMm < THIN_MM && gas.co2Percent < THIN_CO2_PERCENT;
}

/** Drops a second from the times between them; 0 for a single one. */
function rateHz(drops: readonly DropTruth[]): number {
  const spanS = drops.at(-1)!.timeS - drops[0]!.timeS;
  return drops.length > 1 ? (drops.length - 1) / spanS : 0;
}
