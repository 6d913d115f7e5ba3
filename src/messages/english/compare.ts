import type { RunMode } from '../../core/index.js';
import type { ComparedKey, CompareParams, SpreadBy } from '../rooms/compare.js';
import type { CatalogueOf, Writer } from '../writer.js';

const FIGURES: Readonly<Record<ComparedKey, string>> = {
  shortCircuitRateHz: 'short circuits a second',
  incipientRateHz: 'incipient shorts a second',
  shortDurationS: 'median duration of a short',
  arcTimeS: 'mean arc time between shorts',
  shortDurationCv: 'unevenness of the shorts',
  shortIntervalCv: 'unevenness from short to short',
  arcTimeCv: 'unevenness of the arc times',
  stabilityIndex: 'irregularity index',
  dropRateHz: 'drops a second',
  pulseRateHz: 'pulses a second',
  eventRateHz: 'acoustic events a second',
  meanVoltageV: 'mean voltage',
  meanCurrentA: 'mean current',
  currentAtBreakA: 'mean current at rupture of a short',
  slowSwingShare: 'slow swing of the current over its mean',
  powerW: 'mean power',
  shortShare: 'share of the time in short circuit',
};

const SPREADS: Readonly<Record<SpreadBy, string>> = {
  'independent-intervals': 'each interval taken as independent of the others',
  'poisson-counts': 'counts taken as Poisson',
  'tenth-of-a-second': 'one independent value a tenth of a second',
  'not-known': '',
  'block-bootstrap': 'block bootstrap of the rate by second',
  newcombe: 'Newcombe’s interval, a look at the mode each second or each half of a piece',
};

const run = (mode: RunMode, write: Writer): string => (mode === 'mixed' ? mode : write.mode(mode));
const rate = (hz: number | null, write: Writer): string => (hz === null ? 'null' : write.plain(hz));

export const COMPARE: CatalogueOf<CompareParams> = {
  'compare-mode-unknown': ({ before, after }) =>
    `${before} before, ${after} after: the mode cannot be compared.`,
  'compare-mode-same': ({ mode }, write) => `${run(mode, write)} in both.`,
  'compare-mode-changed': ({ before, after }, write) =>
    `${run(before, write)} before, ${run(after, write)} after.`,
  'compare-mode-not-sure': ({ before, after }, write) =>
    `${run(before, write)} before, ${run(after, write)} after. One of the two is not sure enough to call it a change.`,
  'compared-figure': ({ figure }) => FIGURES[figure],
  'compared-share': ({ mode }, write) => `share of the time in ${write.mode(mode)}`,
  'spread-by': ({ how }) => SPREADS[how],
  'compare-within-runs': () =>
    '"More than chance" speaks of these two recordings. How much one weld differs from the next at the same settings they cannot show: record several of each.',
  'compare-kinds-differ': () =>
    'One is a sound recording and the other a trace: their figures are not compared.',
  'compare-settings-differ': () => 'The two were analysed with different settings.',
  'compare-models-differ': () => 'The two were judged by different models.',
  'compare-rates-differ': ({ beforeHz, afterHz }, write) =>
    `Sample rates differ (${rate(beforeHz, write)} and ${rate(afterHz, write)} Hz): short events may be seen in one and missed in the other.`,
  'compare-same-file': () => 'Both are the same file.',
  'compare-not-ok': ({ run: name, status, reason }, write) =>
    `${name}: ${status}. ${write.say(reason)}`,
  'compare-doubts': ({ run: name, doubts }, write) =>
    `${name}: ${doubts.map((doubt) => write.say(doubt)).join(' ')}`,
};
