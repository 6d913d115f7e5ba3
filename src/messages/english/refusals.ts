import type { GasReading, RefusalParams } from '../rooms/refusals.js';
import type { CatalogueOf } from '../writer.js';

const READINGS: Readonly<Record<NonNullable<GasReading['is']>, string>> = {
  'argon-co2': 'argon with CO2',
  'argon-last': 'argon with CO2, argon named last',
  'argon-oxygen': 'argon with oxygen',
  'helium-argon': 'helium with argon',
  '2-co2': 'argon with 2 % CO2',
  'co2-oxygen': 'CO2 with oxygen',
};

const reading = ({ written, is }: GasReading): string =>
  is === null ? written : `${written} (${READINGS[is]})`;

export const REFUSALS: CatalogueOf<RefusalParams> = {
  'value-without-unit': ({ quantity, stated }) => `The ${quantity} "${stated}" has no unit.`,
  'value-of-wrong-unit': ({ quantity, stated, unit }) =>
    `The ${quantity} "${stated}" has the unit "${unit}".`,
  'value-impossible': ({ quantity, stated, is }, write) => {
    const same = is === null ? '' : `, which is ${write.figures(is.value, 4)} ${is.unit},`;
    return `The ${quantity} "${stated}"${same} is not possible here.`;
  },
  'value-no-number': ({ quantity, stated }) =>
    `The ${quantity} "${stated}" is not a number with a unit.`,
  'gas-not-understood': ({ stated }) => `The gas "${stated}" is not understood.`,
  'gas-against-symbol': ({ stated, symbol, mix }, write) =>
    `The gas "${stated}" says ${symbol}, but ${write.gas(mix)} is ${mix.symbol}.`,
  'gas-shares-open': ({ stated }) => `The gas "${stated}" leaves more than one share open.`,
  'gas-parts-sum': ({ stated, percent }, write) =>
    `The parts of the gas "${stated}" add up to ${write.short(percent, 3)} %.`,
  'gas-ambiguous': ({ stated, readings }) =>
    `The gas "${stated}" has more than one meaning: ${readings.map(reading).join('; ')}.`,
  'aluminium-in-active-gas': ({ gas }, write) =>
    `Aluminium wire with ${write.gas(gas)} cannot be welded: the active gas oxidises the pool.`,
  'voltages-rise': ({ before, beforeV, after, afterV }, write) =>
    `The ${after} is said to stand at ${write.plain(afterV)} V and the ${before} before it at ${write.plain(beforeV)} V.`,
  'pulses-from-steady-source': () =>
    'Pulsed spray is wanted, but the source is said to run steady.',
  'expect-quantity': ({ quantity, min, max, unit, example }, write) =>
    `a ${quantity} from ${write.figures(min, 4)} to ${write.figures(max, 4)} ${unit}, such as ${example}, or unknown`,
  'expect-like': ({ example }) => `something like ${example}, or unknown`,
  'expect-gas': () =>
    'a mix such as Ar+18CO2, 75/25, C25 or 98/2 O2, an ISO 14175 symbol, or unknown',
  'expect-agreement': () => 'a symbol and a composition that agree',
  'expect-shares': () => 'a per cent for every gas but one',
  'expect-sum': () => 'parts that add up to 100 %',
  'expect-one-meaning': () => 'a gas named without doubt',
  'expect-inert-gas': () =>
    'argon, helium or a mix of the two (ISO 14175 I1, I2, I3) with aluminium',
  'expect-falling-voltages': () => 'a voltage that falls from the source to the feeder to the arc',
  'expect-pulsed-source': () => '--source pulsed with --expect pulsed-spray',
  'did-you-mean': ({ guesses }, write) => `Did you mean ${write.or(guesses)}?`,
  'check-value': () => 'Check the value.',
  'number-with-unit': () => 'Give one number and its unit.',
  'dial-shows-taps': () =>
    'If the dial shows tap numbers, say unknown and measure the volts at the feeder while welding.',
  'measure-while-welding': () => 'Measure while welding, between wire and work, in volts.',
  'name-whole-symbol': () => 'Name the whole symbol, such as M21.',
  'name-each-gas': () => 'Name each gas of the mix with its per cent.',
  'give-mix-or-symbol': ({ symbol }) => `Give the composition alone, or the symbol ${symbol}.`,
  'write-like-mix': () => 'Write it like Ar+18CO2.',
  'check-numbers': () => 'Check the numbers.',
  'write-one-of': ({ written }) => `Write one of them: ${written.join(', ')}.`,
  'check-gas-or-wire': () =>
    'Check the gas; if the wire is steel, state --wire-material carbon-steel.',
  'readings-swapped': () => 'Were the two readings swapped, or taken at different moments?',
  'pulsed-source-or-spray': () => 'Did you mean --source pulsed, or --expect spray?',
};
