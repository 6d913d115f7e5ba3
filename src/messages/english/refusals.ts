import type {
  ChoiceName,
  ExpectedParams,
  QuantityName,
  RefusalParams,
  RemedyParams,
} from '../rooms/refusals.js';
import type { CatalogueOf, Writer } from '../writer.js';

const number = (value: number | null, write: Writer): string =>
  value === null || !Number.isFinite(value) ? 'unknown' : write.figures(value, 4);

/** Names of quantities and choices are English words already. */
const what = (name: QuantityName | ChoiceName, stated: string): string => `The ${name} "${stated}"`;

const HINTS = {
  'tap-numbers':
    'If the dial shows tap numbers, say unknown and measure the volts at the feeder while welding.',
  'measure-while-welding': 'Measure while welding, between wire and work, in volts.',
} as const;

export const REFUSALS: CatalogueOf<RefusalParams> = {
  refusal: ({ what: happened, expected, todo }, write) =>
    `${write.say(happened)} Expected ${write.say(expected)}. ${write.say(todo)}`,
  'quantity-without-unit': ({ quantity, stated }) => `${what(quantity, stated)} has no unit.`,
  'quantity-wrong-unit': ({ quantity, stated, unit }) =>
    `${what(quantity, stated)} has the unit "${unit}".`,
  'quantity-no-number': ({ quantity, stated }) =>
    `${what(quantity, stated)} is not a number with a unit.`,
  'quantity-impossible': ({ quantity, stated, inBase }, write) => {
    const same = inBase === null ? '' : `, which is ${number(inBase.value, write)} ${inBase.unit},`;
    return `${what(quantity, stated)}${same} is not possible here.`;
  },
  'gas-not-understood': ({ stated }) => `The gas "${stated}" is not understood.`,
  'gas-contradicts-itself': ({ stated, says, gas }, write) =>
    `The gas "${stated}" says ${says}, but ${write.gas(gas)} is ${gas.symbol}.`,
  'gas-leaves-open': ({ stated }) => `The gas "${stated}" leaves more than one share open.`,
  'gas-parts-sum': ({ stated, sumPercent }, write) =>
    `The parts of the gas "${stated}" add up to ${write.short(sumPercent, 3)} %.`,
  'gas-ambiguous': ({ stated, meanings }) => {
    const each = meanings.map(({ write, means }) =>
      means === null ? write : `${write} (${means})`,
    );
    return `The gas "${stated}" has more than one meaning: ${each.join('; ')}.`;
  },
  'aluminium-in-active-gas': ({ gas }, write) =>
    `Aluminium wire with ${write.gas(gas)} cannot be welded: the active gas oxidises the pool.`,
  'volts-rise': ({ place, placeV, next, nextV }, write) =>
    `The ${next} is said to stand at ${write.short(nextV, 1)} V and the ${place} before it at ${write.short(placeV, 1)} V.`,
  'pulses-of-steady-source': () => 'Pulsed spray is wanted, but the source is said to run steady.',
  'choice-not-known': ({ choice, stated }) => `${what(choice, stated)} is not known.`,
  'mode-not-given': ({ stated }) => `${what('wanted mode', stated)} is not one this tool names.`,
  'wire-cored': ({ stated }) => `"${stated}" is a flux-cored or metal-cored wire.`,
  'wire-not-known': ({ stated }) => `The wire material "${stated}" is not one this tool knows.`,
};

export const EXPECTED: CatalogueOf<ExpectedParams> = {
  'expected-quantity': ({ quantity, min, max, unit, example }, write) =>
    `a ${quantity} from ${number(min, write)} to ${number(max, write)} ${unit}, such as ${example}, or unknown`,
  'expected-like': ({ example }) => `something like ${example}, or unknown`,
  'expected-gas': () =>
    'a mix such as Ar+18CO2, 75/25, C25 or 98/2 O2, an ISO 14175 symbol, or unknown',
  'expected-symbol-and-mix': () => 'a symbol and a composition that agree',
  'expected-shares-but-one': () => 'a per cent for every gas but one',
  'expected-hundred': () => 'parts that add up to 100 %',
  'expected-clear-gas': () => 'a gas named without doubt',
  'expected-inert-gas': () =>
    'argon, helium or a mix of the two (ISO 14175 I1, I2, I3) with aluminium',
  'expected-falling-volts': () => 'a voltage that falls from the source to the feeder to the arc',
  'expected-pulsed-source': () => '--source pulsed with --expect pulsed-spray',
  'expected-choice': ({ choices }) => `${choices.join(', ')}, or unknown`,
  'expected-solid-wire': () => 'a solid wire of carbon steel, stainless steel or aluminium',
  'expected-wire': ({ materials }) =>
    `${materials.join(', ')}, a solid-wire classification such as ER70S-6, or unknown`,
};

export const REMEDIES: CatalogueOf<RemedyParams> = {
  'did-you-mean': ({ meanings, hint }, write) => {
    const guess = meanings.length > 0 ? `Did you mean ${write.or(meanings)}?` : 'Check the value.';
    return hint === null ? guess : `${guess} ${HINTS[hint]}`;
  },
  'give-number-and-unit': () => 'Give one number and its unit.',
  'name-whole-symbol': () => 'Name the whole symbol, such as M21.',
  'name-each-gas': () => 'Name each gas of the mix with its per cent.',
  'mix-or-symbol': ({ symbol }) => `Give the composition alone, or the symbol ${symbol}.`,
  'write-like-mix': () => 'Write it like Ar+18CO2.',
  'check-numbers': () => 'Check the numbers.',
  'write-one-of': ({ writings }) => `Write one of them: ${writings.join(', ')}.`,
  'check-gas-or-wire': () =>
    'Check the gas; if the wire is steel, state --wire-material carbon-steel.',
  'readings-swapped': () => 'Were the two readings swapped, or taken at different moments?',
  'pulsed-source-or-spray': () => 'Did you mean --source pulsed, or --expect spray?',
  'choose-one': () => 'Choose one of these.',
  'unsure-never-label': () =>
    'Rotating spray and a buried arc are answered with "unsure", never with a label.',
  'solid-wire-only': () =>
    'This tool was made for solid wire only; no verdict on a cored wire would be worth anything.',
  'other-wire-unknown': () =>
    'For copper or bronze and other wires no bands are held here: say unknown.',
};
