import { MODES, type Mode } from '../core/index.js';
import {
  again,
  type Made,
  type Message,
  message,
  messagesOf,
  said,
  textsOf,
} from '../messages/index.js';
import type { BandRow } from './bands.js';
import { type Boundaries, modeBoundaries } from './boundaries.js';
import { BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES } from './cautions.js';
import { CO2_LIMITS, saySprayInGas, sprayInGas } from './co2-limit.js';
import { depositionRateKgPerH } from './deposition.js';
import { forecast } from './forecast.js';
import { gasName } from './gas.js';
import { arcEnergy, heatInput } from './heat-input.js';
import { processName } from './iso4063.js';
import { type ModeMap, modeMap } from './mode-map.js';
import { type Permit, permits } from './permits.js';
import type { MapMaterial } from './process-map/wires-of-map.js';
import { parseSetup } from './setup.js';
import type { SetupInput } from './setup-options.js';
import type { Setup } from './setup-schema.js';
import type { Range } from './sourced.js';
import { type KnownPoint, workingPoint } from './working-point.js';

/** What one mode needs, and whether the set-up gives it. */
export interface ModeExpectation {
  mode: Mode;
  /** ISO 4063 short name. */
  process: string;
  permit: Permit;
  boundary: string;
  boundaryMessage: Message;
  authority: string[];
  authorityMessages: Message[];
}

/** What a set-up permits, without any recording. */
export interface Expectation {
  point: KnownPoint;
  modes: ModeExpectation[];
  /** Less the lines themselves, which are functions of the current. */
  boundaries: Omit<Boundaries, 'map'>;
  map: ModeMap | null;
  /** kJ/mm without any thermal efficiency, as American codes count it; null without travel speed. */
  arcEnergyKjPerMm: Range | null;
  /** kJ/mm, with the thermal efficiency of the process; null without travel speed. */
  heatInputKjPerMm: Range | null;
  depositionKgPerH: Range | null;
  notes: string[];
  noteMessages: Message[];
  cautions: readonly string[];
  cautionMessages: readonly Message[];
  /** The likeliest outcome, and where it flips; null where volts or amperes are not known. */
  likeliest: string | null;
  likeliestMessage: Message | null;
  chances: string[];
  chanceMessages: Message[];
  /** The way to the wanted mode from here; empty where none is wanted or the point is not known. */
  advice: string[];
  adviceMessages: Message[];
  /** Settings that give the wanted mode; empty where none is wanted. */
  howTo: string[];
  howToMessages: Message[];
}

/**
 * Which modes these settings permit, where each boundary lies, and on whose authority. `material` is for wires
 * that only the map knows: for them there is no table of modes.
 */
export function expectModes(
  stated: SetupInput | Setup,
  material: MapMaterial | null = null,
): Expectation {
  const setup = 'notes' in stated ? stated : parseSetup(stated);
  const point = workingPoint(setup);
  const boundaries = modeBoundaries(setup, point.currentA);
  const { map: _, ...zones } = boundaries;
  const permitted = permits(point, boundaries, setup.source);
  const remarks = material === null ? notes(setup, point) : [message('map-only-wire')];
  const { likeliest, chances, advice, howTo } = forecast(setup, material);
  return {
    point,
    modes: (material === null ? MODES : []).map((mode) => {
      const boundary = sayBoundary(mode, boundaries);
      const backed = authorities(mode, boundaries, setup);
      return {
        mode,
        process: processName(mode, setup.gas),
        permit: permitted[mode],
        boundary: boundary.text,
        boundaryMessage: said(boundary),
        authority: textsOf(backed),
        authorityMessages: messagesOf(backed),
      };
    }),
    boundaries: zones,
    map: modeMap(setup, boundaries),
    arcEnergyKjPerMm: arcEnergyOf(setup, point),
    heatInputKjPerMm: heat(setup, point),
    depositionKgPerH: material === null ? deposition(setup) : null,
    notes: textsOf(remarks),
    noteMessages: messagesOf(remarks),
    cautions: BEFORE_YOU_CHANGE,
    cautionMessages: BEFORE_YOU_CHANGE_MESSAGES,
    likeliest: likeliest?.text ?? null,
    likeliestMessage: likeliest && said(likeliest),
    chances: textsOf(chances),
    chanceMessages: messagesOf(chances),
    advice: textsOf(advice),
    adviceMessages: messagesOf(advice),
    howTo: textsOf(howTo),
    howToMessages: messagesOf(howTo),
  };
}

