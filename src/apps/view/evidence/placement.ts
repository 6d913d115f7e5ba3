import type { Result } from '../../../analysis/result/index.js';
import type { Mode } from '../../../core/index.js';
import {
  authority,
  feedForCurrent,
  modeBoundaries,
  type Range,
  type Setup,
  workingPoint,
} from '../../../setup/index.js';

/** Where the run sits among what the trade knows, in volts at the feeder and mean amperes. */
export interface Placement {
  /** For which wire and gas the bands hold, in words. */
  scope: string;
  /** Published windows of one mode each; where they overlap or leave gaps, the sources disagree. */
  bands: { mode: Mode; voltageV: Range; currentA: Range; authority: string; about: string }[];
  /** Zones within which the sources put the end of short-circuit and the begin of spray. */
  dipTopV: Range;
  sprayFloorV: Range | null;
  transitionA: Range | null;
  run: {
    voltageV: Range | null;
    voltageFrom: string | null;
    currentA: Range | null;
    currentFrom: string | null;
  };
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
  const bands = bounds.rows.flatMap((row) =>
    row.whole && row.voltageV && row.currentA
      ? [
          {
            mode: row.mode,
            voltageV: row.voltageV,
            currentA: row.currentA,
            authority: authority(row),
            about: row.about || row.gas,
          },
        ]
      : [],
  );
  const { voltageV, voltageFrom, currentA, currentFrom } = point;
  return {
    scope: scopeOf(setup),
    bands,
    dipTopV: bounds.dipTopV,
    sprayFloorV: bounds.spray === 'no' ? null : bounds.sprayFloorV,
    transitionA: bounds.transition?.currentA ?? null,
    run: { voltageV, voltageFrom, currentA, currentFrom },
    feeds: feedScale(setup),
  };
}

function scopeOf({ wireDiameterMm, wireMaterial, gas }: Setup): string {
  const wire = wireDiameterMm === null ? 'any wire diameter' : `${wireDiameterMm} mm wire`;
  const material = (wireMaterial ?? 'carbon-steel').replaceAll('-', ' ');
  const taken = wireMaterial === null ? ' (taken: no material was stated)' : '';
  return `${wire}, ${material}${taken}, ${gas === null ? 'any gas' : `gas ${gas.text}`}`;
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
