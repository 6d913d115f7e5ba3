import { ENGLISH_PICTURES } from '../../report/index.js';
import { ENGLISH_RESULT } from './english-result.js';
import type { PageWords, Words } from './words.js';

const PAGE: PageWords = {
  language: 'English',
  title: 'Arc transfer',
  lead: 'Listen to a weld, hear how the metal crosses, try again.',
  offline: 'Works without a network. Nothing you record leaves this device.',
  tabs: { record: 'Record', verdict: 'Verdict', runs: 'Runs', files: 'Files', about: 'About' },
  languageLabel: 'Language',
  unitsLabel: 'Units',
  units: { metric: 'mm, m/min', inch: 'in, in/min' },
  safetyTitle: 'Before you record',
  safety: [
    'Fix the phone on a stand, away from spatter and glare.',
    'Step behind the curtain. Read the screen afterwards: nothing on it is worth a look near the arc.',
    'One tone and vibration mark the start, two mark enough, three the stop.',
  ],
  ready: 'Ready',
  start: 'Record',
  stop: 'Stop and judge',
  starting: 'Opening the microphone…',
  judging: 'Judging…',
  sounds: 'Tones at start, enough and stop',
  cues: 'The tones lie below the band that is judged. Vibration comes as well, where the device can.',
  level: 'Level',
  levelWords: (peakDb, clipped) => {
    if (clipped > 0.001) return 'Too loud: the sound is cut off. Move the phone away.';
    if (peakDb < -50) return 'Very quiet. Move the phone nearer, or take off its cover.';
    return 'Level is good.';
  },
  arcYes: 'Arc',
  arcNo: 'No arc',
  modeNow: (name, settled) => {
    if (name === null) return 'Mode: not clear yet';
    return settled ? `Mode: ${name}` : `Mode: perhaps ${name}`;
  },
  usable: (seconds, enoughS) =>
    seconds >= enoughS
      ? `${seconds.toFixed(0)} s of usable arc: enough.`
      : `${seconds.toFixed(0)} s of usable arc; ${Math.ceil(enoughS - seconds)} s more are worth having.`,
  elapsed: (seconds) => `${seconds.toFixed(0)} s recorded`,
  keptOn: (steps) =>
    `This browser keeps ${steps.join(', ')} on although asked not to. That changes the sound; the verdict is weaker for it.`,
  notKept:
    'The device can’t store this recording as it comes in (no room, or storage is switched off). It is held in memory only: export it before you close the page.',
  enough: 'Enough',
  interruption: {
    'device-gone': 'The microphone was taken away. What was recorded before is judged below.',
    call: 'A call or the locked screen ended the recording. What was recorded before is judged below.',
    'too-long': 'Ten minutes are the most for one recording. What was recorded is judged below.',
  },
  troubleTitle: 'No sound can be recorded',
  trouble: {
    'not-secure':
      'This address is not a secure one, so the browser offers no microphone. Open the page by https, or on this device itself.',
    refused:
      'The microphone was refused. Allow it for this page in the browser’s settings, then press Record again.',
    'none-found': 'No microphone was found. Connect one, then press Record again.',
    'in-use': 'The microphone is in use by something else. Close that, then press Record again.',
    unknown:
      'The microphone could not be opened. Press Record again; if it stays so, reload the page.',
  },
  useFiles: 'Recordings made with another program can be judged under Files.',
  unfinishedTitle: 'A recording was cut short',
  unfinished: (length) => `${length} were kept when the page was closed.`,
  judgeIt: 'Judge it',
  forgetIt: 'Delete it',
  setupTitle: 'Set-up on the machine',
  setupHelp:
    'Type it once for each booth; it is remembered on this device. It is compared with the verdict and never changes it.',
  setupMore: 'More of the set-up',
  fields: {
    wireDiameter: { label: 'Wire diameter', hint: '0.9 mm' },
    gas: { label: 'Shielding gas', hint: 'Ar+18CO2' },
    setVoltage: { label: 'Set voltage', hint: '18.5 V' },
    wireFeed: { label: 'Wire feed', hint: '5 m/min' },
    expect: { label: 'Wanted mode', hint: '' },
    wireMaterial: { label: 'Wire material', hint: '' },
    voltsAt: { label: 'Voltage holds at', hint: '' },
    stickOut: { label: 'Stick-out', hint: '15 mm' },
    source: { label: 'Programme of the source', hint: '' },
    polarity: { label: 'Polarity', hint: '' },
  },
  student: 'Student',
  booth: 'Booth',
  whoHelp: 'Free text. It stays on this device unless you export it.',
  unknownOption: 'not stated',
  choices: {
    'short-circuit': 'short-circuit',
    globular: 'globular',
    spray: 'spray',
    'pulsed-spray': 'pulsed spray',
    'carbon-steel': 'carbon steel',
    'stainless-steel': 'stainless steel',
    aluminium: 'aluminium',
    source: 'source',
    feeder: 'feeder',
    arc: 'arc',
    steady: 'steady',
    pulsed: 'pulsed',
    dcep: 'DCEP',
    dcen: 'DCEN',
    ac: 'AC',
  },
  setupWrong: 'The set-up can’t be used as typed',
  why: 'Why',
  doubts: 'Doubts about the recording',
  assumed: (count) => `Known of the recording (${count})`,
  noDoubts: 'No clipping, gaps or other faults were found.',
  against: 'Against the set-up',
  settings: 'Settings',
  wanted: 'Wanted mode',
  notStated: 'No set-up was stated, so there is nothing to compare with.',
  whatToChange: 'What to change',
  checkNext: 'Check next',
  cautions: 'Caution',
  chances: 'Chance of each mode',
  pictures: 'Evidence and playback',
  wasWeldHelp:
    'Rain, fire, tools and engines can sound like an arc. If somebody welded here, say so, and the mode is judged with that known.',
  wasWeld: 'It was a weld: judge again',
  picturesLater: 'The pictures are drawn from the kept recording.',
  drawPictures: 'Show the evidence',
  tryAgain: 'Try again',
  share: {
    wav: 'Save the sound (WAV)',
    result: 'Save the result (JSON)',
    table: 'Save all runs as a table (CSV)',
  },
  noRuns: 'No runs yet. Record one, or judge a file.',
  noVerdict: 'Nothing has been judged yet.',
  runsTitle: 'Runs on this device',
  runsHelp: 'Newest first. Pick two to set them side by side.',
  latest: 'The last runs',
  compareTitle: 'Side by side',
  compareHelp: 'Pick two runs above.',
  comparePick: 'Compare',
  compareRow: {
    mode: 'Verdict',
    confidence: 'Confidence',
    rates: 'Rates',
    arc: 'Arc',
    settings: 'Settings',
    when: 'Recorded',
  },
  compareFirst: 'Earlier',
  compareSecond: 'Later',
  open: 'Open',
  remove: 'Delete',
  removed: 'The run is deleted.',
  deleteAll: 'Delete everything on this device',
  deleteSure:
    'All runs, sounds, booths and names on this device will be gone. There is no way back.',
  yesDelete: 'Yes, delete all',
  keep: 'Keep them',
  deleted: 'Everything is deleted.',
  room: (used, all) => `${used} of ${all} in use on this device.`,
  notSaved:
    'This run could not be kept: the device has no more room for this page. It is still open: save its sound and result now, or delete older runs and record again.',
  noStore:
    'This browser keeps nothing for this page (a private window, or storage switched off). Runs are lost when the page is closed: save what you need.',
  kept: 'Kept on this device.',
  tooLargeToKeep: 'The file is too large to be kept here; its result is kept.',
  filesTitle: 'Judge recordings and logs',
  filesHelp:
    'Sound from a phone or recorder, or a voltage and current log. Several at once; they are worked off one after another on this device.',
  dropHere: 'Drop files here, or',
  choose: 'Choose files',
  waiting: 'waiting',
  working: (share) => `working, ${share}`,
  cancel: 'Cancel',
  cancelled: 'cancelled',
  done: 'done',
  readersTitle: 'Without a network',
  readersHelp:
    'WAV and CSV are read at once. Readers of other formats are fetched when first needed; fetch them now to have them where there is no network.',
  fetchReaders: 'Fetch all readers',
  readersReady: 'All readers are on this device.',
  readersFailed: 'Not all readers could be fetched. Try again with a network.',
  aboutTitle: 'About this page',
  about: [
    'It listens to a gas metal arc and estimates how the metal crosses: short-circuit, globular, spray or pulsed spray. It is an estimate from a recording, not an inspection, and says nothing about the soundness of the weld.',
    'Arc welding injures eyes and skin and harms by fume, electric shock and noise. Wear the protection, ventilate, and follow the qualified procedure, local codes and the people responsible for them.',
    'Recording, judging and keeping happen on this device. There is no account and no upload.',
    'The microphone is asked for raw: gain control, noise suppression and echo cancellation off. What the browser really applied is noted with each run.',
  ],
  skip: 'Skip to the content',
  foreign: '',
};

/** English: the language of the command line. */
export const ENGLISH: Words = {
  lang: 'en',
  page: PAGE,
  result: ENGLISH_RESULT,
  pictures: ENGLISH_PICTURES,
};
