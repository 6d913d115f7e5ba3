import { GERMAN as VIEW } from '../../view/index.js';
import type { PageWords, Words } from './words.js';

const PAGE: PageWords = {
  lang: 'de',
  language: 'Deutsch',
  title: 'Lichtbogen hören',
  lead: 'Eine Naht anhören, erfahren, wie der Werkstoff übergeht, noch einmal versuchen.',
  offline: 'Geht ohne Netz. Keine Aufnahme verlässt dieses Gerät.',
  tabs: {
    record: 'Aufnehmen',
    verdict: 'Urteil',
    runs: 'Versuche',
    files: 'Dateien',
    about: 'Hinweise',
  },
  languageLabel: 'Sprache',
  unitsLabel: 'Einheiten',
  units: { metric: 'mm, m/min', inch: 'Zoll, in/min' },
  safetyTitle: 'Vor der Aufnahme',
  safety: [
    'Das Telefon auf ein Stativ stellen, weg von Spritzern und Blendung.',
    'Hinter den Vorhang treten. Den Bildschirm nachher lesen: nichts darauf ist einen Blick in Lichtbogennähe wert.',
    'Ein Ton mit Vibration heißt Beginn, zwei heißen genug, drei heißen Ende.',
  ],
  ready: 'Bereit',
  start: 'Aufnehmen',
  stop: 'Beenden und beurteilen',
  starting: 'Mikrofon wird geöffnet …',
  judging: 'Wird beurteilt …',
  sounds: 'Töne bei Beginn, genug und Ende',
  cues: 'Die Töne liegen unter dem beurteilten Bereich. Vibration kommt dazu, wo das Gerät sie kann.',
  level: 'Pegel',
  levelWords: (peakDb, clipped) => {
    if (clipped > 0.001) return 'Zu laut: der Ton wird abgeschnitten. Telefon weiter weg stellen.';
    if (peakDb < -50) return 'Sehr leise. Telefon näher stellen oder die Hülle abnehmen.';
    return 'Der Pegel ist gut.';
  },
  arcYes: 'Lichtbogen',
  arcNo: 'Kein Lichtbogen',
  modeNow: (name, settled) => {
    if (name === null) return 'Lichtbogenart: noch nicht klar';
    return settled ? `Lichtbogenart: ${name}` : `Lichtbogenart: vielleicht ${name}`;
  },
  usable: (seconds, enoughS) =>
    seconds >= enoughS
      ? `${seconds.toFixed(0)} s brauchbarer Lichtbogen: genug.`
      : `${seconds.toFixed(0)} s brauchbarer Lichtbogen; ${Math.ceil(enoughS - seconds)} s mehr lohnen sich.`,
  elapsed: (seconds) => `${seconds.toFixed(0)} s aufgenommen`,
  keptOn: (steps) =>
    `Der Browser lässt an, was aus sein sollte (${steps.join(', ')}). Das verändert den Ton und schwächt das Urteil.`,
  notKept:
    'Das Gerät kann die Aufnahme nicht laufend sichern (kein Platz, oder Speichern ist abgeschaltet). Sie liegt nur im Arbeitsspeicher: vor dem Schließen sichern.',
  enough: 'Genug',
  interruption: {
    'device-gone': 'Das Mikrofon war weg. Was vorher aufgenommen wurde, ist unten beurteilt.',
    call: 'Ein Anruf oder die Bildschirmsperre hat die Aufnahme beendet. Was vorher aufgenommen wurde, ist unten beurteilt.',
    'too-long':
      'Länger als zehn Minuten geht eine Aufnahme nicht. Das Aufgenommene ist unten beurteilt.',
  },
  troubleTitle: 'Es kann nichts aufgenommen werden',
  trouble: {
    'not-secure':
      'Diese Adresse ist nicht gesichert, darum gibt der Browser kein Mikrofon her. Die Seite über https öffnen oder auf dem Gerät selbst.',
    refused:
      'Das Mikrofon wurde verweigert. In den Einstellungen des Browsers für diese Seite erlauben, dann wieder auf Aufnehmen drücken.',
    'none-found': 'Kein Mikrofon gefunden. Eines anschließen, dann wieder auf Aufnehmen drücken.',
    'in-use': 'Das Mikrofon wird anderswo benutzt. Das beenden, dann wieder auf Aufnehmen drücken.',
    unknown:
      'Das Mikrofon ließ sich nicht öffnen. Wieder auf Aufnehmen drücken; bleibt es so, die Seite neu laden.',
  },
  useFiles: 'Aufnahmen aus anderen Programmen lassen sich unter Dateien beurteilen.',
  unfinishedTitle: 'Eine Aufnahme brach ab',
  unfinished: (length) => `${length} blieben erhalten, als die Seite zuging.`,
  judgeIt: 'Beurteilen',
  forgetIt: 'Löschen',
  setupTitle: 'Einstellung an der Maschine',
  setupHelp:
    'Einmal je Kabine eintippen; sie wird auf diesem Gerät gemerkt. Sie wird mit dem Urteil verglichen und ändert es nie.',
  setupMore: 'Mehr zur Einstellung',
  fields: {
    wireDiameter: { label: 'Drahtdurchmesser', hint: '0,9 mm' },
    gas: { label: 'Schutzgas', hint: 'Ar+18CO2' },
    setVoltage: { label: 'Eingestellte Spannung', hint: '18,5 V' },
    wireFeed: { label: 'Drahtvorschub', hint: '5 m/min' },
    expect: { label: 'Gewünschte Lichtbogenart', hint: '' },
    wireMaterial: { label: 'Drahtwerkstoff', hint: '' },
    voltsAt: { label: 'Spannung gilt an', hint: '' },
    stickOut: { label: 'Freies Drahtende', hint: '15 mm' },
    source: { label: 'Programm der Stromquelle', hint: '' },
    polarity: { label: 'Polung', hint: '' },
  },
  student: 'Schüler',
  booth: 'Kabine',
  whoHelp: 'Freier Text. Er bleibt auf diesem Gerät, außer Sie sichern ihn als Datei.',
  unknownOption: 'nicht angegeben',
  choices: {
    'short-circuit': 'Kurzlichtbogen',
    globular: 'Übergangslichtbogen',
    spray: 'Sprühlichtbogen',
    'pulsed-spray': 'Impulslichtbogen',
    'carbon-steel': 'unlegierter Stahl',
    'stainless-steel': 'nichtrostender Stahl',
    aluminium: 'Aluminium',
    source: 'Stromquelle',
    feeder: 'Drahtvorschubgerät',
    arc: 'Lichtbogen',
    steady: 'gleichmäßig',
    pulsed: 'gepulst',
    dcep: 'Draht am Pluspol',
    dcen: 'Draht am Minuspol',
    ac: 'Wechselstrom',
  },
  expected: (what) => `Erwartet: ${what}.`,
  setupWrong: 'Die Einstellung ist so nicht brauchbar',
  why: 'Warum',
  doubts: 'Zweifel an der Aufnahme',
  assumed: (count) => `Über die Aufnahme bekannt (${count})`,
  noDoubts: 'Kein Übersteuern, keine Lücken, keine anderen Fehler gefunden.',
  against: 'Gegen die Einstellung gehalten',
  settings: 'Einstellung',
  wanted: 'Gewünschte Lichtbogenart',
  notStated: 'Es wurde keine Einstellung angegeben, also gibt es nichts zu vergleichen.',
  whatToChange: 'Was zu ändern ist',
  checkNext: 'Als Nächstes prüfen',
  cautions: 'Vorsicht',
  chances: 'Wahrscheinlichkeit jeder Lichtbogenart',
  pictures: 'Belege und Wiedergabe',
  wasWeldHelp:
    'Regen, Feuer, Werkzeuge und Motoren können wie ein Lichtbogen klingen. Wurde hier geschweißt, so sagen Sie es, und die Lichtbogenart wird mit diesem Wissen beurteilt.',
  wasWeld: 'Es wurde geschweißt: neu beurteilen',
  picturesLater: 'Die Bilder werden aus der behaltenen Aufnahme gezeichnet.',
  drawPictures: 'Belege zeigen',
  tryAgain: 'Noch einmal',
  share: {
    wav: 'Ton sichern (WAV)',
    result: 'Ergebnis sichern (JSON)',
    table: 'Alle Versuche als Tabelle sichern (CSV)',
  },
  noRuns: 'Noch keine Versuche. Einen aufnehmen oder eine Datei beurteilen.',
  noVerdict: 'Noch wurde nichts beurteilt.',
  runsTitle: 'Versuche auf diesem Gerät',
  runsHelp: 'Neueste zuerst. Zwei auswählen, um sie nebeneinander zu sehen.',
  latest: 'Die letzten Versuche',
  compareTitle: 'Nebeneinander',
  compareHelp: 'Oben zwei Versuche auswählen.',
  comparePick: 'Vergleichen',
  compareRow: {
    mode: 'Urteil',
    confidence: 'Sicherheit',
    rates: 'Häufigkeiten',
    arc: 'Lichtbogen',
    settings: 'Einstellung',
    when: 'Aufgenommen',
  },
  compareFirst: 'Früher',
  compareSecond: 'Später',
  open: 'Öffnen',
  remove: 'Löschen',
  removed: 'Der Versuch ist gelöscht.',
  deleteAll: 'Alles auf diesem Gerät löschen',
  deleteSure:
    'Alle Versuche, Töne, Kabinen und Namen auf diesem Gerät sind dann weg. Es gibt kein Zurück.',
  yesDelete: 'Ja, alles löschen',
  keep: 'Behalten',
  deleted: 'Alles ist gelöscht.',
  room: (used, all) => `${used} von ${all} auf diesem Gerät belegt.`,
  notSaved:
    'Dieser Versuch konnte nicht behalten werden: auf dem Gerät ist kein Platz mehr für diese Seite. Er ist noch offen: Ton und Ergebnis jetzt sichern, oder ältere Versuche löschen und neu aufnehmen.',
  noStore:
    'Dieser Browser behält nichts für diese Seite (privates Fenster oder Speicher abgeschaltet). Versuche sind weg, wenn die Seite zugeht: sichern, was gebraucht wird.',
  kept: 'Auf diesem Gerät behalten.',
  tooLargeToKeep: 'Die Datei ist zu groß, um hier behalten zu werden; ihr Ergebnis ist behalten.',
  filesTitle: 'Aufnahmen und Messreihen beurteilen',
  filesHelp:
    'Ton von Telefon oder Rekorder, oder eine Messreihe von Spannung und Strom. Mehrere auf einmal; sie werden nacheinander auf diesem Gerät abgearbeitet.',
  dropHere: 'Dateien hierher ziehen oder',
  choose: 'Dateien wählen',
  waiting: 'wartet',
  working: (share) => `in Arbeit, ${share}`,
  cancel: 'Abbrechen',
  cancelled: 'abgebrochen',
  done: 'fertig',
  readersTitle: 'Ohne Netz',
  readersHelp:
    'WAV und CSV werden sofort gelesen. Leser für andere Formate werden bei Bedarf geholt; jetzt holen, um sie auch ohne Netz zu haben.',
  fetchReaders: 'Alle Leser holen',
  readersReady: 'Alle Leser sind auf diesem Gerät.',
  readersFailed: 'Nicht alle Leser ließen sich holen. Mit Netz noch einmal versuchen.',
  aboutTitle: 'Zu dieser Seite',
  about: [
    'Sie hört einem MSG-Lichtbogen zu und schätzt, wie der Werkstoff übergeht: Kurz-, Übergangs-, Sprüh- oder Impulslichtbogen. Das ist eine Schätzung aus einer Aufnahme, keine Prüfung, und sagt nichts über die Güte der Naht.',
    'Lichtbogenschweißen verletzt Augen und Haut und schadet durch Rauch, Stromschlag und Lärm. Schutz tragen, lüften und der qualifizierten Schweißanweisung, den örtlichen Vorschriften und den dafür Verantwortlichen folgen.',
    'Aufnehmen, Beurteilen und Behalten geschehen auf diesem Gerät. Es gibt kein Konto und kein Hochladen.',
    'Das Mikrofon wird roh verlangt: Pegelregelung, Rauschunterdrückung und Echounterdrückung aus. Was der Browser wirklich anwandte, steht bei jedem Versuch.',
  ],
  skip: 'Zum Inhalt',
  foreign:
    'Versuche, die mit einer älteren Fassung dieser Seite beurteilt wurden, zeigen einzelne Sätze auf Englisch.',
};

/** German. */
export const GERMAN: Words = { lang: VIEW.lang, page: PAGE, view: VIEW };
