import type {
  ChoiceName,
  ExpectedParams,
  GasMeaning,
  QuantityName,
  RefusalParams,
  RemedyParams,
} from '../rooms/refusals.js';
import type { CatalogueOf, Writer } from '../writer.js';
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
  'bead length': 'Raupenlänge',
  'heat input': 'Wärmeeinbringung',
};

const CHOICES: Readonly<Record<ChoiceName, string>> = {
  'wanted mode': 'Gewünschte Lichtbogenart',
  polarity: 'Polung',
  'place of the voltage': 'Ort der Spannung',
  source: 'Programm der Stromquelle',
  position: 'Schweißposition',
};

const MEANINGS: Readonly<Record<GasMeaning, string>> = {
  'argon with CO2': 'Argon mit CO2',
  'argon with CO2, argon named last': 'Argon mit CO2, Argon zuletzt genannt',
  'argon with oxygen': 'Argon mit Sauerstoff',
  'helium with argon': 'Helium mit Argon',
  'argon with 2 % CO2': 'Argon mit 2 % CO2',
  'CO2 with oxygen': 'CO2 mit Sauerstoff',
};

const HINTS = {
  'tap-numbers': `Zeigt der Drehknopf Stufen, die Spannung offen lassen und ${AT_FEEDER} beim Schweißen messen.`,
  'measure-while-welding': 'Beim Schweißen zwischen Draht und Werkstück messen, in Volt.',
} as const;

const number = (value: number | null, write: Writer): string =>
  value === null || !Number.isFinite(value) ? 'unbekannt' : write.figures(value, 4);

/** Values and words that can be typed, as they are typed. */
const typed = (words: readonly string[]): string => words.map((one) => `„${one}“`).join(', ');
const example = (text: string): string => text.replace(' or ', ' oder ');

export const REFUSALS: CatalogueOf<RefusalParams> = {
  refusal: ({ what, expected, todo }, write) =>
    `${write.say(what)} Erwartet: ${write.say(expected)}. ${write.say(todo)}`,
  'quantity-without-unit': ({ quantity, stated }) =>
    `${QUANTITIES[quantity]} „${stated}“: Die Einheit fehlt.`,
  'quantity-wrong-unit': ({ quantity, stated, unit }) =>
    `${QUANTITIES[quantity]} „${stated}“: Die Einheit „${unit}“ passt nicht.`,
  'quantity-no-number': ({ quantity, stated }) =>
    `${QUANTITIES[quantity]} „${stated}“: Das ist keine Zahl mit Einheit.`,
  'quantity-impossible': ({ quantity, stated, inBase }, write) => {
    const same = inBase === null ? '' : `, also ${number(inBase.value, write)} ${inBase.unit}`;
    return `${QUANTITIES[quantity]} „${stated}“${same}: Das kann hier nicht sein.`;
  },
  'gas-not-understood': ({ stated }) => `Das Gas „${stated}“ ist nicht zu verstehen.`,
  'gas-contradicts-itself': ({ stated, says, gas }, write) =>
    `Das Gas „${stated}“ nennt ${says}, aber ${write.gas(gas)} ist ${gas.symbol}.`,
  'gas-leaves-open': ({ stated }) => `Das Gas „${stated}“ lässt mehr als einen Anteil offen.`,
  'gas-parts-sum': ({ stated, sumPercent }, write) =>
    `Die Teile des Gases „${stated}“ ergeben zusammen ${write.short(sumPercent, 3)} %.`,
  'gas-ambiguous': ({ stated, meanings }) => {
    const each = meanings.map(({ write, means }) =>
      means === null ? write : `${write} (${MEANINGS[means]})`,
    );
    return `Das Gas „${stated}“ ist mehrdeutig: ${each.join('; ')}.`;
  },
  'aluminium-in-active-gas': ({ gas }, write) =>
    `Aluminiumdraht lässt sich mit ${write.gas(gas)} nicht schweißen: Das aktive Gas oxidiert das Schmelzbad.`,
  'volts-rise': ({ place, placeV, next, nextV }, write) =>
    `Angegeben sind ${write.short(nextV, 1)} V ${PLACES[next]} und davor ${write.short(placeV, 1)} V ${PLACES[place]}.`,
  'pulses-of-steady-source': () =>
    'Gewünscht ist der Impulslichtbogen, aber die Stromquelle ist als ungepulst angegeben.',
  'choice-not-known': ({ choice, stated }) => `${CHOICES[choice]} „${stated}“ ist nicht bekannt.`,
  'mode-not-given': ({ stated }) =>
    `Gewünschte Lichtbogenart „${stated}“: Sie gehört nicht zu denen, die dieses Werkzeug nennt.`,
  'wire-cored': ({ stated }) => `„${stated}“ ist ein Fülldraht.`,
  'wire-not-known': ({ stated }) => `Der Drahtwerkstoff „${stated}“ ist hier nicht bekannt.`,
};

