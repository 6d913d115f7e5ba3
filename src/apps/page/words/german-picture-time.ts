import type { TimeWords } from '../../report/index.js';
import { bis } from './german-numbers.js';
import { GERMAN_MODES } from './german-result.js';

/** What is marked singly, one and several. */
const MARKS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  'short circuit': ['Kurzschluss', 'Kurzschlüsse'],
  drop: ['Tropfen', 'Tropfen'],
};

/** The run over time in German. */
export const TIME: TimeWords = {
  heading: 'Wann war es?',
  toolbar: 'Ansicht des Verlaufs',
  zoomIn: 'Vergrößern',
  zoomOut: 'Verkleinern',
  earlier: '← Früher',
  later: 'Später →',
  whole: 'Ganze Aufnahme',
  goTo: 'Gehe zu',
  choose: 'wählen …',
  zoomable: 'Bild, das sich vergrößern lässt',
  readHint: 'Auf das Bild zeigen oder die Pfeiltasten benutzen, um Werte abzulesen.',
  help: 'Quer ziehen vergrößert; Strg und Mausrad oder + und − ändern die Größe; die Pfeiltasten bewegen den Zeiger, mit der Umschalttaste die Ansicht; N und P gehen zur nächsten und vorigen Marke; 0 zeigt die ganze Aufnahme.',
  tracks:
    'Jede Spur ist eine Lichtbogenart. Die Höhe eines Blocks ist die Sicherheit in diesem Stück; die dünne Linie ist das, wofür einzelne Momente für sich sprachen.',
  partFrom: (name, time) => `${name}, ab ${time}`,
  closeUpAt: (time) => `Nahaufnahme bei ${time}`,
  parts: 'Beurteilte Stücke',
  closeUps: 'Jeder Messwert behalten',
  playback: 'Wiedergabe der Aufnahme',
  playFrom: 'Auf das Bild tippen, um von dort zu hören.',
  onlyFirst: (time) => `Nur die ersten ${time} sind in dieser Seite behalten. `,
  closeUpNote: (binMs, count) =>
    ` Damit die Seite klein bleibt, zeigen die Kurven den kleinsten und größten Wert von je ${binMs} ms; an ${count} Stellen ist jeder Messwert behalten, siehe „Gehe zu“.`,
  tableTitle: (count) => `Die beurteilten Stücke als Tabelle (${count})`,
  tableCaption: 'Beurteilte Stücke des Lichtbogens',
  tableFirst: (count) => ` (die ersten ${count})`,
  from: 'von',
  to: 'bis',
  mode: 'Lichtbogenart',
  confidence: 'Sicherheit',
  noArc: 'kein Lichtbogen',
  axisMs: 'Zeit in der Aufnahme, ms',
  axisS: 'Zeit in der Aufnahme, s',
  frequency: 'Frequenz, kHz (dunkler ist lauter)',
  perSecond: (events) => `${events}, je Sekunde`,
  marksInView: (what, count) => `${MARKS[what]?.[1] ?? what}: ${count} im Bild`,
  keptUpTo: (time, total) => `; bis ${time}, von ${total}`,
  markAt: (what, seconds, ms) =>
    `${MARKS[what]?.[0] ?? what} bei ${seconds} s${ms === '' ? '' : `, ${ms} ms`}`,
  block: (name, from, to, confidence) => `${name}, ${bis(from, to)}, Sicherheit ${confidence}`,
  part: (mode, from, to) => {
    const name = mode === null ? 'nicht klar' : GERMAN_MODES[mode];
    return `${name} von ${bis(from, to)} s`;
  },
  description: (from, to, parts, more) => {
    const rest = more > 0 ? ` und ${more} weitere` : '';
    const shown = parts.join(', ') || 'Kein beurteilter Lichtbogen im Bild';
    return `${bis(from, to)} s. ${shown}${rest}. Dasselbe unten als Tabelle.`;
  },
  readout: {
    at: (moment, parts) => `Bei ${moment}: ${parts.join('; ')}.`,
    judged: (name, confidence) => `${name}, Sicherheit ${confidence}`,
    modeNotClear: 'Lichtbogenart nicht klar',
    notJudged: 'Lichtbogen, hier nicht beurteilt',
    notRecorded: (quantity) => `${quantity} nicht aufgezeichnet`,
    level: (db) => `Pegel ${db} dB vom Vollausschlag`,
    noRate: 'kein klarer Takt der Ereignisse',
    rate: (value, events) => `${value} ${events} je Sekunde`,
    inMark: (what, ms) => `in einem ${MARKS[what]?.[0] ?? what} von ${ms} ms`,
  },
};
