import { systemOfLocale, type UnitSystem } from '../../../core/index.js';

/** BCP 47 extension for the measurement system of the United States (Unicode locale key `ms`). */
const INCH = '-u-ms-ussystem';

/** Language and units of the page in one tag, as pictures are asked for and marked with. */
export const tagOf = (lang: string, units: UnitSystem): string =>
  units === 'inch' ? `${lang}${INCH}` : lang;

/** Units that such a tag names. */
export const unitsOfTag = (tag: string): UnitSystem => (tag.endsWith(INCH) ? 'inch' : 'metric');

/** What was chosen here before, else what the device's first language goes with. */
export function chooseUnits(asked: string | null, device: readonly string[]): UnitSystem {
  if (asked === 'inch' || asked === 'metric') return asked;
  return systemOfLocale(device[0]);
}