export const EXPECTED: CatalogueOf<ExpectedParams> = {
  'expected-quantity': ({ min, max, unit, example: one }, write) =>
    `${number(min, write)} bis ${number(max, write)} ${unit}, etwa ${example(one)}`,
  'expected-like': ({ example: one }) => `etwas wie ${example(one)}`,
  'expected-gas': () =>
    'ein Gemisch wie Ar+18CO2, 75/25, C25 oder 98/2 O2, oder ein Kurzzeichen nach ISO 14175',
  'expected-symbol-and-mix': () => 'Kurzzeichen und Zusammensetzung, die zueinander passen',
  'expected-shares-but-one': () => 'Prozente für jedes Gas außer einem',
  'expected-hundred': () => 'Teile, die zusammen 100 % ergeben',
  'expected-clear-gas': () => 'ein eindeutig benanntes Gas',
  'expected-inert-gas': () =>
    'Argon, Helium oder beides gemischt (ISO 14175 I1, I2, I3) zu Aluminium',
  'expected-falling-volts': () =>
    'eine Spannung, die von der Stromquelle über das Drahtvorschubgerät zum Lichtbogen fällt',
  'expected-pulsed-source': () => 'eine gepulste Stromquelle zum Impulslichtbogen',
  'expected-choice': ({ choices }) => typed(choices),
  'expected-solid-wire': () =>
    'ein Massivdraht aus unlegiertem Stahl, nichtrostendem Stahl oder Aluminium',
  'expected-wire': ({ materials }) =>
    `${typed(materials)} oder eine Massivdraht-Bezeichnung wie ER70S-6`,
};

export const REMEDIES: CatalogueOf<RemedyParams> = {
  'did-you-mean': ({ meanings, hint }, write) => {
    const guess = meanings.length > 0 ? `Gemeint: ${write.or(meanings)}?` : 'Den Wert prüfen.';
    return hint === null ? guess : `${guess} ${HINTS[hint]}`;
  },
  'give-number-and-unit': () => 'Eine Zahl mit ihrer Einheit angeben.',
  'name-whole-symbol': () => 'Das ganze Kurzzeichen nennen, etwa M21.',
  'name-each-gas': () => 'Jedes Gas des Gemischs mit seinen Prozenten nennen.',
  'mix-or-symbol': ({ symbol }) => `Nur die Zusammensetzung nennen oder das Kurzzeichen ${symbol}.`,
  'write-like-mix': () => 'So schreiben: Ar+18CO2.',
  'check-numbers': () => 'Die Zahlen prüfen.',
  'write-one-of': ({ writings }) => `Eines davon schreiben: ${writings.join(', ')}.`,
  'check-gas-or-wire': () =>
    'Das Gas prüfen; ist der Draht aus Stahl, unlegierten Stahl als Drahtwerkstoff angeben.',
  'readings-swapped': () =>
    'Sind die beiden Ablesungen vertauscht oder zu verschiedenen Zeiten gemacht?',
  'pulsed-source-or-spray': () =>
    'Soll die Stromquelle gepulst laufen, oder ist der Sprühlichtbogen gewünscht?',
  'choose-one': () => 'Eines davon wählen.',
  'unsure-never-label': () =>
    'Rotierender Lichtbogen und eingetauchter Lichtbogen werden mit „unsicher“ beantwortet, nie mit einem Namen.',
  'solid-wire-only': () =>
    'Dieses Werkzeug ist nur für Massivdraht gemacht; ein Urteil über Fülldraht wäre nichts wert.',
  'other-wire-unknown': () =>
    'Für Kupfer, Bronze und andere Drähte sind hier keine Bereiche bekannt: offen lassen.',
};