/** Where a mode ends, in volts at the feeder and mean amperes. */
export function sayBoundary(mode: Mode, bounds: Boundaries): Made {
  const { dipTopV, sprayFloorV, transition, spray } = bounds;
  const currentA = transition?.currentA ?? null;
  if (mode === 'short-circuit') return message('lies-up-to', { topV: dipTopV });
  if (mode === 'globular') {
    return message('lies-above', { bottomV: dipTopV, belowA: spray === 'no' ? null : currentA });
  }
  if (spray === 'no') return message('not-in-this-gas');
  const disputed = spray === 'disputed';
  if (mode === 'pulsed-spray') return message('lies-under-pulses', { disputed });
  return message('lies-in-spray', { bottomV: sprayFloorV, aboveA: currentA, disputed });
}

/** Each source with its own numbers: the spread is shown, not averaged away. */
function authorities(mode: Mode, { rows, transition }: Boundaries, setup: Setup): Made[] {
  const bands = rows.filter((row) => row.mode === mode && row.whole).map(sayBand);
  if (mode !== 'spray') return once(bands);
  const currents = (transition?.rows ?? []).map(
    ({ currentA, diameterMm, gas, source, certainty }) =>
      message('transition-row', { fromA: currentA, diameterMm, gas, source, certainty }),
  );
  const limits =
    setup.gas === null || setup.wireMaterial === 'aluminium' || setup.gas.co2.max <= 15
      ? []
      : CO2_LIMITS.map(({ saying, source, certainty }) =>
          message('co2-row', { saying, source, certainty }),
        );
  return once([...bands, ...currents, ...limits]);
}

function sayBand(row: BandRow): Made {
  const { voltageV, currentA, feedMPerMin, diameterMm, gas, source, certainty } = row;
  return message('band-row', {
    voltageV,
    currentA,
    feedMPerMin,
    diameterMm,
    gas,
    source,
    certainty,
  });
}

/** Drops what reads the same as something before it. */
function once(list: readonly Made[]): Made[] {
  const texts = textsOf(list);
  return list.filter((one, i) => texts.indexOf(one.text) === i);
}

/** Arc energy of a point, kJ/mm; null without travel speed, volts or amperes. */
export function arcEnergyOf(
  { travelSpeedMmPerMin }: Setup,
  { voltageV, currentA }: Pick<KnownPoint, 'voltageV' | 'currentA'>,
): Range | null {
  if (travelSpeedMmPerMin === null || voltageV === null || currentA === null) return null;
  const at = (v: number, a: number): number => arcEnergy(v, a, travelSpeedMmPerMin);
  return { min: at(voltageV.min, currentA.min), max: at(voltageV.max, currentA.max) };
}

function heat(setup: Setup, point: KnownPoint): Range | null {
  const energy = arcEnergyOf(setup, point);
  return energy === null ? null : { min: heatInput(energy.min), max: heatInput(energy.max) };
}

function deposition({ wireMaterial, wireDiameterMm, wireFeedMPerMin }: Setup): Range | null {
  if (wireDiameterMm === null || wireFeedMPerMin === null) return null;
  return depositionRateKgPerH(wireMaterial ?? 'carbon-steel', wireDiameterMm, wireFeedMPerMin);
}

function notes(setup: Setup, point: KnownPoint): Made[] {
  const notes: Made[] = setup.notes.map((note) => ({ ...again(note), text: note.message }));
  const { gas } = setup;
  if (gas !== null && setup.wireMaterial !== 'aluminium') {
    const disputed = sprayInGas(gas) === 'disputed';
    notes.push(
      disputed ? message('spray-disputed-below', { gas: gasName(gas) }) : saySprayInGas(gas),
    );
  }
  if (setup.wireMaterial === null) notes.push(message('material-taken'));
  if (point.voltageV !== null && !point.voltageMeasured) {
    notes.push(message('only-set-voltage', { feederV: point.voltageV }));
  }
  if (setup.wireDiameterMm !== null && setup.wireDiameterMm < 0.85) {
    notes.push(message('thin-wire-drops'));
  }
  if (setup.plateMm !== null && setup.plateMm > 6.4) {
    notes.push(message('plate-thick-for-short-circuit'));
  }
  if (setup.travelSpeedMmPerMin !== null) notes.push(message('heat-input-method'));
  return notes;
}
