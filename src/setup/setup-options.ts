/** `wire-diameter` as `wireDiameter`. */
type Camel<S extends string> = S extends `${infer Head}-${infer Rest}`
  ? `${Head}${Capitalize<Camel<Rest>>}`
  : S;

/** One thing a user may state about the set-up. Flags, help and the file's keys come from here. */
export interface SetupOption<Name extends string = string> {
  /** Long flag with its dashes. */
  flag: `--${Name}`;
  /** Key in the raw set-up and in a set-up file. */
  key: Camel<Name>;
  /** Other flags that mean the same. */
  aliases: readonly string[];
  /** Placeholder in the help. */
  valueName: string;
  /** Unit in which the value is kept; `null` for words. */
  unit: string | null;
  help: string;
  example: string;
}

const option = <const Name extends string>(
  flag: `--${Name}`,
  valueName: string,
  unit: string | null,
  example: string,
  help: string,
  aliases: readonly string[] = [],
): SetupOption<Name> => ({
  flag,
  key: flag
    .slice(2)
    .replace(/-([a-z])/gu, (_, letter: string) => letter.toUpperCase()) as Camel<Name>,
  aliases,
  valueName,
  unit,
  help,
  example,
});

const OPTIONS = [
  option('--wire-diameter', 'length', 'mm', '1.2mm', 'wire diameter, with its unit', ['--wire']),
  option(
    '--wire-material',
    'name',
    null,
    'carbon-steel',
    'carbon-steel, stainless-steel or aluminium, or a solid-wire classification',
  ),
  option('--gas', 'gas', null, 'Ar+18CO2', 'shielding gas: a mix, or an ISO 14175 symbol'),
  option('--set-voltage', 'volts', 'V', '24', 'voltage set, or read where --volts-at says'),
  option(
    '--volts-at',
    'place',
    null,
    'source',
    'where the set voltage holds: source, feeder or arc',
  ),
  option('--wire-feed', 'speed', 'm/min', '8m/min', 'wire feed speed, with its unit'),
  option('--expect', 'mode', null, 'spray', 'mode that is wanted'),
  option(
    '--stick-out',
    'length',
    'mm',
    '15mm',
    'wire from the contact tip to the arc, with its unit',
  ),
  option('--polarity', 'polarity', null, 'dcep', 'dcep, dcen or ac'),
  option(
    '--source',
    'kind',
    null,
    'steady',
    'programme the source is meant to run: steady or pulsed',
  ),
  option('--source-volts', 'volts', 'V', '24.5', 'voltage measured at the source while welding'),
  option(
    '--feeder-volts',
    'volts',
    'V',
    '22.5',
    'voltage measured at the wire feeder while welding',
  ),
  option('--arc-volts', 'volts', 'V', '21.5', 'voltage measured beside the arc while welding'),
  option('--measured-current', 'amps', 'A', '180', 'mean current measured while welding'),
  option('--trace-volts-at', 'place', null, 'feeder', 'where a recorded voltage trace was taken'),
  option('--source-slope', 'slope', 'V/100A', '2.5V/100A', "droop of the source's output"),
  option('--cable-length', 'length', 'm', '15m', 'welding cable, one way, electrode side'),
  option('--travel-speed', 'speed', 'mm/min', '300mm/min', 'travel speed, for the heat input'),
  option('--plate', 'thickness', 'mm', '5mm', 'plate thickness'),
  option(
    '--bead-length',
    'length',
    'mm',
    '300mm',
    'length of the bead of this run, for its heat input',
  ),
  option(
    '--position',
    'position',
    null,
    '3G',
    'welding position by AWS or ISO 6947, such as 3G or PF',
  ),
];

/** Every set-up option, in the order of the help. Each also takes `unknown`. */
export const SETUP_OPTIONS: readonly SetupOption[] = OPTIONS;

/** Name of one thing that may be stated, as in a set-up file: `wireDiameter`, `gas`, `setVoltage`, … */
export type SetupKey = (typeof OPTIONS)[number]['key'];

/**
 * A set-up as a person states it: text with its unit (`'1.2mm'`, `'Ar+18CO2'`), volts or amperes as numbers,
 * or `'unknown'`. What is left out is not stated.
 */
export type SetupInput = { readonly [Key in SetupKey]?: string | number };
