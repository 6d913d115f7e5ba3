import { ArcError } from '../core/index.js';
import type { Sourced } from './sourced.js';

/** Thermal efficiencies by process (ISO/TR 17671-1, EN 1011-1 by way of TWI's FAQ). */
export const THERMAL_EFFICIENCY = {
  saw: 1.0,
  smaw: 0.8,
  fcaw: 0.8,
  gmaw: 0.8,
  gtaw: 0.6,
  paw: 0.6,
  source: 'TWI FAQ (ISO/TR 17671-1, EN 1011-1)',
  certainty: 'F',
} as const satisfies Sourced & Record<string, number | string>;

/** Arc energy in kJ/mm from mean volts, mean amperes and travel speed in mm/min (method A). */
export function arcEnergy(meanV: number, meanA: number, travelMmPerMin: number): number {
  positive('travel speed', travelMmPerMin, 'mm/min');
  return (meanV * meanA * 60) / (1000 * travelMmPerMin);
}

/** Heat input in kJ/mm: arc energy times the thermal efficiency, 0.8 for gas metal arc. */
export function heatInput(
  arcEnergyKjPerMm: number,
  efficiency: number = THERMAL_EFFICIENCY.gmaw,
): number {
  return efficiency * arcEnergyKjPerMm;
}

/** Method B: instantaneous energy over the length of the bead, kJ/mm. */
export function energyPerLength(energyJ: number, beadLengthMm: number): number {
  positive('bead length', beadLengthMm, 'mm');
  return energyJ / 1000 / beadLengthMm;
}

/** Method C: mean instantaneous power over the travel speed, kJ/mm. */
export function powerPerSpeed(meanPowerW: number, travelMmPerMin: number): number {
  positive('travel speed', travelMmPerMin, 'mm/min');
  return (meanPowerW * 60) / (1000 * travelMmPerMin);
}

function positive(name: string, value: number, unit: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  throw new ArcError({
    code: 'bad-heat-input',
    what: `The ${name} is ${value} ${unit}.`,
    expected: `a ${name} above 0 ${unit}`,
    todo: 'Check the value.',
  });
}
