import type { Mode } from '../../../core/index.js';

/** What a sign of the arc is heard or seen by, in a welder's words. */
export type SignGroup =
  | 'beat'
  | 'cracks'
  | 'hiss'
  | 'attack'
  | 'decay'
  | 'pitch'
  | 'counts'
  | 'shorts'
  | 'short-shape'
  | 'drops'
  | 'flutter'
  | 'voltage-beat'
  | 'pulses'
  | 'current'
  | 'slope';

/** Signs whose value says something by itself. */
export interface SignFigures {
  /** Of all beats, those above or those below 60 a second: whether one stands out. */
  beat(which: 'any' | 'fast' | 'slow', clear: boolean): string;
  cracks(aSecond: string): string;
  shorts(aSecond: string | null): string;
  shortTime(share: string | null): string;
  dropSteps(aSecond: string): string;
  pulses(aSecond: string | null): string;
  currentSpread(share: string): string;
}

/** What stands around an answer: title, wanted against seen, reasons for and against, how far to trust it. */
export interface AnswerWords {
  title(name: string, sure: { word: string; figure: string } | null): string;
  wanted: string;
  /** Stands over what to do where that is to look at something. */
  checkFirst: string;
  heard: string;
  seen: string;
  fits(name: string): string;
  against: string;
  /** How much more what fits weighs than what does not. */
  outweighs(times: string): string;
  barely: string;
  /** What does not fit weighs more among the strongest reasons, which are all that is listed. */
  unlisted: string;
  groups: Readonly<Record<SignGroup, string>>;
  figures: SignFigures;
  /** Where the figures are. */
  explain: string;
  strip: {
    title: string;
    leftOut: string;
    throughout(name: string): string;
    first(name: string): string;
    from(name: string, time: string): string;
    changes(count: number): string;
  };
  trust: {
    heading: string;
    nothingAgainst: string;
    /** Share of such answers that are right, in tenths; null where it is more than nine. */
    tenths(right: number | null): string;
    byEar(modes: readonly [string, string]): string;
    settle: string;
  };
}

export const ENGLISH_ANSWER: AnswerWords = {
  title: (name, sure) => (sure ? `${name}, ${sure.word} (${sure.figure})` : name),
  wanted: 'wanted',
  checkFirst: 'What do I check first?',
  heard: 'What was heard',
  seen: 'What the trace shows',
  fits: (name) => `Fits ${name}`,
  against: 'Does not fit',
  outweighs: (times) => `What fits weighs ${times} times as much.`,
  barely: 'What fits weighs little more.',
  unlisted: 'Many weaker signs, which are not listed, decided.',
  groups: {
    beat: 'the beat of the sound: how fast, how clear',
    cracks: 'cracks and pops: how many, how sharp, how even',
    hiss: 'how steady the hiss is',
    attack: 'how suddenly the sound swells',
    decay: 'how fast each crack dies away',
    pitch: 'how dull or bright the sound is',
    counts: 'two counts of the events, held against each other',
    shorts: 'the short circuits: how many, how long',
    'short-shape': 'the shape of the short circuits in volts and amperes',
    drops: 'steps of the voltage as drops leave',
    flutter: 'how much the arc voltage flutters',
    'voltage-beat': 'the beat of the arc voltage',
    pulses: 'whether the source pulses, and how cleanly',
    current: 'how steady the current is',
    slope: 'how volts and amperes move together',
  },
  figures: {
    beat: (which, clear) => {
      const where = { any: '', fast: ' above 60 a second', slow: ' below 60 a second' };
      return `${clear ? 'a' : 'no'} clear beat${where[which]} in the sound`;
    },
    cracks: (aSecond) => `${aSecond} cracks and pops a second`,
    shorts: (aSecond) =>
      aSecond === null
        ? 'no short circuit carries metal over'
        : `${aSecond} short circuits a second carry metal over`,
    shortTime: (share) =>
      share === null ? 'no time in short circuit' : `${share} of the time in short circuit`,
    dropSteps: (aSecond) => `${aSecond} steps up of the voltage a second, as drops leave`,
    pulses: (aSecond) =>
      aSecond === null ? 'the source does not pulse' : `${aSecond} pulses a second`,
    currentSpread: (share) => `current steady within ${share}`,
  },
  explain: 'every reason with its figure: --explain',
  strip: {
    title: 'The run from start to end',
    leftOut: 'arc, not judged',
    throughout: (name) => `${name} throughout`,
    first: (name) => `${name} at first`,
    from: (name, time) => `${name} from ${time}`,
    changes: (count) => `${count} changes of mode`,
  },
  trust: {
    heading: 'How far to trust it',
    nothingAgainst: 'Nothing in the recording speaks against it.',
    tenths: (right) =>
      `${right === null ? 'More than 9' : `About ${right}`} of 10 answers as sure as this are right on simulated arcs; on real ones it has hardly been measured.`,
    byEar: ([one, other]) => `By ear ${one} and ${other} are the hardest to tell apart.`,
    settle: 'A voltage log would settle it.',
  },
};

