import type { Sentence } from './german-sentences.js';
import type { PageWords } from './words.js';

/** The fields of a set-up, with what may stand in them. */
export const SETUP_FIELDS: PageWords['fields'] = {
  wireDiameter: { label: 'Drahtdurchmesser', hint: '0.9 mm' },
  gas: { label: 'Schutzgas', hint: 'Ar+18CO2' },
  setVoltage: { label: 'Eingestellte Spannung', hint: '18.5 V' },
  wireFeed: { label: 'Drahtvorschub', hint: '5 m/min' },
  expect: { label: 'Gewünschte Lichtbogenart', hint: '' },
  wireMaterial: { label: 'Drahtwerkstoff', hint: '' },
  voltsAt: { label: 'Spannung gilt an', hint: '' },
  stickOut: { label: 'Freies Drahtende', hint: '15 mm' },
  source: { label: 'Programm der Stromquelle', hint: '' },
  polarity: { label: 'Polung', hint: '' },
};

/** What is wrong with a set-up as typed on the page, what would be right, what to do. */
export const SETUP_SENTENCES: readonly Sentence[] = [
  [/^The ([a-z -]+) (".*") has no unit\.$/, '$1 $2: Die Einheit fehlt.'],
  [/^The ([a-z -]+) (".*") has the unit (".*")\.$/, '$1 $2: Die Einheit $3 passt nicht.'],
  [
    /^The ([a-z -]+) (".*"), which is (.+), is not possible here\.$/,
    '$1 $2, also $3, kann hier nicht sein.',
  ],
  [/^The ([a-z -]+) (".*") is not possible here\.$/, '$1 $2 kann hier nicht sein.'],
  [/^The ([a-z -]+) (".*") is not a number with a unit\.$/, '$1 $2 ist keine Zahl mit Einheit.'],
  [/^The gas (".*") is not understood\.$/, 'Das Gas $1 ist nicht zu verstehen.'],
  [/^The gas (".*") says (\S+), but (.+) is (\S+)\.$/, 'Das Gas $1 nennt $2, aber $3 ist $4.'],
  [
    /^The gas (".*") leaves more than one share open\.$/,
    'Das Gas $1 lässt mehr als einen Anteil offen.',
  ],
  [/^The parts of the gas (".*") add up to (.+)\.$/, 'Die Teile des Gases $1 ergeben zusammen $2.'],
  [/^The gas (".*") has more than one meaning: (.+)\.$/, 'Das Gas $1 ist mehrdeutig: $2.'],
  [
    /^Aluminium wire with (.+) cannot be welded: .+$/,
    'Aluminiumdraht lässt sich mit $1 nicht schweißen: Das aktive Gas oxidiert das Schmelzbad.',
  ],
  [
    /^Pulsed spray is wanted, but the source is said to run steady\.$/,
    'Impulslichtbogen ist gewünscht, aber die Stromquelle soll gleichmäßig laufen.',
  ],
  [
    /^Expected an? [a-z -]+ from (\S+) to (\S+ \S+), such as (.+), or unknown\.$/,
    'Erwartet: $1 bis $2, etwa $3.',
  ],
  [/^Expected something like (.+), or unknown\.$/, 'Erwartet: etwas wie $1.'],
  [
    /^Expected a mix such as .+$/,
    'Erwartet: ein Gemisch wie Ar+18CO2, 75/25, C25 oder 98/2 O2, oder ein Kurzzeichen nach ISO 14175.',
  ],
  [
    /^Expected a symbol and a composition that agree\.$/,
    'Erwartet: Kurzzeichen und Zusammensetzung, die zueinander passen.',
  ],
  [
    /^Expected a per cent for every gas but one\.$/,
    'Erwartet: Prozente für jedes Gas außer einem.',
  ],
  [/^Expected parts that add up to 100 %\.$/, 'Erwartet: Teile, die zusammen 100 % ergeben.'],
  [/^Expected a gas named without doubt\.$/, 'Erwartet: ein eindeutig benanntes Gas.'],
  [
    /^Expected argon, helium or a mix of the two .+$/,
    'Erwartet: Argon, Helium oder beides gemischt (ISO 14175 I1, I2, I3) zu Aluminium.',
  ],
  [
    /^Expected --source pulsed with --expect pulsed-spray\.$/,
    'Erwartet: eine pulsende Stromquelle zum Impulslichtbogen.',
  ],
  [
    /^(.+) If the dial shows tap numbers, .+$/,
    '$1 Zeigt der Drehknopf Stufen, das Feld leer lassen und die Spannung am Vorschubgerät beim Schweißen messen.',
  ],
  [
    /^Did you mean --source pulsed, or --expect spray\?$/,
    'Soll die Stromquelle pulsen, oder ist der Sprühlichtbogen gewünscht?',
  ],
  [/^Did you mean (.+)\?$/, 'Gemeint: $1?'],
  [/^Check the value\.$/, 'Den Wert prüfen.'],
  [/^Check the numbers\.$/, 'Die Zahlen prüfen.'],
  [/^Give one number and its unit\.$/, 'Eine Zahl mit ihrer Einheit eintippen.'],
  [/^Name the whole symbol, such as M21\.$/, 'Das ganze Kurzzeichen nennen, etwa M21.'],
  [
    /^Name each gas of the mix with its per cent\.$/,
    'Jedes Gas des Gemischs mit seinen Prozenten nennen.',
  ],
  [
    /^Give the composition alone, or the symbol (\S+)\.$/,
    'Nur die Zusammensetzung nennen oder das Kurzzeichen $1.',
  ],
  [/^Write it like Ar\+18CO2\.$/, 'So schreiben: Ar+18CO2.'],
  [/^Write one of them: (.+)\.$/, 'Eines davon schreiben: $1.'],
  [
    /^Check the gas; if the wire is steel, .+$/,
    'Das Gas prüfen; ist der Draht aus Stahl, unlegierten Stahl als Drahtwerkstoff wählen.',
  ],
  // Notes on what was taken.
  [
    /^(".*") names no second gas; read as (.+), the common meaning\.$/,
    '$1 nennt kein zweites Gas; gelesen als $2, wie üblich.',
  ],
  [
    /^Stainless wire in (.+): much CO2 .+$/,
    'Nichtrostender Draht in $1: Viel CO2 trägt Kohlenstoff in die Naht; üblich sind wenige Prozent. Der qualifizierten Schweißanweisung folgen.',
  ],
  [
    /^Carbon-steel wire in (.+): the arc .+$/,
    'Unlegierter Draht in $1: Ohne etwas CO2 oder Sauerstoff wandert der Lichtbogen meist.',
  ],
];

/** Words within what the sentences above hold. */
export const SETUP_WORDS: readonly (readonly [RegExp, string])[] = [
  [/^wire diameter$/, 'Drahtdurchmesser'],
  [/^stick-out$/, 'Freies Drahtende'],
  [/^wire feed$/, 'Drahtvorschub'],
  [/^set voltage$/, 'Eingestellte Spannung'],
  [/^Check the value\.$/, 'Den Wert prüfen.'],
  [/^Did you mean (.+)\?$/, 'Gemeint: $1?'],
  [/\(argon with CO2\)/g, '(Argon mit CO2)'],
  [/\(argon with CO2, argon named last\)/g, '(Argon mit CO2, Argon zuletzt genannt)'],
  [/\(argon with oxygen\)/g, '(Argon mit Sauerstoff)'],
  [/\(helium with argon\)/g, '(Helium mit Argon)'],
];
