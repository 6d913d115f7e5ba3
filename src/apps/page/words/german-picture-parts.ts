import type { PlaceWords, ReasonWords, ShapeWords } from '../../report/index.js';
import { bis } from './german-numbers.js';

/** Events as they stand behind „zwischen“. */
const BETWEEN: Readonly<Record<string, string>> = {
  'short circuits': 'Kurzschlüssen',
  'steps of the voltage as drops leave': 'Spannungsstufen der Tropfen',
  pulses: 'Impulsen',
  'sudden rises of the sound': 'plötzlichen Anstiegen des Tons',
};

const RHYTHMS: Readonly<Record<string, string>> = {
  sound: 'Takt im Ton',
  voltage: 'Takt der Spannung',
  current: 'Takt des Stroms',
};

/** What the arc looks like, in German. */
export const SHAPE: ShapeWords = {
  heading: 'Wie sieht dieser Lichtbogen aus?',
  captions: {
    levels:
      'Zwei getrennte Häufungen, eine davon nahe null Volt, sind das Kennzeichen des Kurzlichtbogens.',
    plane: 'Jede Phase hat ihr Zeichen; größere Zeichen stehen für mehr Zeit (logarithmisch).',
    'short-voltage':
      'Die Berührung zieht die Spannung herunter; sie springt zurück, wenn die Brücke bricht.',
    'short-current':
      'Wie schnell der Strom in der Brücke steigt und wie hoch er steht, wenn sie bricht.',
    rhythm: 'Eine Spitze weit über ihrer Umgebung ist der Takt, in dem die Ereignisse kommen.',
    intervals: 'Eine schmale Häufung heißt regelmäßige Ereignisse, eine breite unregelmäßige.',
  },
  asNumbers: 'In Zahlen',
  levelHeads: ['Volt', 'im Kurzschluss', 'im Lichtbogen'],
  intervalHeads: ['Millisekunden', 'Anzahl', 'Anteil'],
  figuresTitle: (count) => `Kennzahlen des Versuchs (${count})`,
  figuresCaption:
    'Die Namen sind die des Ergebnisses; ihr Ende ist die Einheit, …Share und …Cv sind reine Zahlen',
  figureHeads: ['Kennzahl', 'Wert'],
  voltageAxis: 'Spannung, V',
  currentAxis: 'Strom, A',
  levelsAxis: 'Anteil der Zeit, % (Wurzelskala)',
  levelsHint: (from, to, ofTime, inShorts) =>
    `${bis(from, to)} V: ${ofTime} der Zeit, davon ${inShorts} im Kurzschluss`,
  levelsKey: ['im Kurzschluss', 'Lichtbogen'],
  levelsDescription: (inShorts) =>
    `${inShorts} der Lichtbogenzeit sind Kurzschluss. Die Werte stehen in der Tabelle unter dem Bild.`,
  shortAxis: 'Zeit ab der ersten Berührung, ms',
  shortDescription: (count) =>
    `Median von ${count} Kurzschlüssen mit dem Streifen, in dem acht von zehn liegen.`,
  shortKey: (count) => `${count} Kurzschlüsse: Median, Streifen 10–90 %`,
  intervalsTitle: (events) => `Abstände zwischen ${BETWEEN[events] ?? events}`,
  intervalsAxis: 'Zeit von einem zum nächsten, ms',
  intervalsShare: 'Anteil der Abstände, %',
  intervalsHint: (from, to, share, total) => `${bis(from, to)} ms: ${share} von ${total}`,
  intervalsDescription: (total) =>
    `${total} Abstände. Die Werte stehen in der Tabelle unter dem Bild.`,
  rhythmTitle: (quantity) => RHYTHMS[quantity] ?? quantity,
  rhythmAxis: 'Schwankungen je Sekunde, Hz',
  rhythmPower: (unit) => `Leistung, ${unit}`,
  rhythmDescription: (hz) => {
    const found =
      hz === null ? 'Kein Takt tritt klar hervor.' : `Der gefundene Takt steht bei ${hz} Hz.`;
    return `${found} Gestrichelte Linien zeigen Netz und Gleichrichter (50, 60 Hz und Vielfache).`;
  },
  mains: '┆ Netz und Gleichrichter',
  planeDescription: (parts) => `Anteile der Zeit: ${parts.join(', ')}.`,
};

/** The run among published windows, in German. */
export const PLACE: PlaceWords = {
  heading: 'Wo liegt dieser Versuch?',
  intro: (scope) =>
    `Veröffentlichte Bereiche für ${scope}. Jeder Umriss ist eine Quelle, mit dem Buchstaben ihrer Lichtbogenart; wo sich Umrisse verschiedener Arten überdecken, sind die Quellen uneins. Sie sind Anhaltspunkte, keine Grenzen.`,
  taken: (from) => ` Für diesen Versuch genommen: ${from.join('; ')}.`,
  map: 'Karte der Spannung über dem Strom',
  tableTitle: (count) => `Bereiche und ihre Quellen (${count})`,
  heads: ['Lichtbogenart', 'für', 'Quelle'],
  currentAxis: 'mittlerer Strom, A',
  voltageAxis: 'Spannung am Vorschubgerät, V',
  dipZone: 'Quellen uneins, wo der Kurzlichtbogen endet',
  sprayZone: 'Quellen uneins, wo der Sprühlichtbogen beginnt',
  transition: 'Übergangsstrom',
  thisRun: 'dieser Versuch',
  feeds: 'Drahtvorschub, der diesen Strom zieht, m/min (ungefähr)',
  noVoltage: 'Spannung nicht bekannt',
  noCurrent: 'Strom nicht bekannt',
  windows: (count, mode) => `${count} für ${mode}`,
  description: (at, windows) =>
    `Dieser Versuch: ${at.join(', ')}. Veröffentlichte Bereiche: ${windows.join(', ')}.`,
};

/** What spoke for and against, in German. */
export const REASONS: ReasonWords = {
  heading: 'Warum diese Antwort?',
  asList: 'Dasselbe als Liste, das Stärkste zuerst',
  anyMode: 'irgendeine Art',
  any: 'irgendeine Art',
  side: (against, mode) => `${against ? 'gegen' : 'für'} ${mode}`,
  axis: (against, mode) => (against ? `← gegen ${mode}` : `für ${mode} →`),
  description: 'Nach Gewicht geordnet. Dasselbe als Liste unter dem Bild.',
};
