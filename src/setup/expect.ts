import { MODES, type Mode } from '../core/index.js';
import { type Boundaries, modeBoundaries } from './boundaries.js';
import { BEFORE_YOU_CHANGE } from './cautions.js';
import { CO2_LIMITS, sprayInGas, sprayInGasText } from './co2-limit.js';
import { depositionRateKgPerH } from './deposition.js';
import { arcEnergy, HEAT_INPUT_NOTE, heatInput } from './heat-input.js';
import { processName } from './iso4063.js';
import { type ModeMap, modeMap } from './mode-map.js';
import { type Permit, permits } from './permits.js';
import { parseSetup, type Setup } from './setup.js';
import type { SetupInput } from './setup-options.js';
import { authority, type Range, range, rangeText } from './sourced.js';
import { type KnownPoint, workingPoint } from './working-point.js';

/** What one mode needs, and whether the set-up gives it. */
export interface ModeExpectation {
  mode: Mode;
  /** ISO 4063 short name. */
  process: string;
  permit: Permit;
  boundary: string;
  authority: string[];
}

/** What a set-up permits, without any recording. */
export interface Expectation {
  point: KnownPoint;
  modes: ModeExpectation[];
  boundaries: Boundaries;
  map: ModeMap | null;
  /** kJ/mm, with the thermal efficiency of the process; null without travel speed. */
  heatInputKjPerMm: Range | null;
  depositionKgPerH: Range | null;
  notes: string[];
  cautions: readonly string[];
}

/** Which modes these settings permit, where each boundary lies, and on whose authority. */
export function expectModes(stated: SetupInput | Setup): Expectation {
  const setup = 'notes' in stated ? stated : parseSetup(stated);
  const boundaries = modeBoundaries(setup);
  const point = workingPoint(setup);
  const permitted = permits(point, boundaries, setup.source);
  return {
    point,
    modes: MODES.map((mode) => ({
      mode,
      process: processName(mode, setup.gas),
      permit: permitted[mode],
      boundary: boundaryText(mode, boundaries),
      authority: authorities(mode, boundaries, setup),
    })),
    boundaries,
    map: modeMap(setup, boundaries),
    heatInputKjPerMm: heat(setup, point),
    depositionKgPerH: deposition(setup),
    notes: notes(setup, point),
    cautions: BEFORE_YOU_CHANGE,
  };
}

/** Where a mode ends, in volts at the feeder and mean amperes. */
export function boundaryText(mode: Mode, bounds: Boundaries): string {
  const { dipTopV, sprayFloorV, transition, spray } = bounds;
  if (mode === 'short-circuit') return `up to ${rangeText(dipTopV)} V`;
  if (mode === 'globular') {
    const amps = spray === 'no' || transition === null ? '' : `, below ${currentText(bounds)}`;
    return `above ${rangeText(dipTopV)} V${amps}`;
  }
  if (spray === 'no') return 'not in this gas';
  const disputed = spray === 'disputed' ? ' (disputed in this gas)' : '';
  if (mode === 'pulsed-spray') return `at any mean current, with a pulsed programme${disputed}`;
  return `above ${rangeText(sprayFloorV)} V and ${currentText(bounds)}${disputed}`;
}

function currentText({ transition }: Boundaries): string {
  return transition === null
    ? 'the transition current (not known)'
    : `${rangeText(transition.currentA, 0)} A`;
}

/** Each source with its own numbers: the spread is shown, not averaged away. */
function authorities(mode: Mode, { rows, transition }: Boundaries, setup: Setup): string[] {
  const bands = rows.filter((row) => row.mode === mode && row.whole).map(bandText);
  if (mode !== 'spray') return [...new Set(bands)];
  const currents = (transition?.rows ?? []).map(
    (row) =>
      `from ${rangeText(row.currentA, 0)} A (${rangeText(range(row.diameterMm, row.diameterMm), 2)} mm, ${row.gas}): ${authority(row)}`,
  );
  const limits =
    setup.gas === null || setup.wireMaterial === 'aluminium' || setup.gas.co2.max <= 15
      ? []
      : CO2_LIMITS.map((row) => `${row.says}: ${authority(row)}`);
  return [...new Set([...bands, ...currents, ...limits])];
}

function bandText(row: Boundaries['rows'][number]): string {
  const wire = row.diameterMm === null ? null : `${rangeText(row.diameterMm, 2)} mm`;
  const parts = [
    row.voltageV === null ? null : `${rangeText(row.voltageV)} V`,
    row.currentA === null ? null : `${rangeText(row.currentA, 0)} A`,
    row.feedMPerMin === null ? null : `${rangeText(row.feedMPerMin)} m/min`,
  ].filter((part) => part !== null);
  const scope = [wire, row.gas].filter((part) => part !== null).join(', ');
  return `${parts.join(', ')} (${scope}): ${authority(row)}`;
}

function heat({ travelSpeedMmPerMin }: Setup, { voltageV, currentA }: KnownPoint): Range | null {
  if (travelSpeedMmPerMin === null || voltageV === null || currentA === null) return null;
  const at = (v: number, a: number): number => heatInput(arcEnergy(v, a, travelSpeedMmPerMin));
  return { min: at(voltageV.min, currentA.min), max: at(voltageV.max, currentA.max) };
}

function deposition({ wireMaterial, wireDiameterMm, wireFeedMPerMin }: Setup): Range | null {
  if (wireDiameterMm === null || wireFeedMPerMin === null) return null;
  return depositionRateKgPerH(wireMaterial ?? 'carbon-steel', wireDiameterMm, wireFeedMPerMin);
}

function notes(setup: Setup, point: KnownPoint): string[] {
  const said = setup.notes.map((note) => note.message);
  if (setup.gas !== null && setup.wireMaterial !== 'aluminium') {
    const disputed = sprayInGas(setup.gas) === 'disputed';
    said.push(
      disputed
        ? `The sources disagree about axial spray in ${setup.gas.text}; each is listed under spray.`
        : sprayInGasText(setup.gas),
    );
  }
  if (setup.wireMaterial === null)
    said.push('No wire material was stated: carbon steel was taken.');
  if (point.voltageV !== null && !point.voltageMeasured) {
    said.push(
      `Only the set voltage is known: losses and the spread between tables leave ${rangeText(point.voltageV)} V. Measure at the feeder while welding to narrow this.`,
    );
  }
  if (setup.wireDiameterMm !== null && setup.wireDiameterMm < 0.85) {
    said.push(
      'For wires below 0.9 mm with less than 30 % CO2 drops were measured never to fall below the wire diameter (Soderstrom & Mendez 2008): "spray" means less for them.',
    );
  }
  if (setup.plateMm !== null && setup.plateMm > 6.4) {
    said.push(
      'Above about 6.4 mm plate short-circuit transfer is taught to risk lack of fusion (common practice, no source; a guide, not a limit).',
    );
  }
  if (setup.travelSpeedMmPerMin !== null) said.push(HEAT_INPUT_NOTE);
  return said;
}
