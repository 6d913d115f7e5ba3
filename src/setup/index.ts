export type { BandRow } from './bands.js';
export { DIP_BANDS } from './bands-dip.js';
export { GLOBULAR_BANDS, TAUGHT_HIGHEST_MODE_IN_CO2 } from './bands-globular.js';
export { SPRAY_BANDS } from './bands-spray.js';
export { type Boundaries, bandsFor, modeBoundaries } from './boundaries.js';
export { BEFORE_YOU_CHANGE, BEFORE_YOU_CHANGE_MESSAGES } from './cautions.js';
export * from './choices.js';
export { CO2_LIMITS, type SprayWord, saySprayInGas, sprayInGas } from './co2-limit.js';
export { sayAdvice, sayHowTo } from './coach.js';
export * from './deposition.js';
export {
  arcEnergyOf,
  type Expectation,
  expectModes,
  type ModeExpectation,
  sayBoundary,
} from './expect.js';
export { type Forecast, forecast, forecastPicture } from './forecast.js';
export {
  describeComposition,
  type Gas,
  type GasComposition,
  gasName,
  type ShareRange,
} from './gas.js';
export { gasSymbol, OTHER_SYMBOLS, OXIDISING_GROUPS, symbolRanges } from './gas-groups.js';
export { parseGas } from './gas-parse.js';
export * from './heat-input.js';
export { BURIED_ARC_LETTER, MODE_LETTERS, processName } from './iso4063.js';
export * from './melting.js';
export {
  ALUMINIUM_MELTING,
  FEED_PER_AMPERE,
  MELTING_ROWS,
  SPEED_ROW_1_2_MM,
} from './melting-rows.js';
export { type ModeMap, modeMap } from './mode-map.js';
export { sayModeUse, warnOfPosition } from './mode-use.js';
export {
  type ModeShares,
  type Permit,
  type Permits,
  permits,
  permitsAt,
  sharesOf,
  type WorkingPoint,
} from './permits.js';
export * from './positions.js';
export { CABLE_DROP } from './process-map/cable-table.js';
export * as processMaps from './process-map/index.js';
export * from './qualification.js';
export * from './quantities.js';
export { parseQuantity, type QuantityRule, shortNumber } from './quantity.js';
export { parseSetup } from './setup.js';
export { linkedSetup, setupLink } from './setup-link.js';
export {
  SETUP_OPTIONS,
  type SetupInput,
  type SetupKey,
  type SetupOption,
} from './setup-options.js';
export { type Setup, setupSchema } from './setup-schema.js';
export * from './sourced.js';
export { baseRows, type Transition, transitionCurrent } from './transition.js';
export { PREQUALIFIED_MINIMUM, TRANSITION_ROWS, type TransitionRow } from './transition-rows.js';
export { cableDrop, feederVoltage, SOURCE_DROOP, sourceDrop } from './voltage-drop.js';
export { parseWireMaterial, WIRE_MATERIALS, type WireMaterial } from './wire-words.js';
export * from './wires.js';
export * from './working-point.js';
