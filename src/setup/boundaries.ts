import type { BandRow } from './bands.js';
import { DIP_BANDS } from './bands-dip.js';
import { GLOBULAR_BANDS } from './bands-globular.js';
import { SPRAY_BANDS } from './bands-spray.js';
import type { SprayWord } from './co2-limit.js';
import type { Gas } from './gas.js';
import { type ProcessMap, processMap } from './process-map/boundary-lines.js';
import type { BoundaryName } from './process-map/boundary-row.js';
import { usually } from './process-map/spread.js';
import type { Setup } from './setup-schema.js';
import { middle, overlap, type Range, range } from './sourced.js';
import { type Transition, transitionCurrent } from './transition.js';
import type { WireMaterial } from './wire-words.js';

/** Where the modes of a wire and gas end, each as the zone in which the sources disagree. */
export interface Boundaries {
  /** Below `min` every source says short-circuit, above `max` none does, V. */
  dipTopV: Range;
  /** Below `min` no source says spray, above `max` all do, V. */
  sprayFloorV: Range;
  /** Largest current of a published short-circuit window, A; null where none fits. */
  dipTopA: Range | null;
  /** Null where the gas gives no spray, or wire or gas is not known. */
  transition: Transition | null;
  spray: SprayWord;
  /** What the wire and gas give over volts and amperes. */
  map: ProcessMap;
  /** Rows the zones rest on. */
  rows: readonly BandRow[];
}

/** Share by which a wire may differ from a row's and still be meant by it (1.2 mm for 1.14 mm); own choice. */
const SAME_WIRE = 0.06;

/** Published rows for a wire and gas; a part not known keeps every row that could be meant. */
export function bandsFor(
  { wireMaterial, wireDiameterMm, gas }: Pick<Setup, 'wireMaterial' | 'wireDiameterMm' | 'gas'>,
  rows: readonly BandRow[] = [...DIP_BANDS, ...GLOBULAR_BANDS, ...SPRAY_BANDS],
): BandRow[] {
  return rows
    .filter(
      (row) =>
        (wireMaterial ?? 'carbon-steel') === row.material ||
        (row.material === 'any' && wireMaterial !== 'aluminium'),
    )
    .filter((row) => wireDiameterMm === null || meansWire(row, wireDiameterMm))
    .filter((row) => gas === null || overlap(row.co2, gas.co2));
}

/** A gas without a source for spray is not expected to carry it. */
function sprayWord({ spray }: ProcessMap): SprayWord {
  if (spray.word === 'not-stated') return 'unknown';
  return spray.word === 'no-source' ? 'no' : spray.word;
}

function meansWire({ diameterMm }: BandRow, mm: number): boolean {
  if (diameterMm === null) return true;
  return mm >= diameterMm.min * (1 - SAME_WIRE) && mm <= diameterMm.max * (1 + SAME_WIRE);
}

/**
 * Boundaries of the modes for what is known of wire and gas. Steel is taken where no wire is named. With a
 * current the volts are those of the map at that current; without one those of the published windows.
 */
export function modeBoundaries(
  setup: Pick<Setup, 'wireMaterial' | 'wireDiameterMm' | 'gas'>,
  currentA: Range | null = null,
): Boundaries {
  const material = setup.wireMaterial ?? 'carbon-steel';
  const rows = bandsFor(setup);
  const { gas, wireDiameterMm } = setup;
  const known = gas !== null && wireDiameterMm !== null;
  const map = processMap({ material, diameterMm: wireDiameterMm, gas });
  const zone = (name: BoundaryName): Range | null =>
    currentA === null ? null : usually(map.limitV(name, middle(currentA)));
  return {
    map,
    dipTopV: zone('dip-top') ?? dipTop(material, gas),
    sprayFloorV: zone('spray-floor') ?? sprayFloor(material, wireDiameterMm),
    dipTopA: dipTopCurrent(rows),
    transition: known ? transitionCurrent(material, wireDiameterMm, gas) : null,
    spray: sprayWord(map),
    rows,
  };
}

/**
 * In argon mixes windows of short-circuit end at 21–22 V while globular ones begin at 20–22 V; in
 * pure CO2 they end at 22 V (published) or 24 V (taught), and globular begins at 26 V (taught).
 * For aluminium no row is held: 18–20 V is common practice, no source.
 */
function dipTop(material: WireMaterial, gas: Gas | null): Range {
  if (material === 'aluminium') return range(18, 20);
  if (gas === null) return range(20, 26);
  return gas.co2.min >= 50 ? range(22, 26) : range(20, 22);
}

/** Steel: 24 V in the data sheets, 26 V in a chart and a note. Aluminium goes with the wire, ±1 V of own choice. */
function sprayFloor(material: WireMaterial, diameterMm: number | null): Range {
  if (material !== 'aluminium') return range(24, 26);
  if (diameterMm === null) return range(19, 24);
  const floor = diameterMm < 1 ? 19 : diameterMm < 1.4 ? 22 : 24;
  return range(floor - 1, floor + 1);
}

function dipTopCurrent(rows: readonly BandRow[]): Range | null {
  const tops = rows
    .filter((row) => row.mode === 'short-circuit' && row.whole && row.currentA !== null)
    .map((row) => row.currentA!.max);
  return tops.length === 0 ? null : range(Math.min(...tops), Math.max(...tops));
}
