import { capital } from '../../../core/index.js';
import { ENGLISH_MAP } from '../process-map/words.js';
import { ENGLISH_ANSWER } from './answer-words.js';
import type {
  CompareWords,
  ExpectWords,
  InspectWords,
  ProgressWords,
  SweepWords,
  WatchWords,
} from './command-words.js';
import { ENGLISH_GLANCE } from './glance-words.js';
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

const numbers: NumberWords = numberWords('.', { under: 'under', over: 'over', to: 'to' });
const to = numbers.range;

const MODES = {
  'short-circuit': 'short-circuit',
  globular: 'globular',
  spray: 'spray',
  'pulsed-spray': 'pulsed spray',
} as const;

/** What is marked singly, one and several. */
const MARKS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  'long-short': ['short over 20 ms', 'shorts over 20 ms'],
  'arc-out': ['arc-out', 'arc-outs'],
  'burn-back': ['burn-back', 'burn-backs'],
  'long-arc': ['long arc', 'long arcs'],
  'current-dip': ['dip of the current', 'dips of the current'],
};

const TIME: TimeWords = {
  heading: 'When did it happen?',
  toolbar: 'View over time',
  zoomIn: 'Zoom in',
  zoomOut: 'Zoom out',
  earlier: '← Earlier',
  later: 'Later →',
  whole: 'Whole run',
  goTo: 'Go to',
  choose: 'choose…',
  zoomable: 'zoomable picture',
  readHint: 'Tap or point at the picture, or move with the arrow keys, to read values.',
  help: 'Drag across to zoom in; Ctrl and wheel, or + and −, zoom; arrow keys move the cursor, with Shift the view; N and P go to the next and previous mark; 0 shows the whole run.',
  tracks:
    'Each lane is a mode. The height of a block is the confidence in that part; the thin line is what single moments spoke for on their own.',
  partFrom: (name, time) => `${name}, from ${time}`,
  closeUpAt: (time) => `close-up at ${time}`,
  parts: 'Judged parts',
  closeUps: 'Every sample kept',
  playback: 'Playback of the recording',
  playFrom: 'Click the picture to start from there.',
  onlyFirst: (time) => `Only the first ${time} are kept in this page. `,
  closeUpNote: (binMs, count) =>
    ` To keep this page small the traces show the smallest and largest value of every ${binMs} ms; every sample is kept at ${count} places, listed under “Go to”.`,
  tableTitle: (count) => `The judged parts as a table (${count})`,
  tableCaption: 'Judged parts of the arc',
  tableFirst: (count) => ` (the first ${count})`,
  from: 'from',
  to: 'to',
  mode: 'mode',
  confidence: 'confidence',
  noArc: 'no arc',
  axisMs: 'time in the recording, ms',
  axisS: 'time in the recording, s',
  frequency: 'frequency, kHz (more ink is louder)',
  perSecond: (events) => `${events}, a second`,
  marksInView: (what, count) => `${MARKS[what]?.[1] ?? `${what}s`}: ${count} in view`,
  keptUpTo: (time, total) => `; kept up to ${time} only, ${total} in all`,
  markAt: (what, seconds, ms) =>
    `${MARKS[what]?.[0] ?? what} at ${seconds} s${ms === '' ? '' : `, ${ms} ms`}`,
  block: (name, from, until, confidence) => `${name}, ${to(from, until)}, confidence ${confidence}`,
  part: (mode, from, until) => `${mode ?? 'not clear'} from ${to(from, until)} s`,
  description: (from, until, parts, more) => {
    const rest = more > 0 ? `, and ${more} more` : '';
    return `${to(from, until)} s. ${parts.join(', ') || 'No judged arc in view'}${rest}. The same as a table below.`;
  },
  readout: {
    at: (moment, parts) => `At ${moment}: ${parts.join('; ')}.`,
    judged: (name, confidence) => `${name}, confidence ${confidence}`,
    modeNotClear: 'mode not clear',
    notJudged: 'arc, not judged here',
    notRecorded: (quantity) => `${quantity} not recorded`,
    level: (db) => `level ${db} dB of full scale`,
    noRate: 'no clear event rate',
    rate: (value, events) => `${value} ${events} a second`,
    inMark: (what, ms) => `in a ${MARKS[what]?.[0] ?? what} of ${ms} ms`,
  },
};

