import type { ColumnTaken, LogParams } from '../rooms/logs.js';
import type { ColumnName, Quantity } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';
import { GERMAN_QUANTITIES } from './glossary.js';

const SYMBOL = { voltage: 'V', current: 'A' } as const;
const ARTICLE: Readonly<Record<Quantity, string>> = { time: 'Die', voltage: 'Die', current: 'Der' };
const BY = { name: 'am Namen', unit: 'an der Einheit' } as const;
const UNITS: Readonly<Record<number, string>> = {
  1: 'Sekunden',
  1e-3: 'Millisekunden',
  1e-6: 'Mikrosekunden',
  1e-9: 'Nanosekunden',
};

const rows = (count: number, write: Writer): string =>
  count === 1 ? '1 Zeile' : `${write.plain(count)} Zeilen`;

function column({ name, number, unit }: ColumnName, write: Writer): string {
  const symbol = unit === null ? '' : ` [${unit}]`;
  return name === null ? `Spalte ${write.plain(number)}${symbol}` : `„${name}“${symbol}`;
}

const taken =
  (quantity: Quantity) =>
  ({ column: one, by }: ColumnTaken, write: Writer): string =>
    by === 'place'
      ? `Die Datei nennt keine Spaltennamen; Spalte ${write.plain(one.number)} gilt nach ihrer Stelle als ${GERMAN_QUANTITIES[quantity]}.`
      : `${ARTICLE[quantity]} ${GERMAN_QUANTITIES[quantity]} kommt aus ${column(one, write)} (erkannt ${BY[by]}).`;

