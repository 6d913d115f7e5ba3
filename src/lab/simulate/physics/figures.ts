import type { Mode } from '../../../core/index.js';
import type { FreeFlight } from '../run.js';
import type { ArcScenario } from '../scenario.js';
import {
  EVENT_WINDOWS,
  type EventWindow,
  LEEWAY,
  type Range,
  speaksFor,
  WORKING_WINDOWS,
} from './windows.js';

/** What a run did while it burnt steadily: what windows are about. NaN where there is nothing to count. */
export interface SteadyFigures {
  /** By what crossed the gap; null when no metal did. */
  mode: Mode | null;
  /** Share of the metal that crossed so. */
  modeShare: number;
  freeFlight: FreeFlight | null;
  /** Share of the time in which the arc process ran. */
  burningShare: number;
  meanV: number;
  meanA: number;
  shortRateHz: number;
  shortIntervalCv: number;
  shortS: number;
  dropRateHz: number;
  dropRatio: number;
  pulseRateHz: number;
  dropsPerPulse: number;
}

/** How much of the leeway of a window may be used. */
export interface Strictness {
  /** Share of the leeway in volts and amperes. */
  working: number;
  /** The same of drops and shorts, which are few in a short time. */
  events: number;
}

const QUANTITIES = [
  'shortRateHz',
  'shortIntervalCv',
  'shortS',
  'dropRateHz',
  'dropRatio',
  'pulseRateHz',
  'dropsPerPulse',
] as const;

/** Whether the run stands in a published window of its mode, wire and gas, and its drops and shorts in all that speak for it. */
export function inWindows(
  { wire, gas }: ArcScenario,
  figures: SteadyFigures,
  strictness: Strictness = { working: 1, events: 1 },
): boolean {
  const { mode } = figures;
  if (mode === null) return false;
  const volts = LEEWAY.volts * strictness.working;
  const amps = LEEWAY.share * strictness.working;
  const works = WORKING_WINDOWS.some(
    (row) =>
      speaksFor(row, mode, wire, gas) &&
      figures.meanV >= row.voltageV[0] - volts &&
      figures.meanV <= row.voltageV[1] + volts &&
      inRange(figures.meanA, row.currentA, amps),
  );
  const share = LEEWAY.share * strictness.events;
  return (
    works &&
    EVENT_WINDOWS.every((row) => !speaksFor(row, mode, wire, gas) || eventsIn(row, figures, share))
  );
}

function eventsIn(row: EventWindow, figures: SteadyFigures, share: number): boolean {
  if (row.form !== undefined && row.form !== figures.freeFlight) return true;
  return QUANTITIES.every((quantity) => {
    const range = row[quantity];
    const value = figures[quantity];
    return range === undefined || Number.isNaN(value) || inRange(value, range, share);
  });
}

function inRange(value: number, [low, high]: Range, share: number): boolean {
  return value >= low * (1 - share) && value <= high * (1 + share);
}