const SHAPE: ShapeWords = {
  heading: 'What does this arc look like?',
  captions: {
    levels: 'Two separate heaps, one near zero volts, are the mark of short-circuit transfer.',
    plane: 'Each phase has its own mark; larger marks hold more of the time (logarithmic).',
    'short-voltage': 'Contact pulls the voltage down; it leaps back when the bridge breaks.',
    'short-current':
      'How fast the current rises in the bridge, and how high it stands when it breaks.',
    rhythm: 'A peak well above its surroundings is the rate at which the events come.',
    intervals: 'A narrow heap means regular events, a wide one irregular.',
  },
  asNumbers: 'As numbers',
  levelHeads: ['volts', 'in shorts', 'in the arc'],
  intervalHeads: ['milliseconds', 'count', 'share'],
  figuresTitle: (count) => `Figures of the run (${count})`,
  figuresCaption: 'The unit is the last part of each name; …Share and …Cv are pure numbers',
  figureHeads: ['figure', 'value'],
  voltageAxis: 'voltage, V',
  currentAxis: 'current, A',
  levelsAxis: 'share of the arc time, % (root scale)',
  levelsHint: (from, until, ofTime, inShorts) =>
    `${to(from, until)} V: ${ofTime} of the time, ${inShorts} of it in short circuits`,
  levelsKey: ['in short circuits', 'arc'],
  levelsDescription: (inShorts) =>
    `${inShorts} of the arc time is spent in short circuits. The values are in the table below the picture.`,
  shortAxis: 'time from the first contact, ms',
  shortDescription: (count) =>
    `Median of ${count} short circuits with the band that holds eight of ten.`,
  shortKey: (count) => `${count} shorts: median, 10–90 % band`,
  intervalsTitle: (events) => `Intervals between ${events}`,
  intervalsAxis: 'time from one to the next, ms',
  intervalsShare: 'share of the intervals, %',
  intervalsHint: (from, until, share, total) => `${to(from, until)} ms: ${share} of ${total}`,
  intervalsDescription: (total) =>
    `${total} intervals. The values are in the table below the picture.`,
  rhythmTitle: (quantity) => `Rhythm of the ${quantity}`,
  rhythmAxis: 'fluctuations a second, Hz',
  rhythmPower: (unit) => `power, ${unit}`,
  rhythmDescription: (hz) => {
    const found =
      hz === null ? 'No rhythm stands out clearly.' : `The rhythm found stands at ${hz} Hz.`;
    return `${found} Dashed lines mark mains and rectifier rates (50, 60 Hz and multiples).`;
  },
  mains: '┆ mains and rectifier',
  planeDescription: (parts) => `Share of the time: ${parts.join(', ')}.`,
};

const PLACE: PlaceWords = {
  heading: 'Where does this run sit?',
  intro: (scope) =>
    `Published windows for ${scope}. Each outline is one source, with the letter of its mode; where outlines of different modes overlap, the sources disagree. They are guides, not limits.`,
  taken: (from) => ` Taken for this run: ${from.join('; ')}.`,
  map: 'Map of voltage over current',
  tableTitle: (count) => `Windows and their sources (${count})`,
  heads: ['mode', 'for', 'source'],
  currentAxis: 'mean current, A',
  voltageAxis: 'voltage at the feeder, V',
  dipZone: 'short-circuit ends (disputed)',
  sprayZone: 'spray begins (disputed)',
  transition: 'transition current',
  thisRun: 'this run',
  feeds: (unit) => `wire feed for this current, ${unit} (about)`,
  noVoltage: 'voltage not known',
  noCurrent: 'current not known',
  windows: (count, mode) => `${count} for ${mode}`,
  description: (at, windows) =>
    `This run: ${at.join(', ')}. Published windows: ${windows.join(', ')}.`,
};

const REASONS: ReasonWords = {
  heading: 'Why this answer?',
  asList: 'The same as a list, strongest first',
  anyMode: 'any mode',
  any: 'any',
  side: (against, mode) => `${against ? 'against' : 'for'} ${mode}`,
  axis: (against, mode) => (against ? `← against ${mode}` : `for ${mode} →`),
  description: 'Ranked by weight. The same as a list below the picture.',
};

/** The picture over time alone: the script of a report needs no more. */
export const ENGLISH_TIME: TimePictureWords = {
  lang: 'en',
  numbers,
  mode: (mode) => MODES[mode],
  notClear: 'not clear',
  name: (english) => english,
  titles: {
    time: 'The run over time',
    map: ENGLISH_MAP.title,
    place: 'Where this run sits',
    reasons: 'What spoke for and against',
    levels: 'How long the voltage stood where',
    plane: 'Voltage over current by phase',
    'short-voltage': 'The typical short circuit: voltage',
    'short-current': 'The typical short circuit: current',
    rhythm: 'Rhythm',
    intervals: 'Intervals between events',
  },
  time: TIME,
};

