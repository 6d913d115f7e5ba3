import type { Setup } from '../setup-schema.js';
import type { Measured } from '../working-point.js';
import { currentOfFeed, type FedWire } from './feed-current.js';
import type { MapPoint } from './likelihood.js';
import {
  type Circuit,
  type Place,
  placeOfSetting,
  USUAL_DROOP,
  voltsAtPlace,
  voltsOfUnknownPlace,
} from './loss-chain.js';
import { type Likely, likely } from './spread.js';
import type { MapMaterial } from './wires-of-map.js';

/** What the volts of a point were taken from; `unknown` is a trace whose place was not stated. */
export type VoltsFrom = Place | 'unknown';

/** A point with where each part comes from. */
export interface KnownMapPoint extends MapPoint {
  volts: { from: VoltsFrom; given: number; measured: boolean };
  amps: { from: 'measured' | 'feed'; given: number };
}

/** Two honest meters differ by this much (common practice, no source). */
const METER_SD_V = 0.2;
const METER_SHARE = 0.015;
/** A dial and the process's own sway; own choice. */
const DIAL_SD_V = 0.3;

const NOTHING: Measured = { meanVoltageV: null, meanCurrentA: null };

/** The wire of a set-up; steel where no material is stated. */
export function fedWire(
  setup: Setup,
  material: MapMaterial | null = null,
): Omit<FedWire, 'diameterMm'> & { diameterMm: number | null } {
  return {
    material: material ?? setup.wireMaterial ?? 'carbon-steel',
    diameterMm: setup.wireDiameterMm,
    stickOutMm: setup.stickOutMm,
    polarity: setup.polarity,
  };
}

/** Mean current: measured before what the feed should draw. Null where neither is known. */
export function currentOfSetup(
  setup: Setup,
  measured: Measured = NOTHING,
  material: MapMaterial | null = null,
): (Likely & { from: 'measured' | 'feed'; given: number }) | null {
  const amps = setup.measuredCurrentA ?? measured.meanCurrentA;
  if (amps !== null) return { ...likely(amps, amps * METER_SHARE), from: 'measured', given: amps };
  const wire = fedWire(setup, material);
  const feed = setup.wireFeedMPerMin;
  if (feed === null || wire.diameterMm === null) return null;
  const drawn = currentOfFeed({ ...wire, diameterMm: wire.diameterMm }, feed);
  return drawn === null ? null : { ...drawn, from: 'feed', given: feed };
}

/**
 * The working point on the map, volts at the feeder: volts measured nearest the arc first, the dial last.
 * Null where volts or amperes are not known, and for every polarity but electrode positive.
 */
export function mapPoint(
  setup: Setup,
  measured: Measured = NOTHING,
  material: MapMaterial | null = null,
): KnownMapPoint | null {
  if (setup.polarity === 'dcen' || setup.polarity === 'ac') return null;
  const current = currentOfSetup(setup, measured, material);
  if (current === null) return null;
  const { mean, sd, from, given } = current;
  const currentA = likely(mean, sd);
  const volts = voltsOf(setup, measured);
  if (volts === null) return null;
  const voltageV = feederVolts(volts, setup, mean);
  const tilt = volts.from === 'set' ? droopPerAmpere(setup) : 0;
  return {
    voltageV,
    currentA,
    correlation: voltageV.sd > 0 ? Math.max(-0.9, (-tilt * sd) / voltageV.sd) : 0,
    volts,
    amps: { from, given },
  };
}

interface KnownVolts {
  from: VoltsFrom;
  given: number;
  measured: boolean;
}

/** The voltage to go by, with where it holds. */
export function voltsOf(setup: Setup, { meanVoltageV }: Measured = NOTHING): KnownVolts | null {
  const read = (from: VoltsFrom, given: number): KnownVolts => ({ from, given, measured: true });
  if (setup.arcVoltsV !== null) return read('arc', setup.arcVoltsV);
  if (setup.feederVoltsV !== null) return read('feeder', setup.feederVoltsV);
  if (meanVoltageV !== null) return read(setup.traceVoltsAt ?? 'unknown', meanVoltageV);
  if (setup.sourceVoltsV !== null) return read('source', setup.sourceVoltsV);
  if (setup.setVoltageV === null) return null;
  return { from: placeOfSetting(setup.voltsAt), given: setup.setVoltageV, measured: false };
}

function feederVolts(
  { from, given, measured }: KnownVolts,
  circuit: Circuit,
  amps: number,
): Likely {
  const volts = likely(given, measured ? METER_SD_V : DIAL_SD_V);
  if (from !== 'unknown') return voltsAtPlace(volts, from, 'feeder', circuit, amps);
  return voltsOfUnknownPlace(volts, circuit, amps);
}

function droopPerAmpere({ sourceSlopeVPer100A }: Circuit): number {
  return (sourceSlopeVPer100A ?? USUAL_DROOP.mean) / 100;
}
