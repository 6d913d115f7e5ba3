import type { SetupParams } from '../rooms/setup.js';
import type { CatalogueOf } from '../writer.js';

export const SETUP: CatalogueOf<SetupParams> = {
  'gas-word-read-as': ({ stated, gas }, write) =>
    `"${stated}" was read as ${write.gas(gas)}, the usual meaning; read the label of the cylinder.`,
  'gas-read-as': ({ stated, gas }, write) =>
    `"${stated}" names no second gas; read as ${write.gas(gas)}, the common meaning.`,
  'unusual-pair': ({ pair, gas }, write) =>
    pair === 'stainless-in-much-co2'
      ? `Stainless wire in ${write.gas(gas)}: much CO2 carries carbon into the weld; usual gases hold a few per cent. Follow the qualified procedure.`
      : `Carbon-steel wire in ${write.gas(gas)}: the arc usually wanders without some CO2 or oxygen.`,
  'voltage-set': ({ setV, feederV }, write) =>
    `${write.short(setV, 1)} V set, taken as ${write.span(feederV)} V at the feeder`,
  'voltage-measured': ({ volts, place, by }, write) => {
    const who = by === 'trace' ? 'mean of the trace' : 'measured';
    const where = place === 'trace' ? 'at a place not stated' : `at the ${place}`;
    return `${write.fixed(volts, 1)} V ${who} ${where}`;
  },
  'current-measured': ({ currentA }, write) => `${write.plain(Math.round(currentA))} A measured`,
  'current-from-feed': ({ currentA }, write) =>
    `${write.span(currentA, 0)} A estimated from the wire feed`,
};