const RESULT: ResultWords = {
  transfer: (mode) => (mode === 'mixed' ? 'Mixed transfer' : `${capital(MODES[mode])} transfer`),
  headlines: {
    unsure: {
      short: 'Unsure',
      rest: 'no mode is named',
      whole: 'Unsure: no mode is named',
    },
    'no-arc': {
      short: 'No arc',
      rest: 'nothing here is judged as a weld',
      whole: 'No arc in this recording',
    },
    failed: {
      short: 'Failed',
      rest: 'this input could not be judged',
      whole: 'This input could not be judged',
    },
  },
  confidence: ['almost certain', 'very likely', 'likely', 'more likely than not', 'doubtful'],
  kinds: { sound: 'sound', electrical: 'voltage/current trace' },
  where: ({ shares, length, count, from, to: end }) => {
    const of = shares === '' ? '' : `${shares} of `;
    const parts = count > 1 ? ` in ${count} stretches` : '';
    return `${of}${length} of arc${parts}, from ${from ?? 'before the recording began'} to ${end ?? 'its end'}`;
  },
  rates: {
    shortCircuitRateHz: 'short circuits',
    dropRateHz: 'drops',
    pulseRateHz: 'pulses',
    eventRateHz: 'arc events',
  },
  aSecond: (value, name) => `${value} ${name} a second`,
  leaning: (parts) => `Leaning: ${parts.join(', ')}.`,
  ofIt: (share) => `${share} of it`,
  answers: { agrees: '✓ Agrees', disagrees: '✗ Disagrees', 'cannot-tell': '? Cannot tell' },
  compared: (what) => `Compared: ${what}.`,
  speaksForIt: 'Speaks for it',
  speaksAgainstIt: 'Speaks against it',
  condition: {
    heading: 'How the arc behaved',
    names: {
      stubbing: 'stubbing',
      'arc-outs': 'arc-outs',
      'burn-back': 'burn-back',
      'long-arc': 'long arc',
      'current-dips': 'dips of the current',
      'slow-swings': 'slow swings',
      touches: 'touches',
      spatter: 'spatter risk',
      regularity: 'regularity',
      'cold-lap': 'cold lap risk',
    },
    ratings: { good: 'good', watch: 'watch', bad: 'bad' },
    good: (count, of) => `${count} of ${of} things looked at are as usual.`,
    notJudged: 'Not judged',
    heads: ['What', 'Rating', 'Seen', 'Usual'],
  },
  heatInput: (without, within) => {
    const ways = [
      without === null ? '' : `${without} without thermal efficiency (AWS, ASME)`,
      within === null ? '' : `${within} with thermal efficiency 0.8 (EN 1011-1)`,
    ];
    return `Heat input: ${ways.filter((one) => one !== '').join('; ')}.`;
  },
};

const TERMINAL: TerminalWords = {
  why: 'Why',
  doubts: 'Doubts about the recording',
  assumed: 'Assumed while reading',
  brief: (doubts, notes) =>
    `Doubts about the recording: ${doubts}; assumed while reading: ${notes} (judge it alone, or add --explain, to see them)`,
  against: 'Against the set-up',
  settings: 'Settings',
  whatToChange: 'What to change',
  checkNext: 'Check next',
  caution: 'Caution',
  knownArc: 'If somebody surely welded here, --arc-prior 0.95 judges it with that known.',
  how: 'How it was done',
  model: (name) => `Model ${name}`,
  settingsUsed: (fingerprint, values) => `Settings ${fingerprint}: ${values}`,
  bar: {
    mode: 'mode',
    sure: 'sure',
    rate: 'rate',
    disturbed: 'faults',
    disturbances: {
      'long-short': '| short over 20 ms',
      'arc-out': 'o arc-out',
      'burn-back': 'b burn-back',
      'long-arc': '^ long arc',
      'current-dip': 'v dip of the current',
    },
    unclear: '? arc, mode not clear',
    leftOut: '- arc, left out',
    noArc: '· no arc',
    rateKey: (mostHz) => `rate: events a second, full height ${mostHz}`,
  },
  tally: {
    counts: (all, ok, noArc, unsure, failed) =>
      `${all} ${all === 1 ? 'recording' : 'recordings'}: ${ok} with a mode, ${noArc} no arc, ${unsure} unsure, ${failed} failed`,
    skipped: (count, names) => `${count} not a recording, passed over: ${names}`,
    wrote: (file) => `wrote ${file}`,
  },
};

