import type { QuantityRule } from './quantity.js';

/** Millimetres in an inch, exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

// Smallest and largest values below: what the process can be run with, kept wide (common practice, no source).

const LENGTH_MM: Readonly<Record<string, number>> = {
  mm: 1,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  '″': MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  cm: 10,
};

const SPEED_M_PER_MIN: Readonly<Record<string, number>> = {
  'm/min': 1,
  'in/min': MM_PER_INCH / 1000,
  ipm: MM_PER_INCH / 1000,
  'inch/min': MM_PER_INCH / 1000,
  'inches/min': MM_PER_INCH / 1000,
  '"/min': MM_PER_INCH / 1000,
  'mm/s': 0.06,
  'cm/min': 0.01,
  'mm/min': 0.001,
};

export const WIRE_DIAMETER: QuantityRule = {
  name: 'wire diameter',
  baseUnit: 'mm',
  units: LENGTH_MM,
  min: 0.5,
  max: 2.5,
  bareAllowed: false,
  example: '1.2mm or 0.045in',
};

export const STICK_OUT: QuantityRule = {
  name: 'stick-out',
  baseUnit: 'mm',
  units: LENGTH_MM,
  min: 3,
  max: 60,
  bareAllowed: false,
  example: '15mm or 5/8in',
};

export const PLATE_THICKNESS: QuantityRule = {
  name: 'plate thickness',
  baseUnit: 'mm',
  units: LENGTH_MM,
  min: 0.4,
  max: 300,
  bareAllowed: false,
  example: '5mm or 3/16in',
};

export const BEAD_LENGTH: QuantityRule = {
  name: 'bead length',
  baseUnit: 'mm',
  units: { ...LENGTH_MM, m: 1000 },
  min: 5,
  max: 100_000,
  bareAllowed: false,
  example: '300mm or 12in',
};

export const HEAT_INPUT: QuantityRule = {
  name: 'heat input',
  baseUnit: 'kJ/mm',
  units: {
    'kj/mm': 1,
    'kj/cm': 0.1,
    'kj/in': 1 / MM_PER_INCH,
    'j/mm': 0.001,
    'j/in': 0.001 / MM_PER_INCH,
  },
  min: 0.02,
  max: 20,
  bareAllowed: false,
  example: '1.2kJ/mm or 30kJ/in',
};

export const WIRE_FEED: QuantityRule = {
  name: 'wire feed',
  baseUnit: 'm/min',
  units: SPEED_M_PER_MIN,
  min: 0.8,
  max: 35,
  bareAllowed: false,
  example: '6m/min or 240in/min',
};

export const TRAVEL_SPEED: QuantityRule = {
  name: 'travel speed',
  baseUnit: 'mm/min',
  units: {
    'mm/min': 1,
    'cm/min': 10,
    'mm/s': 60,
    'in/min': MM_PER_INCH,
    ipm: MM_PER_INCH,
    'm/min': 1000,
  },
  min: 20,
  max: 6000,
  bareAllowed: false,
  example: '300mm/min or 12in/min',
};

const VOLTS = { v: 1, volt: 1, volts: 1 };

export const SET_VOLTAGE: QuantityRule = {
  name: 'set voltage',
  baseUnit: 'V',
  units: VOLTS,
  min: 10,
  max: 50,
  bareAllowed: true,
  example: '24',
  hint: 'tap-numbers',
};

export const MEASURED_VOLTAGE: QuantityRule = {
  name: 'measured voltage',
  baseUnit: 'V',
  units: VOLTS,
  min: 8,
  max: 60,
  bareAllowed: true,
  example: '21.5',
  hint: 'measure-while-welding',
};

export const CURRENT: QuantityRule = {
  name: 'measured current',
  baseUnit: 'A',
  units: { a: 1, amp: 1, amps: 1, ampere: 1, amperes: 1 },
  min: 15,
  max: 800,
  bareAllowed: true,
  example: '180',
};

export const CABLE_LENGTH: QuantityRule = {
  name: 'cable length',
  baseUnit: 'm',
  units: { m: 1, ft: 0.3048, "'": 0.3048, feet: 0.3048 },
  min: 0.5,
  max: 200,
  bareAllowed: false,
  example: '15m or 50ft',
};

export const SOURCE_SLOPE: QuantityRule = {
  name: 'source slope',
  baseUnit: 'V/100A',
  units: { 'v/100a': 1, 'mv/a': 0.1, mohm: 0.1, mω: 0.1 },
  min: 0,
  max: 60,
  bareAllowed: false,
  example: '2.5V/100A',
};
