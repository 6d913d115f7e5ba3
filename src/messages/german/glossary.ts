import type { Mode } from '../../core/index.js';
import type { GasMix, Quantity } from '../terms.js';

/** The arc by the way that the metal crosses. All are masculine: `der`, `den`, `dem`. */
export const GERMAN_MODES: Readonly<Record<Mode, string>> = {
  'short-circuit': 'Kurzlichtbogen',
  globular: 'Übergangslichtbogen',
  spray: 'Sprühlichtbogen',
  'pulsed-spray': 'Impulslichtbogen',
};

export const GERMAN_QUANTITIES: Readonly<Record<Quantity | 'sound', string>> = {
  sound: 'Ton',
  time: 'Zeit',
  voltage: 'Spannung',
  current: 'Strom',
};

/** Symbols as they stand in a mixture, the same in German. */
export const GAS_SYMBOLS: Readonly<Record<keyof GasMix, string>> = {
  ar: 'Ar',
  he: 'He',
  co2: 'CO2',
  o2: 'O2',
  h2: 'H2',
  n2: 'N2',
};

/** As they stand after "für" or "Draht aus". */
export const GERMAN_MATERIALS = {
  'carbon-steel': 'unlegierten Stahl',
  'stainless-steel': 'nichtrostenden Stahl',
  aluminium: 'Aluminium',
} as const;

/** Whose rules come first, as it stands in sentences. */
export const PROCEDURE = {
  /** "der … folgen", "mit der … vergleichen" */
  dative: 'der qualifizierten Schweißanweisung (WPS)',
  nominative: 'die qualifizierte Schweißanweisung (WPS)',
} as const;

export const AT_FEEDER = 'am Drahtvorschubgerät';
