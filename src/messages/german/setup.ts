import type { SetupParams } from '../rooms/setup.js';
import type { CatalogueOf } from '../writer.js';
import { AT_FEEDER, PROCEDURE } from './glossary.js';
import { PLACES } from './names.js';

export const SETUP: CatalogueOf<SetupParams> = {
  'gas-word-read-as': ({ stated, gas }, write) =>
    `„${stated}“ wurde als ${write.gas(gas)} gelesen, wie es meist gemeint ist; das Flaschenschild lesen.`,
  'gas-read-as': ({ stated, gas }, write) =>
    `„${stated}“ nennt kein zweites Gas; gelesen als ${write.gas(gas)}, wie üblich gemeint.`,
  'unusual-pair': ({ pair, gas }, write) =>
    pair === 'stainless-in-much-co2'
      ? `Nichtrostender Draht in ${write.gas(gas)}: Viel CO2 kohlt das Schweißgut auf; üblich sind Gase mit wenigen Prozent. Nach ${PROCEDURE.dative} arbeiten.`
      : `Unlegierter Draht in ${write.gas(gas)}: Ohne etwas CO2 oder Sauerstoff wandert der Lichtbogen meist.`,
  'voltage-set': ({ setV, feederV }, write) =>
    `${write.short(setV, 1)} V eingestellt, genommen als ${write.span(feederV)} V ${AT_FEEDER}`,
  'voltage-measured': ({ volts, place, by }, write) => {
    const who = by === 'trace' ? 'als Mittel der Messreihe' : 'gemessen';
    const where = place === 'trace' ? 'an einer nicht angegebenen Stelle' : PLACES[place];
    return `${write.fixed(volts, 1)} V ${who} ${where}`;
  },
  'current-measured': ({ currentA }, write) => `${write.plain(Math.round(currentA))} A gemessen`,
  'current-from-feed': ({ currentA }, write) =>
    `${write.span(currentA, 0)} A aus dem Drahtvorschub geschätzt`,
};
