import type { GasReading, QuantityName, RefusalParams } from '../rooms/refusals.js';
import type { CatalogueOf } from '../writer.js';
import { AT_FEEDER } from './glossary.js';
import { PLACES } from './names.js';

const QUANTITIES: Readonly<Record<QuantityName, string>> = {
  'wire diameter': 'Drahtdurchmesser',
  'stick-out': 'Freies Drahtende',
  'plate thickness': 'Blechdicke',
  'wire feed': 'Drahtvorschub',
  'travel speed': 'Schweißgeschwindigkeit',
  'set voltage': 'Eingestellte Spannung',
  'measured voltage': 'Gemessene Spannung',
  'measured current': 'Gemessener Strom',
  'cable length': 'Leitungslänge',
  'source slope': 'Neigung der Kennlinie',
};

const READINGS: Readonly<Record<NonNullable<GasReading['is']>, string>> = {
  'argon-co2': 'Argon mit CO2',
  'argon-last': 'Argon mit CO2, Argon zuletzt genannt',
  'argon-oxygen': 'Argon mit Sauerstoff',
  'helium-argon': 'Helium mit Argon',
  '2-co2': 'Argon mit 2 % CO2',
  'co2-oxygen': 'CO2 mit Sauerstoff',
};

const reading = ({ written, is }: GasReading): string =>
  is === null ? written : `${written} (${READINGS[is]})`;

/** Values that are given as examples are written as they can be typed. */
export const REFUSALS: CatalogueOf<RefusalParams> = {
  'value-without-unit': ({ quantity, stated }) =>
    `${QUANTITIES[quantity]} „${stated}“: Die Einheit fehlt.`,
  'value-of-wrong-unit': ({ quantity, stated, unit }) =>
    `${QUANTITIES[quantity]} „${stated}“: Die Einheit „${unit}“ passt nicht.`,
  'value-impossible': ({ quantity, stated, is }, write) => {
    const same = is === null ? '' : `, also ${write.figures(is.value, 4)} ${is.unit}`;
    return `${QUANTITIES[quantity]} „${stated}“${same}: Das kann hier nicht sein.`;
  },
  'value-no-number': ({ quantity, stated }) =>
    `${QUANTITIES[quantity]} „${stated}“: Das ist keine Zahl mit Einheit.`,
  'gas-not-understood': ({ stated }) => `Das Gas „${stated}“ ist nicht zu verstehen.`,
  'gas-against-symbol': ({ stated, symbol, mix }, write) =>
    `Das Gas „${stated}“ nennt ${symbol}, aber ${write.gas(mix)} ist ${mix.symbol}.`,
  'gas-shares-open': ({ stated }) => `Das Gas „${stated}“ lässt mehr als einen Anteil offen.`,
  'gas-parts-sum': ({ stated, percent }, write) =>
    `Die Teile des Gases „${stated}“ ergeben zusammen ${write.short(percent, 3)} %.`,
  'gas-ambiguous': ({ stated, readings }) =>
    `Das Gas „${stated}“ ist mehrdeutig: ${readings.map(reading).join('; ')}.`,
  'aluminium-in-active-gas': ({ gas }, write) =>
    `Aluminiumdraht lässt sich mit ${write.gas(gas)} nicht schweißen: Das aktive Gas oxidiert das Schmelzbad.`,
  'voltages-rise': ({ before, beforeV, after, afterV }, write) =>
    `Angegeben sind ${write.plain(afterV)} V ${PLACES[after]} und davor ${write.plain(beforeV)} V ${PLACES[before]}.`,
  'pulses-from-steady-source': () =>
    'Gewünscht ist der Impulslichtbogen, aber die Stromquelle ist als ungepulst angegeben.',
  'expect-quantity': ({ min, max, unit, example }, write) =>
    `${write.figures(min, 4)} bis ${write.figures(max, 4)} ${unit}, etwa ${example.replace(' or ', ' oder ')}`,
  'expect-like': ({ example }) => `etwas wie ${example.replace(' or ', ' oder ')}`,
  'expect-gas': () =>
    'ein Gemisch wie Ar+18CO2, 75/25, C25 oder 98/2 O2, oder ein Kurzzeichen nach ISO 14175',
  'expect-agreement': () => 'Kurzzeichen und Zusammensetzung, die zueinander passen',
  'expect-shares': () => 'Prozente für jedes Gas außer einem',
  'expect-sum': () => 'Teile, die zusammen 100 % ergeben',
  'expect-one-meaning': () => 'ein eindeutig benanntes Gas',
  'expect-inert-gas': () =>
    'Argon, Helium oder beides gemischt (ISO 14175 I1, I2, I3) zu Aluminium',
  'expect-falling-voltages': () =>
    'eine Spannung, die von der Stromquelle über das Drahtvorschubgerät zum Lichtbogen fällt',
  'expect-pulsed-source': () => 'eine gepulste Stromquelle zum Impulslichtbogen',
  'did-you-mean': ({ guesses }, write) => `Gemeint: ${write.or(guesses)}?`,
  'check-value': () => 'Den Wert prüfen.',
  'number-with-unit': () => 'Eine Zahl mit ihrer Einheit angeben.',
  'dial-shows-taps': () =>
    `Zeigt der Drehknopf Stufen, die Spannung offen lassen und ${AT_FEEDER} beim Schweißen messen.`,
  'measure-while-welding': () => 'Beim Schweißen zwischen Draht und Werkstück messen, in Volt.',
  'name-whole-symbol': () => 'Das ganze Kurzzeichen nennen, etwa M21.',
  'name-each-gas': () => 'Jedes Gas des Gemischs mit seinen Prozenten nennen.',
  'give-mix-or-symbol': ({ symbol }) =>
    `Nur die Zusammensetzung nennen oder das Kurzzeichen ${symbol}.`,
  'write-like-mix': () => 'So schreiben: Ar+18CO2.',
  'check-numbers': () => 'Die Zahlen prüfen.',
  'write-one-of': ({ written }) => `Eines davon schreiben: ${written.join(', ')}.`,
  'check-gas-or-wire': () =>
    'Das Gas prüfen; ist der Draht aus Stahl, unlegierten Stahl als Drahtwerkstoff angeben.',
  'readings-swapped': () =>
    'Sind die beiden Ablesungen vertauscht oder zu verschiedenen Zeiten gemacht?',
  'pulsed-source-or-spray': () =>
    'Soll die Stromquelle gepulst laufen, oder ist der Sprühlichtbogen gewünscht?',
};
