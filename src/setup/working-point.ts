import { type Made, type Message, message, said } from '../messages/index.js';
import type { VoltsAt } from './choices.js';
import type { WorkingPoint } from './permits.js';
import { currentOfFeed } from './process-map/feed-current.js';
import { widely } from './process-map/spread.js';
import type { Setup } from './setup-schema.js';
import { type Range, range } from './sourced.js';
import { feederVoltage } from './voltage-drop.js';

/** Currents taken for the losses where neither current nor feed is known, A (common practice, no source). */
export const ANY_CURRENT: Range = { min: 80, max: 350 };
/** What two honest meters differ by (common practice, no source). */
const METER_V = 0.3;
const METER_SHARE = 0.02;
/** How closely a dial is read and kept (common practice, no source). */
const DIAL_V = 0.5;

/** A working point with the words for where each part comes from. */
export interface KnownPoint extends WorkingPoint {
  /** Which voltage was taken and how it came to the feeder; null where none is known. */
  voltageFrom: string | null;
  currentFrom: string | null;
  /** Both by their codes. */
  voltageFromMessage: Message | null;
  currentFromMessage: Message | null;
  /** True where a measured voltage was used, not a set one. */
  voltageMeasured: boolean;
  currentMeasured: boolean;
}

/** What a recording measured of itself. */
export interface Measured {
  meanVoltageV: number | null;
  meanCurrentA: number | null;
}

const NOTHING: Measured = { meanVoltageV: null, meanCurrentA: null };

/**
 * The best-known working point: measured volts before set ones, brought to the feeder; measured
 * amperes before those the feed draws. Each part is null where nothing is known of it.
 */
export function workingPoint(setup: Setup, measured: Measured = NOTHING): KnownPoint {
  const current = currentOf(setup, measured);
  const voltage = voltageOf(setup, measured, current?.currentA ?? ANY_CURRENT);
  return {
    voltageV: voltage?.voltageV ?? null,
    voltageFrom: voltage?.from.text ?? null,
    voltageFromMessage: voltage && said(voltage.from),
    voltageMeasured: voltage?.measured ?? false,
    currentA: current?.currentA ?? null,
    currentFrom: current?.from.text ?? null,
    currentFromMessage: current && said(current.from),
    currentMeasured: current?.measured ?? false,
  };
}

/** Current the stated feed should draw; null without feed and diameter. */
export function currentFromFeed(setup: Setup): Range | null {
  const { wireDiameterMm, wireFeedMPerMin, wireMaterial, stickOutMm, polarity } = setup;
  if (wireDiameterMm === null || wireFeedMPerMin === null) return null;
  const material = wireMaterial ?? 'carbon-steel';
  const wire = { material, diameterMm: wireDiameterMm, stickOutMm, polarity };
  const drawn = currentOfFeed(wire, wireFeedMPerMin);
  return drawn === null ? null : widely(drawn);
}

interface PartOfPoint {
  from: Made;
  measured: boolean;
}

function currentOf(
  setup: Setup,
  { meanCurrentA }: Measured,
): (PartOfPoint & { currentA: Range }) | null {
  const amps = setup.measuredCurrentA ?? meanCurrentA;
  if (amps !== null) {
    const currentA = range(amps * (1 - METER_SHARE), amps * (1 + METER_SHARE));
    return { currentA, from: message('current-measured', { currentA: amps }), measured: true };
  }
  const currentA = currentFromFeed(setup);
  if (currentA === null) return null;
  return { currentA, from: message('current-from-feed', { currentA }), measured: false };
}

/** Volts to compare for the set voltage alone, losses left open; null where none was stated. */
export function setVoltageAtFeeder(setup: Setup, currentA: Range | null): Range | null {
  const { setVoltageV, voltsAt } = setup;
  if (setVoltageV === null) return null;
  const place = voltsAt === 'feeder' || voltsAt === 'arc' ? voltsAt : 'set';
  const at = feederVoltage(setVoltageV, place, currentA ?? ANY_CURRENT, setup);
  return range(at.min - DIAL_V, at.max + DIAL_V);
}

function voltageOf(
  setup: Setup,
  { meanVoltageV }: Measured,
  currentA: Range,
): (PartOfPoint & { voltageV: Range }) | null {
  const measured = (volts: number, place: VoltsAt | 'unknown', by: 'meter' | 'trace') => {
    const at = feederVoltage(volts, place, currentA, setup);
    const voltageV = range(at.min - METER_V, at.max + METER_V);
    const where = place === 'unknown' ? 'trace' : place;
    return {
      voltageV,
      from: message('voltage-measured', { volts, place: where, by }),
      measured: true,
    };
  };
  // As near the arc as practicable (ISO/TR 18491): a loss in the gun shows nowhere else.
  if (setup.arcVoltsV !== null) return measured(setup.arcVoltsV, 'arc', 'meter');
  if (setup.feederVoltsV !== null) return measured(setup.feederVoltsV, 'feeder', 'meter');
  if (meanVoltageV !== null) {
    return measured(meanVoltageV, setup.traceVoltsAt ?? 'unknown', 'trace');
  }
  if (setup.sourceVoltsV !== null) return measured(setup.sourceVoltsV, 'source', 'meter');
  const voltageV = setVoltageAtFeeder(setup, currentA);
  if (voltageV === null) return null;
  const from = message('voltage-set', { setV: setup.setVoltageV!, feederV: voltageV });
  return { voltageV, from, measured: false };
}
