import type { Mode } from '../../../core/index.js';
import type { Coaching } from '../capture/coaching.js';
import type { SheetKey } from '../shell/sheet-keys.js';
import type { DrillAnswer } from '../sounds/drill.js';

/** What the page says where it is used at the bench: recording, set-up by tapping, the answer, training by ear. */
export interface InstrumentWords {
  /** Protective equipment, fume and where to stand, in one line. */
  protection: string;
  place: string;
  coach: Readonly<Record<Coaching, string>>;
  turnIn(seconds: number): string;
  yourTurn: string;
  /** The arc is out, and the recording about to stop. */
  stopsSoon: string;
  stopsHint: string;
  options: string;
  stopsItself: string;
  speaks: string;
  countdown: string;
  countdownChoice(seconds: number): string;
  leftOut(field: string): string;
  chips: Readonly<Record<SheetKey, string>>;
  notSet: string;
  sheet: {
    close: string;
    none: string;
    ok: string;
    back: string;
    newName: Readonly<Record<'student' | 'booth', string>>;
    byHand: string;
  };
  why: string;
  runOf(student: string, count: number): string;
  strip: string;
  stripPart(name: string, from: string, to: string): string;
  stripNone: string;
  trainerAsks: string;
  trainerSays(name: string): string;
  trainerNone: string;
  hear: {
    title: string;
    lead: string;
    simulated: string;
    play(name: string): string;
    playing: string;
    thisRun: string;
    example(name: string): string;
    listenFor: Readonly<Record<Mode, string>>;
    marks: Readonly<Record<Mode, string>>;
    picture: string;
    notThere: string;
    drillTitle: string;
    drillSimulated: string;
    drillOwn: string;
    ownHelp(counts: string): string;
    startSimulated: string;
    startOwn: string;
    question(at: number, of: number): string;
    again: string;
    next: string;
    finish: string;
    answers: Readonly<Record<DrillAnswer, string>>;
    right: string;
    wrong(truth: string): string;
    result(right: number, of: number): string;
    scoreTitle(student: string): string;
    score(name: string, right: number, asked: number): string;
    noScore: string;
  };
}

