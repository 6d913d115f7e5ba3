/** Systems in which quantities are shown. Everything is kept in metric base units. */
export const UNIT_SYSTEMS = ['metric', 'inch'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/** Quantities whose unit differs between the systems; volts, amperes and seconds do not. */
export const UNIT_QUANTITIES = [
  'feed',
  'travel',
  'diameter',
  'length',
  'cable',
  'deposition',
  'energy',
  'temperature',
] as const;
export type UnitQuantity = (typeof UNIT_QUANTITIES)[number];

/** How a quantity is shown in one system. */
export interface ShownUnit {
  unit: string;
  /** Base value to shown value: `shown = base · factor + offset`. */
  factor: number;
  offset: number;
  /** Decimals shown. */
  digits: number;
}

const IN_MM = 25.4;
/** Kilograms of a pound. */
export const LB_KG = 0.45359237;

const shown = (unit: string, factor: number, digits: number, offset = 0): ShownUnit => ({
  unit,
  factor,
  offset,
  digits,
});

/**
 * Units by system. Base units: feed m/min, travel mm/min, diameter and length mm, cable m, deposition
 * kg/h, energy per length kJ/mm, temperature °C. Factors follow from 1 in = 25.4 mm and 1 lb =
 * 0.45359237 kg (exact, international yard and pound agreement, 1959).
 */
const UNITS: Readonly<Record<UnitSystem, Readonly<Record<UnitQuantity, ShownUnit>>>> = {
  metric: {
    feed: shown('m/min', 1, 1),
    travel: shown('mm/min', 1, 0),
    diameter: shown('mm', 1, 2),
    length: shown('mm', 1, 0),
    cable: shown('m', 1, 1),
    deposition: shown('kg/h', 1, 1),
    energy: shown('kJ/mm', 1, 2),
    temperature: shown('°C', 1, 0),
  },
  inch: {
    feed: shown('in/min', 1000 / IN_MM, 0),
    travel: shown('in/min', 1 / IN_MM, 1),
    diameter: shown('in', 1 / IN_MM, 3),
    length: shown('in', 1 / IN_MM, 2),
    cable: shown('ft', 1000 / (12 * IN_MM), 0),
    deposition: shown('lb/h', 1 / LB_KG, 1),
    energy: shown('kJ/in', IN_MM, 0),
    temperature: shown('°F', 1.8, 0, 32),
  },
};

/** The unit in which a system shows a quantity. */
export const unitOf = (quantity: UnitQuantity, system: UnitSystem): ShownUnit =>
  UNITS[system][quantity];

/** A base value in the unit of a system, not rounded. */
export function inSystem(base: number, quantity: UnitQuantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return base * factor + offset;
}

/** A value in the unit of a system as its base value. */
export function fromSystem(value: number, quantity: UnitQuantity, system: UnitSystem): number {
  const { factor, offset } = unitOf(quantity, system);
  return (value - offset) / factor;
}

/** `8.5 m/min` or `335 in/min`: number and unit, trailing zeros dropped, English decimal point. */
export function withUnit(base: number, quantity: UnitQuantity, system: UnitSystem): string {
  return `${numberText(base, quantity, system)} ${unitOf(quantity, system).unit}`;
}

/** `8–9.5 m/min`; one number where both ends are shown alike. */
export function rangeWithUnit(
  { min, max }: { min: number; max: number },
  quantity: UnitQuantity,
  system: UnitSystem,
): string {
  const [low, high] = [min, max].map((base) => numberText(base, quantity, system));
  const number = low === high ? low : `${low}–${high}`;
  return `${number} ${unitOf(quantity, system).unit}`;
}

function numberText(base: number, quantity: UnitQuantity, system: UnitSystem): string {
  return String(Number(inSystem(base, quantity, system).toFixed(unitOf(quantity, system).digits)));
}

/**
 * System that people of a locale weld in: inches in the United States, millimetres elsewhere. Takes a BCP 47
 * tag (`en-US`) or a POSIX one (`en_US.UTF-8`); metric where no region is named.
 */
export function systemOfLocale(locale: string | undefined): UnitSystem {
  const region = /^[a-z]{2,3}[-_](?:[A-Za-z]{4}[-_])?([A-Za-z]{2})(?:[-_.@]|$)/u.exec(locale ?? '');
  return region?.[1]?.toUpperCase() === 'US' ? 'inch' : 'metric';
}
