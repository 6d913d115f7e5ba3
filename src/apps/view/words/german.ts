import { GERMAN_WORDS } from '../../../messages/index.js';
import { GERMAN_MAP } from '../process-map/words.js';
import type { CompareWords, ExpectWords, InspectWords, WatchWords } from './command-words.js';
import { numberWords } from './numbers.js';
import type {
  NumberWords,
  PlaceWords,
  ReasonWords,
  ShapeWords,
  TimePictureWords,
  TimeWords,
} from './picture-words.js';
import {
  allTexts,
  type ReportWords,
  type ResultWords,
  type TerminalWords,
  type Texts,
} from './words.js';

const numbers: NumberWords = numberWords(',', { under: 'unter', over: 'über', to: 'bis' });
const bis = numbers.range;
const { mode: nameOf, and, or } = GERMAN_WORDS;

/** What is marked singly, one and several. */
const MARKS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  'short circuit': ['Kurzschluss', 'Kurzschlüsse'],
  drop: ['Tropfen', 'Tropfen'],
};

/** The run over time in German. */
const TIME: TimeWords = {
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
    const name = mode === null ? 'nicht klar' : nameOf(mode);
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
const SHAPE: ShapeWords = {
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
const PLACE: PlaceWords = {
  heading: 'Wo liegt dieser Versuch?',
  intro: (scope) =>
    `Veröffentlichte Bereiche für ${scope}. Jeder Umriss ist eine Quelle, mit dem Buchstaben ihrer Lichtbogenart; wo sich Umrisse verschiedener Arten überdecken, sind die Quellen uneins. Sie sind Anhaltspunkte, keine Grenzen.`,
  taken: (from) => ` Für diesen Versuch genommen: ${from.join('; ')}.`,
  map: 'Karte der Spannung über dem Strom',
  tableTitle: (count) => `Bereiche und ihre Quellen (${count})`,
  heads: ['Lichtbogenart', 'für', 'Quelle'],
  currentAxis: 'mittlerer Strom, A',
  voltageAxis: 'Spannung am Drahtvorschubgerät, V',
  dipZone: 'Quellen uneins, wo der Kurzlichtbogen endet',
  sprayZone: 'Quellen uneins, wo der Sprühlichtbogen beginnt',
  transition: 'kritische Stromstärke',
  thisRun: 'dieser Versuch',
  feeds: 'Drahtvorschub, der diesen Strom zieht, m/min (ungefähr)',
  noVoltage: 'Spannung nicht bekannt',
  noCurrent: 'Strom nicht bekannt',
  windows: (count, mode) => `${count} für ${mode}`,
  description: (at, windows) =>
    `Dieser Versuch: ${at.join(', ')}. Veröffentlichte Bereiche: ${windows.join(', ')}.`,
};

/** What spoke for and against, in German. */
const REASONS: ReasonWords = {
  heading: 'Warum diese Antwort?',
  asList: 'Dasselbe als Liste, das Stärkste zuerst',
  anyMode: 'irgendeine Art',
  any: 'irgendeine Art',
  side: (against, mode) => `${against ? 'gegen' : 'für'} ${mode}`,
  axis: (against, mode) => (against ? `← gegen ${mode}` : `für ${mode} →`),
  description: 'Nach Gewicht geordnet. Dasselbe als Liste unter dem Bild.',
};

/** What the evidence names, by its English name. */
const NAMES: Readonly<Record<string, string>> = {
  sound: 'Ton',
  time: 'Zeit',
  voltage: 'Spannung',
  current: 'Strom',
  'of full scale': 'vom Vollausschlag',
  'share of the mean': 'Anteil des Mittels',
  'short circuits': 'Kurzschlüsse',
  'steps of the voltage as drops leave': 'Spannungsstufen der Tropfen',
  pulses: 'Impulse',
  'acoustic events': 'Ereignisse im Ton',
  arc: 'Lichtbogen',
  'short circuit': 'Kurzschluss',
  'just after': 'gleich danach',
};

/** The picture over time alone: the script of a report needs no more. */
export const GERMAN_TIME: TimePictureWords = {
  lang: 'de',
  numbers,
  mode: nameOf,
  notClear: 'nicht klar',
  name: (english) => NAMES[english] ?? english,
  titles: {
    time: 'Der Versuch im Verlauf',
    map: GERMAN_MAP.title,
    place: 'Wo dieser Versuch liegt',
    reasons: 'Was dafür und was dagegen sprach',
    levels: 'Wie lange die Spannung wo stand',
    plane: 'Spannung über Strom nach Phasen',
    'short-voltage': 'Der typische Kurzschluss: Spannung',
    'short-current': 'Der typische Kurzschluss: Strom',
    rhythm: 'Takt',
    intervals: 'Abstände zwischen Ereignissen',
  },
  time: TIME,
};

const RESULT: ResultWords = {
  transfer: (mode) => (mode === 'mixed' ? 'Gemischter Werkstoffübergang' : nameOf(mode)),
  headlines: {
    unsure: {
      short: 'Unsicher',
      rest: 'es wird keine Lichtbogenart genannt',
      whole: 'Unsicher: es wird keine Lichtbogenart genannt',
    },
    'no-arc': {
      short: 'Kein Lichtbogen',
      rest: 'hier wird nichts als Schweißen beurteilt',
      whole: 'Kein Lichtbogen in dieser Aufnahme',
    },
    failed: {
      short: 'Nicht auswertbar',
      rest: 'diese Datei ließ sich nicht beurteilen',
      whole: 'Diese Datei ließ sich nicht beurteilen',
    },
  },
  confidence: ['fast sicher', 'sehr wahrscheinlich', 'wahrscheinlich', 'eher ja', 'zweifelhaft'],
  kinds: { sound: 'Ton', electrical: 'Messreihe von Spannung/Strom' },
  where: ({ shares, length, count, from, to }) => {
    const of = shares === '' ? '' : `${shares} von `;
    const parts = count > 1 ? ` in ${count} Stücken` : '';
    return `${of}${length} Lichtbogen${parts}, von ${from ?? 'vor Beginn der Aufnahme'} bis ${to ?? 'zu ihrem Ende'}`;
  },
  rates: {
    shortCircuitRateHz: 'Kurzschlüsse',
    dropRateHz: 'Tropfen',
    pulseRateHz: 'Impulse',
    eventRateHz: 'Ereignisse',
  },
  aSecond: (value, name) => `${value} ${name} je Sekunde`,
  noSingle: 'keine einzelne Lichtbogenart wird genannt',
  noSingleMode: (modes) => `${modes}: keine einzelne Lichtbogenart wird genannt`,
  leaning: (parts) => `Neigung: ${parts.join(', ')}.`,
  ofIt: (share) => `${share} davon`,
  answers: { agrees: '✓ Passt', disagrees: '✗ Passt nicht', 'cannot-tell': '? Nicht zu sagen' },
  compared: (what) => `Verglichen: ${what}.`,
  speaksForIt: 'Dafür spricht',
  speaksAgainstIt: 'Dagegen spricht',
  heatInput: (without, within) => {
    const ways = [
      without === null ? '' : `${without} ohne thermischen Wirkungsgrad (AWS, ASME)`,
      within === null ? '' : `${within} mit thermischem Wirkungsgrad 0,8 (EN 1011-1)`,
    ];
    return `Wärmeeinbringung: ${ways.filter((one) => one !== '').join('; ')}.`;
  },
};

const TERMINAL: TerminalWords = {
  why: 'Warum',
  more: (count) => `${count} weitere mit --explain`,
  doubts: 'Zweifel an der Aufnahme',
  assumed: 'Beim Lesen angenommen',
  brief: (doubts, notes) =>
    `Zweifel an der Aufnahme: ${doubts}; beim Lesen angenommen: ${notes} (allein beurteilen oder --explain angeben, um sie zu sehen)`,
  against: 'Gegen die Einstellung gehalten',
  settings: 'Einstellung',
  wanted: 'Gewünschte Lichtbogenart',
  whatToChange: 'Was zu ändern ist',
  checkNext: 'Als Nächstes prüfen',
  caution: 'Vorsicht',
  knownArc:
    'Wurde hier sicher geschweißt, beurteilt --arc-prior 0.95 die Aufnahme mit diesem Wissen.',
  how: 'Wie es gemacht wurde',
  model: (name) => `Modell ${name}`,
  settingsUsed: (fingerprint, values) => `Einstellungen ${fingerprint}: ${values}`,
  bar: {
    mode: 'Art',
    sure: 'Sicherheit',
    rate: 'Takt',
    unclear: '? Lichtbogen, Art nicht klar',
    leftOut: '- Lichtbogen, ausgelassen',
    noArc: '· kein Lichtbogen',
    rateKey: (mostHz) => `Takt: Ereignisse je Sekunde, volle Höhe ${mostHz}`,
  },
  tally: {
    counts: (all, ok, noArc, unsure, failed) =>
      `${all} ${all === 1 ? 'Aufnahme' : 'Aufnahmen'}: ${ok} mit Lichtbogenart, ${noArc} ohne Lichtbogen, ${unsure} unsicher, ${failed} nicht auswertbar`,
    skipped: (count, names) => `${count} keine Aufnahme, übergangen: ${names}`,
    wrote: (file) => `geschrieben: ${file}`,
  },
};

const REPORT: ReportWords = {
  skip: 'Zur Antwort',
  allRuns: '← alle Versuche',
  onThisPage: 'Auf dieser Seite',
  links: {
    next: 'Als Nächstes prüfen',
    when: 'Wann',
    shape: 'Wie der Lichtbogen aussieht',
    place: 'Wo er liegt',
    why: 'Warum',
    how: 'Wie es gemacht wurde',
  },
  madeBy: (tool) => `Gemacht mit ${tool}. Diese Seite geht ohne Netz und sendet nichts.`,
  chances: 'Wahrscheinlichkeit jeder Lichtbogenart',
  questions: 'Bevor man sich darauf verlässt',
  reliable: 'Kann ich mich auf diese Aufnahme verlassen?',
  nothingAgainst: [
    '✓ Nichts spricht dagegen',
    'Kein Übersteuern, keine Lücken und keine anderen Fehler gefunden.',
  ],
  doubts: (count) => (count === 1 ? '! Ein Zweifel' : `! ${count} Zweifel`),
  assumed: (count) => `Beim Lesen angenommen (${count})`,
  fits: 'Passt es zur Einstellung?',
  noSetup: 'Es wurde keine Einstellung angegeben, also gibt es nichts zu vergleichen.',
  wanted: 'Ist es die gewünschte Lichtbogenart?',
  noWanted: 'Es wurde keine gewünschte Lichtbogenart angegeben (--expect).',
  notStated: '– Nicht angegeben',
  whatToChange: 'Was ändere ich?',
  checkNext: 'Was prüfe ich als Nächstes?',
  cautions: 'Vorsicht',
  how: {
    heading: 'Wie wurde es gemacht?',
    tool: 'Werkzeug',
    document: (tool, host, version) => `${tool} (${host}), Dokument ${version}`,
    input: 'Datei',
    hash: 'SHA-256 der Datei',
    noHash: 'nicht berechnet',
    channels: 'Kanäle',
    channel: (quantity, name, unit) => `${quantity} „${name}“, ${unit}`,
    model: 'Modell',
    noModel: 'keines verwendet',
    features: 'Merkmale',
    settings: 'Einstellungen',
    steps: 'Schritte',
    card: 'Aus der Modellkarte (auf Englisch): wie es angepasst und was gemessen wurde',
  },
  index: {
    title: (count) => `${count} Aufnahmen`,
    tally: (ok, unsure, noArc, failed) =>
      `${ok} mit Lichtbogenart, ${unsure} unsicher, ${noArc} ohne Lichtbogen, ${failed} nicht auswertbar`,
    skip: 'Zu den Antworten',
    heading: 'Wie ging der Werkstoff jeweils über?',
    table: 'Tabelle der Antworten',
    heads: ['Aufnahme', 'Antwort', 'Sicherheit', 'zur Einstellung', 'Zweifel', 'Länge'],
    answers: { agrees: 'passt', disagrees: 'passt nicht', 'cannot-tell': 'nicht zu sagen' },
    notStated: 'nicht angegeben',
    glance: 'Alle Versuche auf einen Blick, mit gleichen Achsen',
    glanceOf: (run) => `Versuch ${run} auf einen Blick`,
    glanceDescription:
      'Spuren der Lichtbogenarten und Takt der Ereignisse im Verlauf; die Lichtbogenart steht in Worten daneben.',
    foot: 'Diese Seite geht ohne Netz und sendet nichts. Jeder Versuch hat daneben eine eigene Seite.',
  },
  compare: {
    heading: 'Nebeneinander, mit gleichen Achsen',
    time: 'Im Verlauf',
    levels: 'Wie lange die Spannung wo stand',
    short: 'Der typische Kurzschluss',
    rhythm: 'Takt',
    intervals: 'Abstände zwischen Ereignissen',
  },
};

const COMPARE: CompareWords = {
  before: 'Vorher',
  after: 'Nachher',
  mode: 'Lichtbogenart',
  answers: { same: '= gleich', changed: '→ geändert', 'cannot-tell': '? nicht zu sagen' },
  figures: (clear, judged) =>
    `Kennzahlen: ${clear} von ${judged} haben sich mehr als zufällig geändert`,
  noChance: 'Kennzahlen (der Zufall lässt sich nicht beurteilen)',
  change: (label, before, after, unit) => `${label}: ${before} → ${after}${unit}`,
  noSpread:
    'Die Aufnahmen zeigen hier ihre eigene Streuung nicht: Der Zufall lässt sich nicht beurteilen.',
  interval: (range, level, more, p, how) =>
    `Änderung ${range} bei ${level} %; ${more ? 'mehr als Zufall' : 'kann Zufall sein'} (p ${p}; ${how})`,
  range: (low, high, unit) => `${bis(low, high)}${unit}`,
  overEachRun: 'Im Verlauf jedes Versuchs',
  trend: (run, clear, range) =>
    `${run === 'before' ? 'vorher' : 'nachher'}: ${clear ? 'ein klarer Trend' : 'kein klarer Trend'} der Ereignisse, ${range} Hz je Minute`,
};

const EXPECT: ExpectWords = {
  likely: 'Was zu erwarten ist',
  setFor: (mode) => `Einstellung für: ${mode}`,
  changeFor: (mode) => `Was zu ändern ist für: ${mode}`,
  title: 'Worauf das beruht',
  voltage: (from) => `Spannung: ${from ?? 'nicht angegeben'}`,
  current: (from) => `Strom: ${from ?? 'nicht angegeben, auch kein Drahtvorschub'}`,
  permits: { yes: 'zu erwarten', possible: 'möglich', no: 'nicht zu erwarten' },
  lies: (where, nowhere) => (nowhere ? `Ist ${where}.` : `Liegt ${where}.`),
  arcEnergy: (range) => `Streckenenergie ${range}, ohne thermischen Wirkungsgrad (AWS, ASME).`,
  deposited: (range) => `Abschmelzleistung ${range}.`,
  beforeYouAct: 'Bevor danach gehandelt wird',
};

const INSPECT: InspectWords = {
  problem: 'So nicht zu lesen',
  howRead: 'Wie es gelesen wird',
  goOn: 'So geht es weiter',
  kinds: { sound: 'Ton', electrical: 'Messreihe' },
  length: (seconds, samples) => `${seconds} s (${samples} Werte)`,
  leftOut: 'weggelassen',
  readAs: (quantity) => `gelesen als ${NAMES[quantity] ?? quantity}`,
  noNumbers: 'keine Zahlen',
  figures: (min, mean, max, count, missing) =>
    `min ${min}  Mittel ${mean}  max ${max}  (${count} Werte${missing > 0 ? `, ${missing} ohne Zahl` : ''})`,
  first: (values) => `erste: ${values}`,
  bytes: (count) => `${count} Byte`,
};

const several = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

const STATUS_WORDS = {
  ok: 'beurteilt',
  unsure: 'unsicher',
  'no-arc': 'kein Lichtbogen',
  failed: 'nicht auswertbar',
} as const;

const WATCH: WatchWords = {
  noClearMode: 'keine klare Lichtbogenart',
  source: (name, channels, rateHz) =>
    `hört auf ${name}: ${and(channels.map((one) => NAMES[one] ?? one))} mit ${rateHz} Hz`,
  arcOn: (weld, open) =>
    `Lichtbogen an: Schweißnaht ${weld}${open ? ' (brannte schon vorher)' : ''}`,
  arcOff: (weld, open) =>
    `Lichtbogen aus: Schweißnaht ${weld}${open ? ' (brannte noch, als das Signal endete)' : ''}`,
  weld: (weld, answer, confidence, seconds) =>
    `Schweißnaht ${weld}: ${answer}${confidence}, ${seconds} s`,
  answer: (mode, status) => (mode === 'mixed' ? 'gemischt' : (mode ?? STATUS_WORDS[status])),
  notAWeld: (from) => `was ab ${from} wie ein Lichtbogen klang, war keiner`,
  signalLost: (why) => `SIGNAL WEG: ${why}; die Lichtbogenart ist unbekannt, nicht falsch`,
  signalBack: 'Signal ist wieder da',
  noArc: (forTime) => `KEIN LICHTBOGEN seit ${forTime}`,
  gap: (why, seconds) => `LÜCKE: ${why}${seconds === '' ? '' : ` (${seconds} s)`}`,
  expect: (mode, why) => `ab hier erwartet: ${mode ?? 'nichts'} (${why})`,
  stages: { provisional: 'vorläufig', confirmed: 'bestätigt' },
  eventRate: (rate) => `${rate} Ereignisse/s`,
  slow: (seconds) => `zehn Ereignisse dauern ${seconds} s: die Antwort ist langsam`,
  alarm: (mode, expected, seconds, since) =>
    `ALARM: ${mode} statt ${expected} seit ${seconds} s, ab ${since}`,
  departed: (mode, expected, seconds) => `nicht mehr ${expected}: ${mode} seit ${seconds} s`,
  unclear: (seconds) => `seit ${seconds} s ist keine Lichtbogenart klar`,
  ends: (alarm, why, expected) => {
    const how = {
      mode: `wieder ${expected}`,
      'arc-end': 'der Lichtbogen ist aus',
      'new-expectation': 'jetzt wird etwas anderes erwartet',
    };
    return `${alarm ? 'Alarm endet' : 'Abweichung endet'}: ${how[why]}`;
  },
  end: (parts) => `Ende: ${parts.join(', ')}`,
  counts: {
    welds: (count) => several(count, 'Schweißnaht', 'Schweißnähte'),
    alarms: (count) => several(count, 'Alarm', 'Alarme'),
    lost: (samples, bridged) => `${samples} Werte verloren (${bridged} überbrückt)`,
    gaps: (count) => several(count, 'Lücke', 'Lücken'),
    reconnects: (count) => several(count, 'neue Verbindung', 'neue Verbindungen'),
    badRows: (count) => several(count, 'unlesbare Zeile', 'unlesbare Zeilen'),
    looseBytes: (count) => `${count} loses Byte am Ende`,
    jitter: (ms) => `Schwankung der Zeiten bis ${ms} ms`,
    clock: (ppm) => `Uhr geht ${ppm} ppm falsch`,
  },
  screen: {
    weld: (count) => `Schweißnaht ${count}`,
    rows: { now: 'jetzt  ', minute: '60 s   ', watch: 'Wache  ', line: 'Leitung' },
    marks: { unclear: 'unklar', off: 'aus', lost: 'weg' },
    lost: 'SIGNAL WEG (die Lichtbogenart ist unbekannt, nicht falsch)',
    waiting: 'wartet auf die ersten Werte',
    noArc: 'kein Lichtbogen',
    listening: 'Lichtbogen an, hört zu',
    nothingExpected: 'es wird nichts erwartet (--expect <mode>)',
    expected: (mode) => `erwartet: ${mode}`,
    alarm: '!!! ALARM !!!',
    noAlarm: (alarms) => `jetzt kein Alarm, bisher ${alarms}`,
    losses: (lost, gaps, reconnects, badRows) =>
      `${lost} Werte verloren, ${gaps} Lücken, ${reconnects} neue Verbindungen, ${badRows} unlesbare Zeilen`,
  },
  good: {
    recognised: (recordings, windows, wanted) =>
      `${several(recordings, 'gute Aufnahme', 'gute Aufnahmen')}, ${windows} Fenster: ${wanted} wurde erkannt; nichts zu berücksichtigen`,
    takenFor: (recordings, windows, wanted, others) =>
      `${several(recordings, 'gute Aufnahme', 'gute Aufnahmen')}, ${windows} Fenster: ${wanted} wurde verwechselt mit ${and(others)}; der Alarm berücksichtigt es`,
    other: (mode, share) => `${mode} (${share})`,
    missed: (modes) =>
      `Es wird so viel berücksichtigt, dass die meisten Abweichungen zu ${or(modes)} keinen Alarm auslösen.`,
    unlike: (each) =>
      `Die guten Schweißnähte gleichen sich nicht: ${each.join('; ')}. Noch einmal ansehen: eine ist vielleicht nicht in der Lichtbogenart, für die sie steht.`,
    each: (names, mode) => `${names.join(', ')} für ${mode}`,
  },
  noSafety:
    'Dies überwacht die Güte und ist keine Sicherheitsfunktion: nie zwischen einen Menschen und eine Gefahr stellen.',
  noMicrophone: 'Kein Mikrofon gefunden.',
};

/** What German says around the sentences. */
export const GERMAN_TEXTS: Texts = /* @__PURE__ */ allTexts(GERMAN_TIME, {
  own: 'Deutsch',
  shape: SHAPE,
  place: PLACE,
  map: GERMAN_MAP,
  reasons: REASONS,
  result: RESULT,
  terminal: TERMINAL,
  report: REPORT,
  compare: COMPARE,
  expect: EXPECT,
  inspect: INSPECT,
  watch: WATCH,
});