const REPORT: ReportWords = {
  skip: 'Skip to the answer',
  allRuns: '← all runs',
  onThisPage: 'On this page',
  links: {
    next: 'What to check next',
    condition: 'How the arc behaved',
    when: 'When',
    shape: 'What the arc looks like',
    place: 'Where it sits',
    why: 'Why',
    how: 'How it was made',
  },
  madeBy: (tool) => `Made by ${tool}. This page works offline and sends nothing anywhere.`,
  chances: 'Chance of each mode',
  questions: 'Before you rely on it',
  assumed: (count) => `${count} assumed while reading`,
  fits: 'Does it fit the settings?',
  noSetup: 'No set-up was stated, so there is nothing to compare with.',
  notStated: '– Not stated',
  whatToChange: 'What do I change?',
  checkNext: 'What do I check next?',
  rules: 'What codes say of it',
  cautions: 'Cautions',
  how: {
    heading: 'How was it made?',
    tool: 'Tool',
    document: (tool, host, version) => `${tool} (${host}), document ${version}`,
    input: 'Input',
    hash: 'SHA-256 of the input',
    noHash: 'not taken',
    channels: 'Channels',
    channel: (quantity, name, unit) => `${quantity} “${name}”, ${unit}`,
    model: 'Model',
    noModel: 'none used',
    features: 'Features',
    settings: 'Settings',
    steps: 'Steps taken',
    card: 'From the model card: how it was fitted and what was measured',
  },
  index: {
    title: (count) => `${count} recordings`,
    tally: (ok, unsure, noArc, failed) =>
      `${ok} with a mode, ${unsure} unsure, ${noArc} without an arc, ${failed} failed`,
    skip: 'Skip to the answers',
    heading: 'What crossed the gap in each?',
    table: 'Table of answers',
    heads: ['recording', 'answer', 'against the settings', 'doubts', 'length'],
    answers: { agrees: 'agrees', disagrees: 'disagrees', 'cannot-tell': 'cannot tell' },
    notStated: 'not stated',
    glance: 'All runs at a glance, on equal axes',
    foot: 'This page works offline and sends nothing anywhere. Each run has a page of its own beside this one.',
  },
  compare: {
    heading: 'Side by side, on equal axes',
    time: 'Over time',
    levels: 'How long the voltage stood where',
    short: 'The typical short circuit',
    rhythm: 'Rhythm',
    intervals: 'Intervals between events',
  },
};

const COMPARE: CompareWords = {
  heads: { before: ['Before', 'After'], reference: ['Reference', 'Run'] },
  title: (before, after) => `${before} against ${after}`,
  columns: { figure: 'Figure', change: 'Change', chance: 'More than chance?' },
  notRated: 'not rated',
  sameRatings: (same, of) => `${same} of ${of} rated the same`,
  mode: 'Mode',
  answers: { same: '= same', changed: '→ changed', 'cannot-tell': '? cannot tell' },
  figures: (clear, judged) => `Figures: ${clear} of ${judged} changed by more than chance`,
  noChance: 'Figures (chance cannot be judged)',
  change: (label, before, after, unit) => `${label}: ${to(before, after)}${unit}`,
  noSpread: 'The recordings do not show their own spread here: chance cannot be judged.',
  interval: (range, level, more, p, how) =>
    `change ${range} at ${level} %; ${more ? 'more than chance' : 'may be chance'} (p ${p}; ${how})`,
  range: (low, high, unit) => `${to(low, high)}${unit}`,
  overEachRun: 'Over each run',
  trend: (run, clear, range) =>
    `${run.toLowerCase()}: ${clear ? 'a clear trend' : 'no clear trend'} of the event rate, ${range} Hz a minute`,
};

