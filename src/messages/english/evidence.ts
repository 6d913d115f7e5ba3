import type { EvidenceParams } from '../rooms/evidence.js';
import type { VoltsPlace } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const whole = (value: number, write: Writer): string => write.plain(Math.round(value));

function place(one: VoltsPlace): string {
  if (one === 'set') return 'set';
  return one === 'trace' ? 'in the trace' : `at the ${one}`;
}

const PROGRAMMES = {
  pulsed: 'The recording shows a pulsed programme.',
  steady: 'The recording shows a steady source.',
  'controlled-dip': 'The recording shows a controlled-dip programme.',
} as const;

export const EVIDENCE: CatalogueOf<EvidenceParams> = {
  'result-is': ({ status }) => `The result is "${status}".`,
  'confidence-is': ({ confidence }, write) => `Confidence is ${write.percent(confidence)}.`,
  'doubt-about-recording': ({ doubt, shareOfRecording }, write) =>
    `${write.say(doubt)} (${write.percent(shareOfRecording)} of the recording)`,
  'mode-named-all-the-same': () => 'The mode was named with fair confidence all the same.',
  'named-with-confidence': ({ confidence }, write) =>
    `The mode was named with ${write.percent(confidence)} confidence.`,
  'mode-was-seen': ({ mode }, write) => `${write.mode(mode)} was seen.`,
  'programme-shown': ({ programme }) => PROGRAMMES[programme],
  'programme-not-told': ({ whose }) =>
    whose === 'source'
      ? 'The source’s programme itself could not be told.'
      : 'The source’s programme could not be told from this recording.',
  'pulses-a-second': ({ rateHz }, write) => `Pulses at ${write.fixed(rateHz, 1)} a second.`,
  'slope-stated': ({ slopeVPer100A, usualVPer100A }, write) =>
    `A slope of ${write.short(slopeVPer100A, 1)} V per 100 A is stated; up to ${write.short(usualVPer100A, 1)} is common practice for this process.`,
  'slope-not-known': () => 'The slope of the source is not known.',
  'voltage-loss': ({ from, to, fromV, toV, lostV, usualV }, write) => {
    const usual = `${write.fixed(usualV.min, 1)}–${write.fixed(usualV.max, 1)} V are usual`;
    return `${write.fixed(fromV, 1)} V ${place(from)}, ${write.fixed(toV, 1)} V ${place(to)}: ${write.fixed(lostV, 1)} V lost, ${usual}`;
  },
  'terminal-volts-unknown': () =>
    'The volts at the source’s terminals are not known: it may droop.',
  'terminal-volts-not-measured': () => 'The volts at the source’s terminals were not measured.',
  'cable-length-taken': ({ lengthM }, write) =>
    `The cable length is not stated; ${write.inUnits(lengthM, 'cable')} was taken.`,
  'cable-length-not-known': () => 'The length of the leads is not known.',
  'voltage-span': ({ feederV }, write) => `The span is ${write.span(feederV)} V.`,
  'point-voltage': ({ feederV }, write) => `${write.span(feederV)} V at the feeder`,
  'point-current': ({ currentA }, write) => `${write.span(currentA, 0)} A`,
  'no-measured-backing': () => 'No measured voltage backs this.',
  'no-measured-confirming': () => 'No measured voltage confirms the set one.',
  'measured-above-set': () => 'The measured voltage stands above the set one.',
  'measured-fits-set': () => 'The measured voltage fits the set one.',
  'volts-above-limit': ({ volts, aboveV, limitV }, write) =>
    `${write.fixed(volts, 1)} V is ${write.fixed(aboveV, 1)} V above ${write.short(limitV, 1)} V, where the mode ends.`,
  'volts-below-limit': ({ volts, belowV, limitV }, write) =>
    `${write.fixed(volts, 1)} V is ${write.fixed(belowV, 1)} V below ${write.short(limitV, 1)} V, where the mode begins.`,
  'voltage-surplus': ({ surplusV }, write) =>
    `The voltage is ${write.fixed(surplusV, 1)} V above what is usual at this current.`,
  'voltage-lacking': ({ lackingV }, write) =>
    `The voltage is ${write.fixed(lackingV, 1)} V below the load line at this current.`,
  'spray-and-shorts': ({ sprayShare, shortShare }, write) =>
    `${write.percent(sprayShare)} of the time is spray, ${write.percent(shortShare)} short circuits.`,
  'other-wire-draws': ({ diameterMm }, write) =>
    `${write.inUnits(diameterMm, 'diameter')} wire would draw that current at this feed.`,
  'voltage-not-low': () => 'The voltage is not low for the current.',
  'current-for-feed': ({ measuredA, expectedA }, write) =>
    `${whole(measuredA, write)} A measured, ${write.span(expectedA, 0)} A expected for the feed`,
  'current-estimated': () => 'The current is estimated from the feed, not measured.',
  'current-below-transition': ({ currentA, missingA }, write) =>
    `${whole(currentA, write)} A is at least ${whole(missingA, write)} A below the transition current.`,
  'no-measured-current': () => 'No measured current shows it.',
  'stick-out-would-explain': ({ stickOutMm }, write) =>
    `A stick-out of about ${write.inUnits(stickOutMm, 'length')} would explain it.`,
  'stick-out-too-long': ({ stickOutMm }, write) =>
    `It would take ${write.inUnits(stickOutMm, 'length')}, longer than anyone welds with.`,
  'stick-out-stated': ({ stickOutMm, usualMm }, write) =>
    `${write.inUnits(stickOutMm, 'length')} is stated; ${write.inUnits(usualMm, 'length')} is usual.`,
  'stick-out-explains-too': () => 'A longer stick-out explains the current as well.',
  'no-stick-out-explains': () => 'No usual stick-out explains so low a current.',
  'feed-draws': ({ nowA, usualA, usualMm, sprayA }, write) =>
    `The feed draws about ${whole(nowA, write)} A so, and ${whole(usualA, write)} A at ${write.inUnits(usualMm, 'length')}; spray begins near ${whole(sprayA, write)} A.`,
  'feed-and-wire-unknown': () => 'Without feed and wire the current it costs is open.',
  'polarity-stated': ({ polarity }) => `Polarity is stated as ${polarity}.`,
  'positive-stated': () => 'Electrode positive is stated.',
  'some-report-spray': () => 'Some sources do report spray in such a gas.',
  'taught-highest-mode': () =>
    'Teaching puts "the highest mode" of 0.045 in wire in CO2 at 28–30 V (common practice, no source); published work does not call it axial spray.',
  'measured-in-spray': () => 'Measured volts and amperes both lie in the spray region.',
  'point-estimated': () => 'Volts or amperes are estimated, not measured.',
  'shorts-last': ({ meanS }, write) =>
    `Shorts last ${write.fixed(meanS * 1000, 1)} ms on average; a few milliseconds are usual.`,
  'shorts-a-second': ({ rateHz }, write) => `${whole(rateHz, write)} shorts a second.`,
  'shorts-missing': () => 'Short circuits were wanted and are missing.',
  'short-rate-wanders': ({ cv }, write) =>
    `The rate of shorts wanders from second to second (coefficient of variation ${write.fixed(cv, 2)}).`,
  'short-rate-steady': ({ cv }, write) =>
    `The rate of shorts is steady from second to second (${write.fixed(cv, 2)}).`,
  'shorts-uneven': ({ cv }, write) =>
    `The shorts come unevenly (coefficient of variation ${write.fixed(cv, 2)}).`,
  'mode-changes': ({ changes }, write) => `The mode changed ${write.plain(changes)} times.`,
  'nothing-wanders': () => 'Nothing wanders: the feed at least is even.',
  'lasting-change': ({ atS }, write) => `One lasting change at ${write.fixed(atS, 1)} s.`,
  'setup-forbids-mode': ({ mode }, write) => `The settings do not permit ${write.mode(mode)}.`,
  'possible-with-good-gas': ({ mode }, write) =>
    `The settings lie where ${write.mode(mode)} is possible with good gas as well.`,
  'torch-or-feed-alike': () =>
    'A change of torch distance or of feed at that moment would look alike.',
  'run-changes-modes': () => 'The run itself changes between modes.',
  'run-keeps-mode': () => 'The run stays in one mode.',
};