export const ENGLISH_INSTRUMENT: InstrumentWords = {
  protection:
    'Helmet down, gloves and jacket on, curtain closed, fume extraction running. Then step away from the phone.',
  place: 'Phone on its stand, 0.5 m from the arc, out of the spatter.',
  coach: {
    waiting: 'Listening.',
    good: 'Level is good.',
    'too-quiet': 'Too quiet. Move the phone nearer, or take off its cover.',
    clipped: 'Too loud: the sound is cut off. Move the phone back.',
    wind: 'Wind or knocks on the microphone. Turn it out of the draught.',
    'gain-control':
      'The device turns the level down by itself (gain control). Stay at one distance.',
  },
  turnIn: (seconds) => `Your turn in ${seconds}`,
  yourTurn: 'Your turn: weld',
  stopsSoon: 'The arc is out',
  stopsHint: 'stops when the arc is out',
  options: 'Sounds, voice, countdown',
  stopsItself: 'Stop by itself 3 s after the arc is out',
  speaks: 'Read the answer out',
  countdown: 'Countdown to “your turn”',
  countdownChoice: (seconds) => (seconds === 0 ? 'none' : `${seconds} s`),
  leftOut: (field) => `${field}: left out of the comparison.`,
  chips: {
    student: 'Student',
    booth: 'Machine',
    expect: 'Wanted',
    wireDiameter: 'Wire',
    wireMaterial: 'Material',
    gas: 'Gas',
    setVoltage: 'Volts set',
    wireFeed: 'Wire feed',
  },
  notSet: 'tap to set',
  sheet: {
    close: 'Close',
    none: 'Not stated',
    ok: 'Done',
    back: 'Delete the last sign',
    newName: { student: 'Another name', booth: 'Another machine' },
    byHand: 'Something else',
  },
  why: 'Why?',
  runOf: (student, count) => (student === '' ? `Run ${count}` : `${student} · run ${count}`),
  strip: 'The run over time',
  stripPart: (name, from, to) => `${name} from ${from} to ${to}`,
  stripNone: 'no part was judged',
  trainerAsks: 'What was it, by the trainer’s own eyes and ears?',
  trainerSays: (name) => `The trainer says: ${name}. This run can be used in the drill.`,
  trainerNone: 'no word on it',
  hear: {
    title: 'Train the ear',
    lead: 'Four sounds of the metal crossing, and what to listen for in each.',
    simulated: 'Simulated sound, not a recording of a weld.',
    play: (name) => `Play ${name}`,
    playing: 'Stop',
    thisRun: 'This run',
    example: (name) => `Example: ${name}`,
    listenFor: {
      'short-circuit':
        'Sharp, even cracks in quick order, like bacon frying. Each is the arc striking anew after the wire touched the pool.',
      globular: 'Dull, uneven plops over a hiss, few a second, with a spit now and then.',
      spray: 'A steady hiss without cracks. The drops are too many and too small to hear singly.',
      'pulsed-spray': 'A buzz that holds one pitch: the pulses of the source, one after the other.',
    },
    marks: {
      'short-circuit': 'Each stroke is a touch of the wire.',
      globular: 'Each stroke is a drop.',
      spray: 'Each stroke is a drop.',
      'pulsed-spray': 'Each stroke is a pulse.',
    },
    picture: 'Loudness over the sound; strokes pass the line as they are heard.',
    notThere: 'This sound can’t be played here.',
    drillTitle: 'Which was that? Ten sounds, blind',
    drillSimulated:
      'Simulated sounds: short-circuit, pulsed spray, or free flight (globular or spray). Coarse and fine drops are not told apart here: only real runs teach that.',
    drillOwn:
      'Your own runs: all four modes, globular against spray too, from runs that the trainer has named.',
    ownHelp: (counts) =>
      `Named so far: ${counts}. Runs of two modes at least are needed. Name a run below its answer.`,
    startSimulated: 'Start with simulated sounds',
    startOwn: 'Start with own runs',
    question: (at, of) => `Sound ${at} of ${of}`,
    again: 'Play again',
    next: 'Next sound',
    finish: 'See the score',
    answers: {
      'short-circuit': 'short-circuit',
      globular: 'globular',
      spray: 'spray',
      'pulsed-spray': 'pulsed spray',
      'free-flight': 'globular or spray',
    },
    right: '✓ Right.',
    wrong: (truth) => `✗ It was ${truth}.`,
    result: (right, of) => `${right} of ${of} right.`,
    scoreTitle: (student) => (student === '' ? 'Score so far' : `Score of ${student} so far`),
    score: (name, right, asked) => `${name}: ${right} of ${asked}`,
    noScore: 'No drill yet.',
  },
};