export const LOGS: CatalogueOf<LogParams> = {
  'scale-stated': (params, write) => {
    const symbol = SYMBOL[params.quantity];
    return params.of === 'channel'
      ? `Kanal ${write.plain(params.channel)} gilt wie angegeben als ${GERMAN_QUANTITIES[params.quantity]} mit ${write.plain(params.atFullScale)} ${symbol} bei digitalem Vollausschlag.`
      : `„${params.column}“ gilt wie angegeben mit ${write.plain(params.perUnit)} ${symbol} je Einheit.`;
  },
  'unit-scaled': ({ column: name, unit, quantity }) =>
    `„${name}“ steht in ${unit} und wurde in ${SYMBOL[quantity]} umgerechnet.`,
  'unit-assumed': ({ column: name, statedUnit, quantity }) => {
    const given = statedUnit === null ? 'nennt keine Einheit' : `nennt die Einheit „${statedUnit}“`;
    return `„${name}“ ${given}; die Werte gelten als ${quantity === 'voltage' ? 'Volt' : 'Ampere'}.`;
  },
  'time-column': taken('time'),
  'voltage-column': taken('voltage'),
  'current-column': taken('current'),
  'other-column': ({ columns, quantity }, write) =>
    `Auch ${columns.map((one) => column(one, write)).join(', ')} ${columns.length === 1 ? 'könnte' : 'könnten'} ${GERMAN_QUANTITIES[quantity]} sein und ${columns.length === 1 ? 'blieb' : 'blieben'} weg; angeben, welche Spalte gilt, wenn das falsch ist.`,
  filled: ({ bridged, zeroed, values }, write) =>
    `${write.plain(bridged + zeroed)} Werte (${write.precise((100 * (bridged + zeroed)) / values, 2)} %) fehlten oder waren keine Zahlen: ${write.plain(bridged)} geradlinig überbrückt, ${write.plain(zeroed)} auf 0 gesetzt, weil dort nichts bekannt ist.`,
  'rate-stated': ({ rateHz }, write) =>
    `Es gilt die angegebene Abtastrate von ${write.plain(rateHz)} Hz.`,
  'rate-from-file': ({ rateHz, line }, write) =>
    `Es gibt keine Zeitspalte; die Abtastrate von ${write.figures(rateHz, 7)} Hz kommt aus „${line}“ in der Datei.`,
  'rate-from-time': ({ rateHz }, write) =>
    `Die Abtastrate von ${write.figures(rateHz, 7)} Hz kommt aus den Zeitangaben.`,
  'coarse-time': ({ rateHz }, write) =>
    `Die Zeitangaben sind gröber als ein Abtastschritt; ${write.figures(rateHz, 7)} Hz ist die mittlere Abtastrate, die Zeilen gelten als gleich weit auseinander.`,
  'uneven-time': ({ shortStepS, longStepS, rateHz }, write) =>
    `Die Zeilen haben ungleiche Abstände (${write.precise(shortStepS * 1000, 3)} ms bis ${write.precise(longStepS * 1000, 3)} ms); sie wurden geradlinig auf ${write.figures(rateHz, 7)} Hz, den Median der Abstände, umgerechnet. Feineres als die längsten Abstände ist verloren.`,
  'column-not-read': ({ columns, why }, write) => {
    const names = write.and(columns.map((one) => `„${one}“`));
    const what = why === 'complex' ? 'komplexe Zahlen' : 'keine einfachen Zahlen';
    return `${names}: ${what}; nicht gelesen.`;
  },
  'time-unit-assumed': ({ column: name, unitS, by }, write) => {
    const unit = UNITS[unitS] ?? `Einheiten von ${write.plain(unitS)} s`;
    const why = by === 'size' ? 'nach Größe und Schritten' : 'nach der angegebenen Abtastrate';
    return `„${name}“ nennt keine Einheit; ${why} gelten die Werte als ${unit}.`;
  },
  'rate-too-low': ({ rateHz }, write) =>
    `Bei ${write.figures(rateHz, 4)} Hz ist für die Lichtbogenart zu langsam abgetastet: Einzelne Kurzschlüsse, Tropfen und Impulse lassen sich nicht verfolgen (Kurzschlüsse kommen bis zu etwa 200-mal je Sekunde). Mittelwerte, Brennzeiten und der Vergleich mit der Einstellung gelten; die Leistung aus Mittelwerten kann bei Quellen, die ihre Kurvenform regeln, bis zu 30 % danebenliegen (Sperko 2010).`,
  'rate-low': ({ rateHz, samplesPerMs, neededSamples, shortestMs }, write) =>
    `Bei ${write.figures(rateHz, 4)} Hz hat ein Kurzschluss von 1 ms nur ${write.figures(samplesPerMs, 4)} ${samplesPerMs === 1 ? 'Wert' : 'Werte'} (nötig sind ${write.plain(neededSamples)}): Kurzschlüsse unter ${write.figures(shortestMs, 4)} ms werden schlecht oder gar nicht erfasst; Tropfenstufen und Stromanstieg lassen sich nicht messen.`,
  aliasing: ({ rateHz }, write) =>
    `Die Welligkeit einer Inverterstromquelle (etwa 15 bis 100 kHz) faltet sich in eine mit ${write.figures(rateHz, 4)} Hz abgetastete Messreihe, wenn vor dem Abtasten nicht gefiltert wurde, und kann wie ein langsamer Takt aussehen.`,
  'rows-reordered': ({ rows: count, largestStepBackS }, write) =>
    `${rows(count, write)} ${count === 1 ? 'stand' : 'standen'} nicht in der Reihenfolge der Zeit (bis ${write.precise(largestStepBackS * 1000, 3)} ms zurück) und ${count === 1 ? 'wurde' : 'wurden'} geordnet.`,
  gaps: ({ gaps, missingSamples, longestS, bridgedS }, write) =>
    `${gaps === 1 ? 'Eine Lücke' : `${write.plain(gaps)} Lücken`} in den Zeitangaben (${write.plain(missingSamples)} Werte fehlen, die längste dauert ${write.precise(longestS * 1000, 4)} ms): bis ${write.plain(bridgedS * 1000)} ms geradlinig überbrückt, längere auf 0 gesetzt.`,
  'crowded-rows': ({ rows: count }, write) =>
    `${rows(count, write)} mit einer schon vergebenen Zeit weggelassen.`,
  'rows-without-time': ({ rows: count }, write) => `${rows(count, write)} ohne Zeit weggelassen.`,
  midnight: () => 'Die Uhr läuft über Mitternacht; die Zeit wurde weitergezählt.',
  'decimal-comma': () => 'Die Zahlen sind mit Dezimalkomma gelesen.',
  'text-encoding': ({ encoding }) => `Der Text ist als ${encoding} gelesen.`,
  'cut-off-line': ({ line, text }, write) =>
    `Die letzte Zeile (${write.plain(line)}: „${text}“) bricht ab; sie blieb weg.`,
  'text-lines': ({ lines, firstLine, firstText }, write) =>
    `${write.plain(lines)} ${lines === 1 ? 'Textzeile' : 'Textzeilen'} zwischen den Werten weggelassen (Zeile ${write.plain(firstLine)}: „${firstText}“).`,
  'thousands-separators': ({ values }, write) =>
    `${write.plain(values)} ${values === 1 ? 'Wert wurde' : 'Werte wurden'} mit Tausendertrennzeichen gelesen.`,
  'many-series': ({ series, used }, write) =>
    `Von ${write.plain(series)} Reihen in der Datei werden nur die ersten ${write.plain(used)} angesehen.`,
};
