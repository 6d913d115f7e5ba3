import type { PlaceWords, ReasonWords, ShapeWords, TimeWords } from './words-of-parts.js';

export const to = (low: string, high: string): string => `${low} to ${high}`;

export const TIME: TimeWords = {
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
  readHint: 'Point at the picture, or move with the arrow keys, to read values.',
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
  marksInView: (what, count) => `${what}s: ${count} in view`,
  keptUpTo: (time, total) => `; kept up to ${time} only, ${total} in all`,
  markAt: (what, seconds, ms) => `${what} at ${seconds} s${ms === '' ? '' : `, ${ms} ms`}`,
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
    inMark: (what, ms) => `in a ${what} of ${ms} ms`,
  },
};

export const SHAPE: ShapeWords = {
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

export const PLACE: PlaceWords = {
  heading: 'Where does this run sit?',
  intro: (scope) =>
    `Published windows for ${scope}. Each outline is one source, with the letter of its mode; where outlines of different modes overlap, the sources disagree. They are guides, not limits.`,
  taken: (from) => ` Taken for this run: ${from.join('; ')}.`,
  map: 'Map of voltage over current',
  tableTitle: (count) => `Windows and their sources (${count})`,
  heads: ['mode', 'for', 'source'],
  currentAxis: 'mean current, A',
  voltageAxis: 'voltage at the feeder, V',
  dipZone: 'sources differ on where short-circuit ends',
  sprayZone: 'sources differ on where spray begins',
  transition: 'transition current',
  thisRun: 'this run',
  feeds: 'wire feed that draws this current, m/min (about)',
  noVoltage: 'voltage not known',
  noCurrent: 'current not known',
  windows: (count, mode) => `${count} for ${mode}`,
  description: (at, windows) =>
    `This run: ${at.join(', ')}. Published windows: ${windows.join(', ')}.`,
};

export const REASONS: ReasonWords = {
  heading: 'Why this answer?',
  asList: 'The same as a list, strongest first',
  anyMode: 'any mode',
  any: 'any',
  side: (against, mode) => `${against ? 'against' : 'for'} ${mode}`,
  axis: (against, mode) => (against ? `← against ${mode}` : `for ${mode} →`),
  description: 'Ranked by weight. The same as a list below the picture.',
};