export const GERMAN_INSTRUMENT: InstrumentWords = {
  protection:
    'Helm zu, Handschuhe und Jacke an, Vorhang zu, Absaugung läuft. Dann weg vom Telefon.',
  place: 'Telefon auf dem Stativ, 0,5 m vom Lichtbogen, weg von Spritzern.',
  coach: {
    waiting: 'Es wird zugehört.',
    good: 'Der Pegel ist gut.',
    'too-quiet': 'Zu leise. Telefon näher stellen oder die Hülle abnehmen.',
    clipped: 'Zu laut: der Ton ist übersteuert. Telefon weiter weg stellen.',
    wind: 'Wind oder Stöße am Mikrofon. Aus dem Luftzug drehen.',
    'gain-control': 'Das Gerät regelt den Pegel selbst herunter. Den Abstand nicht mehr verändern.',
  },
  turnIn: (seconds) => `Sie sind dran in ${seconds}`,
  yourTurn: 'Sie sind dran: schweißen',
  stopsSoon: 'Der Lichtbogen ist aus',
  stopsHint: 'endet, wenn der Lichtbogen aus ist',
  options: 'Töne, Stimme, Vorlauf',
  stopsItself: 'Von selbst enden, 3 s nachdem der Lichtbogen aus ist',
  speaks: 'Die Antwort vorlesen',
  countdown: 'Vorlauf bis „Sie sind dran“',
  countdownChoice: (seconds) => (seconds === 0 ? 'keiner' : `${seconds} s`),
  leftOut: (field) => `${field}: wird nicht verglichen.`,
  chips: {
    student: 'Schüler',
    booth: 'Maschine',
    expect: 'Gewünscht',
    wireDiameter: 'Draht',
    wireMaterial: 'Werkstoff',
    gas: 'Gas',
    setVoltage: 'Spannung',
    wireFeed: 'Vorschub',
  },
  notSet: 'antippen',
  sheet: {
    close: 'Schließen',
    none: 'Nicht angegeben',
    ok: 'Fertig',
    back: 'Letztes Zeichen löschen',
    newName: { student: 'Anderer Name', booth: 'Andere Maschine' },
    byHand: 'Etwas anderes',
  },
  why: 'Warum?',
  runOf: (student, count) =>
    student === '' ? `Versuch ${count}` : `${student} · Versuch ${count}`,
  strip: 'Der Versuch im Verlauf',
  stripPart: (name, from, to) => `${name} von ${from} bis ${to}`,
  stripNone: 'kein Abschnitt wurde beurteilt',
  trainerAsks: 'Was war es nach Augen und Ohren des Ausbilders?',
  trainerSays: (name) => `Der Ausbilder sagt: ${name}. Der Versuch dient damit der Hörübung.`,
  trainerNone: 'keine Angabe',
  hear: {
    title: 'Das Ohr üben',
    lead: 'Vier Klänge des Werkstoffübergangs, und worauf bei jedem zu hören ist.',
    simulated: 'Simulierter Klang, keine Aufnahme einer Schweißung.',
    play: (name) => `${name} abspielen`,
    playing: 'Anhalten',
    thisRun: 'Dieser Versuch',
    example: (name) => `Beispiel: ${name}`,
    listenFor: {
      'short-circuit':
        'Scharfes, gleichmäßiges Knattern wie Speck in der Pfanne. Jeder Knall ist ein Wiederzünden, nachdem der Draht das Bad berührt hat.',
      globular:
        'Dumpfe, ungleiche Tropfen über einem Rauschen, wenige in der Sekunde, dazwischen ein Spritzer.',
      spray:
        'Gleichmäßiges Rauschen ohne Knattern. Die Tropfen sind zu viele und zu fein, um sie einzeln zu hören.',
      'pulsed-spray':
        'Ein Brummen, das seine Tonhöhe hält: die Impulse der Stromquelle, einer nach dem anderen.',
    },
    marks: {
      'short-circuit': 'Jeder Strich ist eine Berührung des Bades.',
      globular: 'Jeder Strich ist ein Tropfen.',
      spray: 'Jeder Strich ist ein Tropfen.',
      'pulsed-spray': 'Jeder Strich ist ein Impuls.',
    },
    picture:
      'Lautstärke über dem Klang; Striche ziehen an der Linie vorbei, wenn sie zu hören sind.',
    notThere: 'Dieser Klang lässt sich hier nicht abspielen.',
    drillTitle: 'Was war das? Zehn Klänge, blind',
    drillSimulated:
      'Simulierte Klänge: Kurzlichtbogen, Impulslichtbogen oder freier Flug (Übergangs- oder Sprühlichtbogen). Grobe und feine Tropfen werden hier nicht unterschieden: das lehren nur echte Versuche.',
    drillOwn:
      'Eigene Versuche: alle vier Lichtbogenarten, auch Übergangs- gegen Sprühlichtbogen, aus Versuchen, die der Ausbilder benannt hat.',
    ownHelp: (counts) =>
      `Bisher benannt: ${counts}. Nötig sind Versuche von mindestens zwei Lichtbogenarten. Benannt wird unter der Antwort eines Versuchs.`,
    startSimulated: 'Mit simulierten Klängen beginnen',
    startOwn: 'Mit eigenen Versuchen beginnen',
    question: (at, of) => `Klang ${at} von ${of}`,
    again: 'Noch einmal hören',
    next: 'Nächster Klang',
    finish: 'Ergebnis ansehen',
    answers: {
      'short-circuit': 'Kurzlichtbogen',
      globular: 'Übergangslichtbogen',
      spray: 'Sprühlichtbogen',
      'pulsed-spray': 'Impulslichtbogen',
      'free-flight': 'Übergangs- oder Sprühlichtbogen',
    },
    right: '✓ Richtig.',
    wrong: (truth) => `✗ Es war: ${truth}.`,
    result: (right, of) => `${right} von ${of} richtig.`,
    scoreTitle: (student) => (student === '' ? 'Bisher' : `${student} bisher`),
    score: (name, right, asked) => `${name}: ${right} von ${asked}`,
    noScore: 'Noch keine Übung.',
  },
};