const SWEEP: SweepWords = {
  title: (machine) => `Measured map: ${machine}`,
  steps: (count) => `${count} ${count === 1 ? 'step' : 'steps'}`,
  heads: [
    'Step',
    'From',
    'Mode',
    'Sure',
    'Mean V',
    'Mean A',
    'Dial V',
    'Feed',
    'Spread',
    'Not as usual',
  ],
  best: 'Most even step of each mode',
  bestOf: (mode, place, spread) => `${mode}: ${place}, spread ${spread}`,
  none: 'No step was named surely enough.',
  measured: 'Measured on this machine',
  published: 'As published for this wire and gas',
  noPublished: 'State wire and gas to see the published map beside it.',
  place: (volts, amperes, dial, feed) =>
    [
      volts && amperes ? `${volts} and ${amperes} measured` : (volts ?? amperes),
      dial && `dial ${dial}`,
      feed && `feed ${feed}`,
    ]
      .filter(Boolean)
      .join(', ') || 'place not known',
  mapTitle: 'Steps over mean current and voltage',
  mapDescription: (steps) =>
    `${steps} steps, each with the letter of its mode; a ring marks the most even of each mode. The same as the table.`,
  mostEven: 'most even',
  unclear: 'mode not clear',
  disagrees: (count, of) =>
    `${count} of ${of} sure steps lie where the published map gives another mode for the measured volts, taken as at the feeder.`,
  fileWritten: (machine) => `Measured on ${machine}; use it with expect --machine`,
  first: (machine) => `Measured on ${machine}: this goes before the published tables below`,
  near: (mode, sure, place) =>
    mode === null
      ? `The nearest step (${place}) named no mode.`
      : `${mode}, ${sure}: the nearest step was ${place}.`,
  notNear: (machine) =>
    `No step of ${machine} lies near the stated point (1 V and 7 %): the tables below answer.`,
  otherWire: (machine) =>
    `${machine} was measured with another wire or gas than stated: the tables below answer.`,
  setLike: (mode, place) => `${mode} ran most evenly at ${place}.`,
  neverRan: (mode) => `No step gave ${mode} surely enough.`,
  caution:
    'Measured on one machine, wire, gas and hand, on the day. Stay within the qualified procedure; weld a test piece before the job.',
};

const PROGRESS: ProgressWords = {
  heading: 'Progress by name and day',
  heads: [
    'Name',
    'Day',
    'Runs',
    'Time in the mode',
    'As usual',
    'Disturbances a minute',
    'Irregularity',
    'Differs from the reference',
  ],
  description: (names) =>
    `Share of the things looked at in the arc that are as usual, over days, for ${names} ${names === 1 ? 'name' : 'names'}. The same as the table.`,
  note: 'Means of the runs of a day. Few runs say little: one weld differs from the next at the same settings. Nothing here grades a weld or a welder.',
  leftOut: (paths) => `Not in the progress, since name and day are not known: ${paths.join(', ')}`,
};

const EXPECT: ExpectWords = {
  likely: 'What to expect',
  setFor: (mode) => `Where to set it for ${mode}`,
  changeFor: (mode) => `What to change for ${mode}`,
  title: 'What it rests on',
  voltage: (from) => `Voltage: ${from ?? 'not stated'}`,
  current: (from) => `Current: ${from ?? 'not stated, and no wire feed'}`,
  permits: { yes: 'expected', possible: 'possible', no: 'not expected' },
  lies: (where, nowhere) => (nowhere ? `${capital(where)}.` : `Lies ${where}.`),
  arcEnergy: (range) => `Arc energy ${range}, without thermal efficiency (AWS, ASME).`,
  deposited: (range) => `Metal deposited ${range}.`,
  beforeYouAct: 'Before you act on it',
};

const INSPECT: InspectWords = {
  problem: 'Cannot be read as it stands',
  howRead: 'How it is read',
  goOn: 'To go on',
  kinds: { sound: 'sound', electrical: 'electrical' },
  length: (seconds, samples) => `${seconds} s (${samples} samples)`,
  leftOut: 'left out',
  readAs: (quantity) => `read as ${quantity}`,
  noNumbers: 'no numbers',
  figures: (min, mean, max, count, missing) =>
    `min ${min}  mean ${mean}  max ${max}  (${count} values${missing > 0 ? `, ${missing} without a number` : ''})`,
  first: (values) => `first: ${values}`,
  bytes: (count) => `${count} bytes`,
};

const and = (words: readonly string[]): string => words.join(' and ');

