import type { UnitSystem } from '../../../core/index.js';
import { WIRE_SIZES } from '../../../setup/index.js';
import type { Words } from '../words/index.js';

/** One line of a list to pick from. */
export interface Choice {
  value: string;
  /** What stands on it where that is not the value itself. */
  name?: string;
  /** The same in other words of the trade. */
  also?: string;
}

/** Sizes as sold, in the units of the reader, the other beside. */
export function wireChoices(units: UnitSystem): Choice[] {
  return WIRE_SIZES.map(({ name, soldAsMm }) => {
    const mm = `${soldAsMm.toFixed(1)} mm`;
    return units === 'inch' ? { value: name, also: mm } : { value: mm, also: name };
  });
}

/**
 * Gases by the words of the shop, with what is in the bottle. 98/2 is left out on purpose: it may be argon with CO2
 * or with oxygen, which are told apart below.
 */
export const GAS_CHOICES: readonly Choice[] = [
  { value: '75/25', also: 'C25, Ar + 25 % CO2' },
  { value: '82/18', also: 'Ar + 18 % CO2' },
  { value: '90/10', also: 'C10, Ar + 10 % CO2' },
  { value: '92/8', also: 'C8, Ar + 8 % CO2' },
  { value: 'M21', also: 'Ar + 15–25 % CO2' },
  { value: 'CO2', also: 'C1, 100 %' },
  { value: 'Ar+2CO2', also: 'M12' },
  { value: 'Ar+2O2', also: 'M13' },
  { value: 'Ar', also: 'I1, 100 %' },
];

/** Unit in which a number is put in. */
export function padUnit(key: 'setVoltage' | 'wireFeed', units: UnitSystem): string {
  if (key === 'setVoltage') return 'V';
  return units === 'inch' ? 'in/min' : 'm/min';
}

/** A value as the reader writes numbers; what is no number stays as it is. */
export function shownValue(text: string, { view }: Pick<Words, 'view'>): string {
  return /^\d*\.\d+( |$)/.test(text) ? view.numbers.decimal(text) : text;
}
