import type { Mode } from '../../../core/index.js';

/** What a run is answered with when it is read from afar. */
export type GlanceKind = Mode | 'mixed' | 'open' | 'no-arc' | 'failed';

/** What is said where no advice with a direction is at hand. */
export type PlainTodo =
  | 'keep'
  | 'state-wanted'
  | 'state-setup'
  | 'no-arc'
  | 'too-short'
  | 'too-loud'
  | 'again'
  | 'unreadable';

/** The answer in words that are read at two metres, or heard. */
export interface GlanceWords {
  /** In lines, as large letters. */
  names: Readonly<Record<GlanceKind, readonly string[]>>;
  /** Where two modes are left, in lines. */
  either(modes: readonly [Mode, Mode]): readonly string[];
  /** Stands before the wanted mode. */
  wanted: string;
  wantedName: Readonly<Record<Mode, string>>;
  /** What the sign beside the wanted mode says. */
  signs: Readonly<Record<'right' | 'wrong' | 'open', string>>;
  todo: Readonly<Record<PlainTodo, string>>;
  /** What to check first, in short, by the code of the check; the whole of it stands among the details. */
  checks: Readonly<Record<string, string>>;
  /** Stands below every advice that could be acted on. */
  procedure: string;
  /** `Globular, likely, 89 percent. Wanted spray: no. …` */
  spoken(said: {
    name: string;
    sure: { word: string; figure: string } | null;
    wanted: { name: string; answer: 'right' | 'wrong' | 'open' } | null;
    /** What to do, with all that must be said beside it. */
    todo: string;
  }): string;
}

export const ENGLISH_GLANCE: GlanceWords = {
  names: {
    'short-circuit': ['SHORT-', 'CIRCUIT'],
    globular: ['GLOBULAR'],
    spray: ['SPRAY'],
    'pulsed-spray': ['PULSED', 'SPRAY'],
    mixed: ['MIXED'],
    open: ['NOT', 'CLEAR'],
    'no-arc': ['NO ARC'],
    failed: ['CAN’T', 'READ IT'],
  },
  either: ([one, other]) => [ENGLISH_EITHER[one], `OR ${ENGLISH_EITHER[other]}`],
  wanted: 'WANTED',
  wantedName: {
    'short-circuit': 'SHORT-CIRCUIT',
    globular: 'GLOBULAR',
    spray: 'SPRAY',
    'pulsed-spray': 'PULSED SPRAY',
  },
  signs: { right: 'that is what came', wrong: 'something else came', open: 'not settled' },
  todo: {
    keep: 'Right mode. Leave the settings as they are.',
    'state-wanted': 'Tap “Wanted” before the next run to be told what to change.',
    'state-setup': 'State wire, gas, volts and feed to be told which way to turn.',
    'no-arc': 'No arc was heard. Stand the phone 0.5 m from the arc and weld again.',
    'too-short': 'Too little arc to tell. Weld 10 s without a stop.',
    'too-loud': 'The sound is cut off. Move the phone back and weld again.',
    again: 'Change nothing on this. Record again, nearer, for 10 s.',
    unreadable: 'This recording can’t be judged. Record again.',
  },
  checks: {
    'check-recording': 'Record again from 0.5 m, 10 s without a stop.',
    'check-programme': 'Read which programme the source shows.',
    'check-gas': 'Read the cylinder label and measure the gas flow.',
    'check-source-terminals': 'Have the volts at the source read by a competent person.',
    'check-leads': 'Power off: look at ground clamp, leads and contact tip.',
    'check-shielding': 'Look at gas flow, hose, nozzle and draughts.',
    'check-stubbing': 'Check feeder volts, wire feed and inductance.',
    'check-long-arc': 'Time the wire feed: the arc may be too long.',
    'check-measured-not-dial': 'Go by the volts at the feeder, not by the dial.',
    'check-polarity': 'Power off: see which terminal the gun lead is on.',
    'check-stick-out': 'Power off: measure the stick-out.',
    'check-feed': 'Time the wire feed; look at rolls, liner and tip.',
    'check-volts-for-feed': 'Have feeder volts and wire feed measured together.',
    'check-spool': 'Power off: measure the wire, read the spool.',
    'check-settings-again': 'Read dial, feeder volts and wire feed again.',
    'check-feeder-voltage': 'Have the volts at the feeder read by a competent person.',
    'check-zone': 'Close to another mode: note feeder volts and amperes.',
  },
  procedure: 'Only as far as your qualified procedure allows.',
  spoken: ({ name, sure, wanted, todo }) => {
    const answers = { right: 'yes', wrong: 'no', open: 'not settled' };
    const figure = sure && `${sure.word}, ${sure.figure.replace(' %', ' percent')}`;
    return [
      `${name}${figure ? `, ${figure}` : ''}.`,
      wanted ? `Wanted ${wanted.name}: ${answers[wanted.answer]}.` : '',
      todo,
    ]
      .filter((one) => one !== '')
      .join(' ');
  },
};

