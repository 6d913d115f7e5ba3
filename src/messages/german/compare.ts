import type { ComparedKey, CompareParams, SpreadBy } from '../rooms/compare.js';
import type { CatalogueOf, Writer } from '../writer.js';
import { runMode, STATUS } from './names.js';

const FIGURES: Readonly<Record<ComparedKey, string>> = {
  shortCircuitRateHz: 'Kurzschlüsse je Sekunde',
  incipientRateHz: 'Berührungen ohne Werkstoffübergang je Sekunde',
  shortDurationS: 'Dauer eines Kurzschlusses (Median)',
  arcTimeS: 'mittlere Brennzeit zwischen Kurzschlüssen',
  shortDurationCv: 'Ungleichmäßigkeit der Kurzschlüsse',
  shortIntervalCv: 'Ungleichmäßigkeit von Kurzschluss zu Kurzschluss',
  arcTimeCv: 'Ungleichmäßigkeit der Brennzeiten',
  stabilityIndex: 'Kennzahl der Unregelmäßigkeit',
  dropRateHz: 'Tropfen je Sekunde',
  pulseRateHz: 'Impulse je Sekunde',
  eventRateHz: 'Ereignisse im Ton je Sekunde',
  meanVoltageV: 'mittlere Spannung',
  meanCurrentA: 'mittlerer Strom',
  currentAtBreakA: 'mittlerer Strom beim Abriss eines Kurzschlusses',
  slowSwingShare: 'langsame Schwankung des Stroms, durch seinen Mittelwert',
  powerW: 'mittlere Leistung',
  shortShare: 'Anteil der Zeit im Kurzschluss',
};

const SPREADS: Readonly<Record<SpreadBy, string>> = {
  'independent-intervals': 'jeder Abstand als unabhängig von den anderen genommen',
  'poisson-counts': 'Zählungen als Poisson-verteilt genommen',
  'tenth-of-a-second': 'ein unabhängiger Wert je Zehntelsekunde',
  'not-known': '',
  'block-bootstrap': 'Block-Bootstrap der sekundenweisen Häufigkeit',
  newcombe:
    'Intervall nach Newcombe, ein Blick auf die Lichtbogenart je Sekunde oder je halbem Stück',
};

const RUNS = { before: 'Vorher', after: 'Nachher' } as const;

const rate = (hz: number | null, write: Writer): string =>
  hz === null ? 'unbekannt' : `${write.plain(hz)} Hz`;

export const COMPARE: CatalogueOf<CompareParams> = {
  'compare-mode-unknown': ({ before, after }) =>
    `Vorher ${STATUS[before]}, nachher ${STATUS[after]}: Die Lichtbogenart lässt sich nicht vergleichen.`,
  'compare-mode-same': ({ mode }, write) => `In beiden: ${runMode(mode, write)}.`,
  'compare-mode-changed': ({ before, after }, write) =>
    `Vorher ${runMode(before, write)}, nachher ${runMode(after, write)}.`,
  'compare-mode-not-sure': ({ before, after }, write) =>
    `Vorher ${runMode(before, write)}, nachher ${runMode(after, write)}. Eines von beiden ist nicht sicher genug, um es einen Wechsel zu nennen.`,
  'compared-figure': ({ figure }) => FIGURES[figure],
  'compared-share': ({ mode }, write) => `Anteil der Zeit: ${write.mode(mode)}`,
  'spread-by': ({ how }) => SPREADS[how],
  'compare-within-runs': () =>
    '„Mehr als Zufall“ gilt für diese beiden Aufnahmen. Wie sehr sich eine Schweißnaht bei gleicher Einstellung von der nächsten unterscheidet, können sie nicht zeigen: von beiden mehrere aufnehmen.',
  'compare-kinds-differ': () =>
    'Das eine ist eine Tonaufnahme, das andere eine Messreihe: Ihre Kennzahlen werden nicht verglichen.',
  'compare-settings-differ': () =>
    'Die beiden wurden mit verschiedenen Einstellungen des Programms ausgewertet.',
  'compare-models-differ': () => 'Die beiden wurden von verschiedenen Modellen beurteilt.',
  'compare-rates-differ': ({ beforeHz, afterHz }, write) =>
    `Die Abtastraten sind verschieden (${rate(beforeHz, write)} und ${rate(afterHz, write)}): Kurze Ereignisse können in der einen zu sehen sein und in der anderen fehlen.`,
  'compare-same-file': () => 'Beide sind dieselbe Datei.',
  'compare-not-ok': ({ run, status, reason }, write) =>
    `${RUNS[run]}: ${STATUS[status]}. ${write.say(reason)}`,
  'compare-doubts': ({ run, doubts }, write) =>
    `${RUNS[run]}: ${doubts.map((doubt) => write.say(doubt)).join(' ')}`,
};