export const GERMAN_ANSWER: AnswerWords = {
  title: (name, sure) => (sure ? `${name}, ${sure.word} (${sure.figure})` : name),
  wanted: 'gewünscht',
  checkFirst: 'Was prüfe ich zuerst?',
  heard: 'Was zu hören war',
  seen: 'Was die Messung zeigt',
  fits: (name) => `Passt zu: ${name}`,
  against: 'Passt nicht',
  outweighs: (times) => `Was passt, wiegt ${times}-mal so viel.`,
  barely: 'Was passt, wiegt kaum mehr.',
  unlisted: 'Den Ausschlag gaben viele schwächere Zeichen, die hier nicht stehen.',
  groups: {
    beat: 'der Takt des Geräuschs: wie schnell, wie deutlich',
    cracks: 'Knacken und Knallen: wie oft, wie scharf, wie gleichmäßig',
    hiss: 'wie gleichmäßig es zischt',
    attack: 'wie plötzlich das Geräusch anschwillt',
    decay: 'wie schnell ein Knacken verklingt',
    pitch: 'wie dumpf oder hell es klingt',
    counts: 'zwei Zählungen der Ereignisse im Vergleich',
    shorts: 'die Kurzschlüsse: wie viele, wie lang',
    'short-shape': 'der Verlauf der Kurzschlüsse in Spannung und Strom',
    drops: 'Sprünge der Spannung beim Ablösen der Tropfen',
    flutter: 'wie unruhig die Lichtbogenspannung ist',
    'voltage-beat': 'der Takt der Lichtbogenspannung',
    pulses: 'ob die Stromquelle pulst, und wie sauber',
    current: 'wie ruhig der Strom steht',
    slope: 'wie sich Spannung und Strom miteinander bewegen',
  },
  figures: {
    beat: (which, clear) => {
      const where = { any: '', fast: ' über 60 je Sekunde', slow: ' unter 60 je Sekunde' };
      return `${clear ? 'ein' : 'kein'} deutlicher Takt${where[which]} im Geräusch`;
    },
    cracks: (aSecond) => `${aSecond}-mal je Sekunde Knacken oder Knallen`,
    shorts: (aSecond) =>
      aSecond === null
        ? 'kein Kurzschluss mit Werkstoffübergang'
        : `${aSecond} Kurzschlüsse mit Werkstoffübergang je Sekunde`,
    shortTime: (share) =>
      share === null ? 'zu keiner Zeit im Kurzschluss' : `${share} der Zeit im Kurzschluss`,
    dropSteps: (aSecond) => `${aSecond} Spannungssprünge je Sekunde beim Ablösen der Tropfen`,
    pulses: (aSecond) =>
      aSecond === null ? 'die Stromquelle pulst nicht' : `${aSecond} Pulse je Sekunde`,
    currentSpread: (share) => `Strom schwankt nur um ${share}`,
  },
  explain: 'jeder Grund mit seinem Wert: --explain',
  strip: {
    title: 'Der Versuch von Anfang bis Ende',
    leftOut: 'Lichtbogen, nicht gewertet',
    throughout: (name) => `durchgehend ${name}`,
    first: (name) => `zuerst ${name}`,
    from: (name, time) => `${name} ab ${time}`,
    changes: (count) => `${count}-mal gewechselt`,
  },
  trust: {
    heading: 'Wie weit ist dem zu trauen?',
    nothingAgainst: 'In der Aufnahme spricht nichts dagegen.',
    tenths: (right) =>
      `${right === null ? 'Mehr als 9' : `Etwa ${right}`} von 10 so sicheren Antworten stimmen bei simulierten Lichtbögen; bei echten ist es kaum gemessen.`,
    byEar: ([one, other]) => `Nach Gehör sind ${one} und ${other} am schwersten zu unterscheiden.`,
    settle: 'Eine Aufzeichnung der Spannung würde es klären.',
  },
};

/** The modes that are hardest to tell apart by ear (help topic "trust", measured on simulated arcs). */
export const HARD_BY_EAR: readonly [Mode, Mode] = ['globular', 'spray'];