const WATCH: WatchWords = {
  noClearMode: 'no clear mode',
  source: (name, channels, rateHz) => `listening to ${name}: ${and(channels)} at ${rateHz} Hz`,
  arcOn: (weld, open) => `arc on: weld ${weld}${open ? ' (was burning already)' : ''}`,
  arcOff: (weld, open) =>
    `arc off: weld ${weld}${open ? ' (still burning when the signal ended)' : ''}`,
  weld: (weld, answer, confidence, seconds) => `weld ${weld}: ${answer}${confidence}, ${seconds} s`,
  answer: (mode, status) => mode ?? status,
  notAWeld: (from) => `what sounded like an arc from ${from} was none`,
  signalLost: (why) => `SIGNAL LOST: ${why}; the mode is unknown, not wrong`,
  signalBack: 'signal is back',
  noArc: (forTime) => `NO ARC seen for ${forTime}`,
  gap: (why, seconds) => `GAP: ${why}${seconds === '' ? '' : ` (${seconds} s)`}`,
  expect: (mode, why) => `expected from here on: ${mode ?? 'nothing'} (${why})`,
  stages: { provisional: 'provisional', confirmed: 'confirmed' },
  eventRate: (rate) => `${rate} events/s`,
  slow: (seconds) => `ten events take ${seconds} s: the answer is slow`,
  alarm: (mode, expected, seconds, since) =>
    `ALARM: ${mode} instead of ${expected} for ${seconds} s, since ${since}`,
  departed: (mode, expected, seconds) => `left ${expected}: ${mode} for ${seconds} s`,
  unclear: (seconds) => `no mode has been clear for ${seconds} s`,
  ends: (alarm, why, expected) => {
    const how = {
      mode: `back in ${expected}`,
      'arc-end': 'the arc ended',
      'new-expectation': 'something else is expected',
    };
    return `${alarm ? 'alarm ends' : 'departure ends'}: ${how[why]}`;
  },
  end: (parts) => `end: ${parts.join(', ')}`,
  counts: {
    welds: (count) => `${count} weld(s)`,
    alarms: (count) => `${count} alarm(s)`,
    lost: (samples, bridged) => `${samples} samples lost (${bridged} bridged)`,
    gaps: (count) => `${count} gap(s)`,
    reconnects: (count) => `${count} reconnect(s)`,
    badRows: (count) => `${count} unreadable row(s)`,
    looseBytes: (count) => `${count} loose byte(s) at the end`,
    jitter: (ms) => `jitter up to ${ms} ms`,
    clock: (ppm) => `clock ${ppm} ppm off`,
  },
  screen: {
    weld: (count) => `weld ${count}`,
    rows: { now: 'now  ', minute: '60 s ', watch: 'watch', line: 'line ' },
    marks: { unclear: 'unclear', off: 'off', lost: 'lost' },
    lost: 'SIGNAL LOST (the mode is unknown, not wrong)',
    waiting: 'waiting for the first samples',
    noArc: 'no arc',
    listening: 'arc on, listening',
    nothingExpected: 'nothing is expected (--expect <mode>)',
    expected: (mode) => `expected: ${mode}`,
    alarm: '!!! ALARM !!!',
    noAlarm: (alarms) => `no alarm now, ${alarms} so far`,
    losses: (lost, gaps, reconnects, badRows) =>
      `${lost} samples lost, ${gaps} gaps, ${reconnects} reconnects, ${badRows} bad rows`,
  },
  good: {
    recognised: (recordings, windows, wanted) =>
      `${recordings} good recording(s), ${windows} windows: ${wanted} was recognised; nothing to allow for`,
    takenFor: (recordings, windows, wanted, others) =>
      `${recordings} good recording(s), ${windows} windows: ${wanted} was taken for ${and(others)}; the alarm allows for it`,
    other: (mode, share) => `${mode} at ${share}`,
    missed: (modes) =>
      `So much is allowed for that most departures to ${and(modes)} will raise no alarm.`,
    unlike: (each) =>
      `The good welds are not alike: ${each.join('; ')}. Look at them again: one may not be in the mode it is vouched for.`,
    each: (names, mode) => `${names.join(', ')} for ${mode}`,
  },
  noSafety:
    'This watches quality and is no safety function: never let it stand between a person and a hazard.',
  noMicrophone: 'No microphone was found.',
};

/** What English says around the sentences. */
export const ENGLISH_TEXTS: Texts = /* @__PURE__ */ allTexts(ENGLISH_TIME, {
  own: 'English',
  shape: SHAPE,
  place: PLACE,
  map: ENGLISH_MAP,
  glance: ENGLISH_GLANCE,
  answer: ENGLISH_ANSWER,
  reasons: REASONS,
  result: RESULT,
  terminal: TERMINAL,
  report: REPORT,
  compare: COMPARE,
  sweep: SWEEP,
  progress: PROGRESS,
  expect: EXPECT,
  inspect: INSPECT,
  watch: WATCH,
});