const ENGLISH_EITHER: Readonly<Record<Mode, string>> = {
  'short-circuit': 'SHORT-CIRC.',
  globular: 'GLOBULAR',
  spray: 'SPRAY',
  'pulsed-spray': 'PULSED',
};

export const GERMAN_GLANCE: GlanceWords = {
  names: {
    'short-circuit': ['KURZ-', 'LICHTBOGEN'],
    globular: ['ÜBERGANGS-', 'LICHTBOGEN'],
    spray: ['SPRÜH-', 'LICHTBOGEN'],
    'pulsed-spray': ['IMPULS-', 'LICHTBOGEN'],
    mixed: ['GEMISCHT'],
    open: ['NICHT', 'KLAR'],
    'no-arc': ['KEIN', 'LICHTBOGEN'],
    failed: ['NICHT', 'LESBAR'],
  },
  either: ([one, other]) => [GERMAN_EITHER[one], `ODER ${GERMAN_EITHER[other]}`, 'LICHTBOGEN'],
  wanted: 'GEWÜNSCHT',
  wantedName: {
    'short-circuit': 'KURZLICHTBOGEN',
    globular: 'ÜBERGANGSLICHTBOGEN',
    spray: 'SPRÜHLICHTBOGEN',
    'pulsed-spray': 'IMPULSLICHTBOGEN',
  },
  signs: { right: 'der kam auch', wrong: 'es kam ein anderer', open: 'nicht entschieden' },
  todo: {
    keep: 'Richtige Lichtbogenart. Einstellung so lassen.',
    'state-wanted':
      'Vor dem nächsten Versuch „Gewünscht“ antippen, dann steht hier, was zu ändern ist.',
    'state-setup':
      'Draht, Gas, Spannung und Vorschub angeben, dann steht hier, wohin zu drehen ist.',
    'no-arc': 'Kein Lichtbogen zu hören. Telefon 0,5 m vom Lichtbogen stellen, neu schweißen.',
    'too-short': 'Zu wenig Lichtbogen. 10 s ohne Absetzen schweißen.',
    'too-loud': 'Der Ton ist übersteuert. Telefon weiter weg stellen, neu schweißen.',
    again: 'Daraufhin nichts verstellen. Noch einmal aufnehmen, näher, 10 s lang.',
    unreadable: 'Diese Aufnahme lässt sich nicht beurteilen. Noch einmal aufnehmen.',
  },
  checks: {
    'check-recording': 'Neu aufnehmen aus 0,5 m, 10 s ohne Absetzen.',
    'check-programme': 'Ablesen, welches Programm die Stromquelle zeigt.',
    'check-gas': 'Flaschenschild lesen und Gasmenge messen.',
    'check-source-terminals': 'Spannung an der Stromquelle von einer Fachkraft messen lassen.',
    'check-leads': 'Strom aus: Masseklemme, Leitungen und Stromdüse ansehen.',
    'check-shielding': 'Gasmenge, Schlauch, Gasdüse und Zugluft ansehen.',
    'check-stubbing': 'Spannung am Drahtvorschubgerät, Vorschub und Drossel prüfen.',
    'check-long-arc': 'Drahtvorschub messen: der Lichtbogen ist vielleicht zu lang.',
    'check-measured-not-dial': 'Die Spannung am Drahtvorschubgerät gilt, nicht die Skala.',
    'check-polarity': 'Strom aus: ansehen, an welchem Pol der Brenner liegt.',
    'check-stick-out': 'Strom aus: freies Drahtende messen.',
    'check-feed': 'Drahtvorschub messen; Rollen, Seele und Stromdüse ansehen.',
    'check-volts-for-feed': 'Spannung am Drahtvorschubgerät und Vorschub zusammen messen lassen.',
    'check-spool': 'Strom aus: Draht messen, Spule lesen.',
    'check-settings-again': 'Skala, Spannung am Drahtvorschubgerät und Vorschub neu ablesen.',
    'check-feeder-voltage': 'Spannung am Drahtvorschubgerät von einer Fachkraft messen lassen.',
    'check-zone': 'Nahe an einer anderen Lichtbogenart: Spannung und Strom notieren.',
  },
  procedure: 'Nur soweit es die qualifizierte Schweißanweisung zulässt.',
  spoken: ({ name, sure, wanted, todo }) => {
    const answers = { right: 'ja', wrong: 'nein', open: 'nicht entschieden' };
    const figure = sure && `${sure.word}, ${sure.figure.replace(' %', ' Prozent')}`;
    return [
      `${name}${figure ? `, ${figure}` : ''}.`,
      wanted ? `Gewünscht war ${wanted.name}: ${answers[wanted.answer]}.` : '',
      todo,
    ]
      .filter((one) => one !== '')
      .join(' ');
  },
};

const GERMAN_EITHER: Readonly<Record<Mode, string>> = {
  'short-circuit': 'KURZ-',
  globular: 'ÜBERGANGS-',
  spray: 'SPRÜH-',
  'pulsed-spray': 'IMPULS-',
};
