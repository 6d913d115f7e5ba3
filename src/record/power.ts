import { arcTimeOf, type Result } from '../analysis/result/index.js';
import { type Made, message, messagesOf, textsOf } from '../messages/index.js';
import {
  arcEnergy,
  depositionRateKgPerH,
  energyPerLength,
  heatInput,
  meltingRateKgPerH,
  powerPerSpeed,
  type Setup,
  type VoltsAt,
} from '../setup/index.js';
import type { WeldRecord } from './schema.js';

/** Volts or amperes of a run: measured in its trace, or read from a meter. */
export interface Reading {
  value: number;
  basis: 'measured' | 'read';
  place: VoltsAt | null;
}

/** Below this share the two ways to the power are said to be the same; our own choice, no source. */
const SAME_POWER = 0.01;

/** Volts of the run: of the trace, else the meter reading nearest to the arc. */
export function voltsOf(result: Result, setup: Setup): Reading | null {
  const mean = result.features.meanVoltageV;
  if (typeof mean === 'number')
    return { value: mean, basis: 'measured', place: setup.traceVoltsAt };
  for (const [value, place] of [
    [setup.arcVoltsV, 'arc'],
    [setup.feederVoltsV, 'feeder'],
    [setup.sourceVoltsV, 'source'],
  ] as const) {
    if (value !== null) return { value, basis: 'read', place };
  }
  return null;
}

/** Amperes of the run: of the trace, else the meter reading. */
export function amperesOf(result: Result, setup: Setup): Reading | null {
  const mean = result.features.meanCurrentA;
  if (typeof mean === 'number') return { value: mean, basis: 'measured', place: null };
  const { measuredCurrentA } = setup;
  return measuredCurrentA === null ? null : { value: measuredCurrentA, basis: 'read', place: null };
}

/** Travel speed as stated, else from the length of the bead and the arc time, mm/min. */
export function travelOf(result: Result, setup: Setup): number | null {
  const { travelSpeedMmPerMin: stated, beadLengthMm } = setup;
  const arcTimeS = arcTimeOf(result);
  if (stated !== null || beadLengthMm === null || !arcTimeS) return stated;
  return (beadLengthMm / arcTimeS) * 60;
}

/**
 * Power and energy of a run. The mean of the instantaneous power where the trace holds volts and amperes
 * (ISO/TR 18491 methods B and C, ASME IX QW-409.1(c)), beside the product of the means (method A).
 */
export function powerOf(result: Result, setup: Setup): WeldRecord['power'] {
  const [volts, amps] = [voltsOf(result, setup), amperesOf(result, setup)];
  const meanPowerW = result.features.powerW ?? null;
  const byMeansW = volts && amps ? volts.value * amps.value : null;
  const powerW = meanPowerW ?? byMeansW;
  const arcTimeS = arcTimeOf(result);
  const travel = travelOf(result, setup);
  const known = powerW !== null && arcTimeS !== null && arcTimeS > 0;
  const energyKj = known ? (powerW * arcTimeS) / 1000 : null;
  const perMm = known ? alongSeam(powerW, arcTimeS, travel, setup.beadLengthMm) : null;
  const remarks = remarksOf(meanPowerW, byMeansW, travel);
  return {
    meanPowerW,
    byMeansW,
    energyKj,
    arcEnergyKjPerMm: perMm,
    heatInputKjPerMm: perMm === null ? null : heatInput(perMm),
    byMeansKjPerMm:
      volts && amps && travel !== null ? arcEnergy(volts.value, amps.value, travel) : null,
    remarks: textsOf(remarks),
    remarkMessages: messagesOf(remarks),
  };
}

/** By the length of the bead where it is known, else by the travel speed. */
function alongSeam(
  powerW: number,
  arcTimeS: number,
  travelMmPerMin: number | null,
  beadLengthMm: number | null,
): number | null {
  if (beadLengthMm !== null) return energyPerLength(powerW * arcTimeS, beadLengthMm);
  return travelMmPerMin === null ? null : powerPerSpeed(powerW, travelMmPerMin);
}

function remarksOf(
  meanPowerW: number | null,
  byMeansW: number | null,
  travel: number | null,
): Made[] {
  if (byMeansW === null) return [message('record-needs-power')];
  const remarks: Made[] = [];
  if (meanPowerW === null) remarks.push(message('record-by-means'));
  else {
    const differenceShare = meanPowerW / byMeansW - 1;
    const same = Math.abs(differenceShare) < SAME_POWER;
    remarks.push(
      same ? message('record-power-same') : message('record-power-difference', { differenceShare }),
      message('record-steady-part'),
    );
  }
  if (travel === null) remarks.push(message('record-needs-travel'));
  return remarks;
}

/** Wire that melted in the run, and what of it ends up in the weld. */
export function depositOf(result: Result, setup: Setup): WeldRecord['deposit'] {
  const { wireFeedMPerMin: feed, wireDiameterMm: wire, wireMaterial: material } = setup;
  const arcTimeS = arcTimeOf(result);
  if (feed === null || wire === null || material === null || !arcTimeS) {
    const { text, code, params } = message('record-needs-feed');
    return { meltedKg: null, depositedKg: null, why: text, whyMessage: { code, params } };
  }
  const hours = arcTimeS / 3600;
  const rate = depositionRateKgPerH(material, wire, feed);
  return {
    meltedKg: meltingRateKgPerH(material, wire, feed) * hours,
    depositedKg: { min: rate.min * hours, max: rate.max * hours },
    why: null,
    whyMessage: null,
  };
}
