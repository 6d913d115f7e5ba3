import type { Result } from '../../../analysis/result/index.js';
import type { Mode } from '../../../core/index.js';
import { type Made, type Message, message, said } from '../../../messages/index.js';
import {
  type BandRow,
  feedForCurrent,
  forecast,
  forecastPicture,
  gasName,
  type KnownPoint,
  middle,
  modeBoundaries,
  type processMaps,
  type Range,
  type Setup,
  workingPoint,
} from '../../../setup/index.js';

/** Where the run sits among what the trade knows, in volts at the feeder and mean amperes. */
export interface Placement {
  /** For which wire and gas the bands hold, in words. */
  scope: string;
  scopeMessage: Message;
  /** Published windows of one mode each; where they overlap or leave gaps, the sources disagree. */
  bands: {
    mode: Mode;
    voltageV: Range;
    currentA: Range;
    authority: string;
    authorityMessage: Message;
    about: string;
    aboutMessage: Message;
  }[];
  /** Zones within which the sources put the end of short-circuit and the begin of spray. */
  dipTopV: Range;
  sprayFloorV: Range | null;
  transitionA: Range | null;
  run: {
    voltageV: Range | null;
    voltageFrom: string | null;
    voltageFromMessage: Message | null;
    currentA: Range | null;
    currentFrom: string | null;
    currentFromMessage: Message | null;
  };
  /** What this wire and gas give over volts and amperes; null where no wire diameter is stated. */
  map: processMaps.MapPicture | null;
  /** Feed that draws a current, m/min at the usual stick-out; empty where the wire is not known. */
  feeds: { currentA: number; feedMPerMin: number }[];
}

/** Stick-out taken for the scale of feeds where none was stated, mm. */
const USUAL_STICK_OUT_MM = 15;

/** Null where neither a voltage nor a current of the run is known, stated or measured. */
export function placeRun(setup: Setup, result: Pick<Result, 'features'>): Placement | null {
  const point = workingPoint(setup, {
    meanVoltageV: result.features['meanVoltageV'] ?? null,
    meanCurrentA: result.features['meanCurrentA'] ?? null,
  });
  if (point.voltageV === null && point.currentA === null) return null;
  const bounds = modeBoundaries(setup);
  const { voltageV, voltageFrom, voltageFromMessage } = point;
  const { currentA, currentFrom, currentFromMessage } = point;
  const scope = scopeOf(setup);
  return {
    scope: scope.text,
    scopeMessage: said(scope),
    bands: bounds.rows.flatMap(bandOf),
    dipTopV: bounds.dipTopV,
    sprayFloorV: bounds.spray === 'no' ? null : bounds.sprayFloorV,
    transitionA: bounds.transition?.currentA ?? null,
    run: {
      voltageV,
      voltageFrom,
      voltageFromMessage,
      currentA,
      currentFrom,
      currentFromMessage,
    },
    map: mapOf(setup, point),
    feeds: feedScale(setup),
  };
}

const GRID = { columns: 48, rows: 48 };

/** The map with the stated setting as an ellipse and the measured place as a dot. */
function mapOf(setup: Setup, { voltageV, currentA, voltageMeasured, currentMeasured }: KnownPoint) {
  const both = voltageV !== null && currentA !== null && voltageMeasured && currentMeasured;
  const measured = both ? { voltageV: middle(voltageV), currentA: middle(currentA) } : null;
  return forecastPicture(setup, forecast(setup), GRID, measured);
}

/** A row as a band of the picture; none where it is for one joint or leaves volts or amperes open. */
function bandOf({ mode, whole, voltageV, currentA, ...row }: BandRow): Placement['bands'] {
  if (!whole || voltageV === null || currentA === null) return [];
  const { source, certainty, about: remark, gas } = row;
  const authority = message('authority', { source, certainty });
  const about = remark ? message('band-remark', { remark }) : message('band-gas', { gas });
  return [
    {
      mode,
      voltageV,
      currentA,
      authority: authority.text,
      authorityMessage: said(authority),
      about: about.text,
      aboutMessage: said(about),
    },
  ];
}

function scopeOf({ wireDiameterMm, wireMaterial, gas }: Setup): Made {
  return message('window-scope', {
    diameterMm: wireDiameterMm,
    material: wireMaterial ?? 'carbon-steel',
    materialStated: wireMaterial !== null,
    gas: gas && gasName(gas),
  });
}

function feedScale(setup: Setup): Placement['feeds'] {
  const { wireDiameterMm, wireMaterial, stickOutMm, polarity } = setup;
  if (wireDiameterMm === null || polarity === 'ac') return [];
  const wire = {
    material: wireMaterial ?? 'carbon-steel',
    diameterMm: wireDiameterMm,
    stickOutMm: stickOutMm ?? USUAL_STICK_OUT_MM,
    ...(polarity === null ? {} : { polarity }),
  };
  return [50, 100, 150, 200, 250, 300, 350, 400].flatMap((currentA) => {
    const feedMPerMin = feedForCurrent(wire, currentA);
    return feedMPerMin === null ? [] : [{ currentA, feedMPerMin }];
  });
}
