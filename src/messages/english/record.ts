import { capital } from '../../core/index.js';
import type { FixedQuantity, LimitedQuantity, RecordParams } from '../rooms/record.js';
import type { CatalogueOf } from '../writer.js';

const NAMES: Readonly<Record<LimitedQuantity | FixedQuantity, string>> = {
  volts: 'voltage',
  amperes: 'current',
  wireFeed: 'wire feed',
  travelSpeed: 'travel speed',
  stickOut: 'stick-out',
  heatInput: 'heat input',
  wire: 'wire diameter',
  material: 'wire material',
  gas: 'gas',
  polarity: 'polarity',
  source: 'programme of the source',
  position: 'position',
  plate: 'plate thickness',
};

export const RECORD: CatalogueOf<RecordParams> = {
  'record-no-weld': () => 'The recording shows no arc that could be judged.',
  'record-mode-not-named': () =>
    'No mode is named for this run, so none is held against the procedure.',
  'record-share-open': ({ wantedShare, unclearShare }, write) =>
    `${write.percent(wantedShare)} of the arc time is in a mode of the procedure, and for ${write.percent(unclearShare)} no mode is clear.`,
  'record-departure': ({ mode, startS, lengthS }, write) =>
    `${write.mode(mode)} for ${write.fixed(lengthS, 1)} s from ${write.fixed(startS, 1)} s on.`,
  'record-sound-shows-no': ({ quantity }) =>
    `A sound recording shows no ${NAMES[quantity]}. Log it, or state what a meter read.`,
  'record-trace-lacks': ({ quantity }) =>
    `The trace holds no ${NAMES[quantity]}. Log it, or state what a meter read.`,
  'record-place-not-stated': ({ at }) =>
    `It is not stated where the trace was taken, and the limit holds at the ${at}: say it with --trace-volts-at.`,
  'record-other-place': ({ place, at }) =>
    `The volts were taken at the ${place}, and the limit holds at the ${at}; what the leads between them take is not known.`,
  'record-not-stated': ({ what }) => `The ${NAMES[what]} cannot be seen and was not stated.`,
  'record-programme-not-seen': () => 'The recording does not show which programme the source ran.',
  'record-programme-neither': () =>
    'The recording looks like a dip that the source controls, which is neither steady nor pulsed.',
  'record-needs-travel': () =>
    'Energy per length needs the travel speed or the length of the bead; neither was stated.',
  'record-needs-power': () =>
    'Energy needs volts and amperes of the run: a trace of both, or what meters read.',
  'record-needs-feed': () =>
    'Melted wire needs wire feed, wire diameter and wire material; not all of them were stated.',
  'record-power-difference': ({ differenceShare }, write) => {
    const size = write.percent(Math.abs(differenceShare));
    return differenceShare < 0
      ? `The mean of the instantaneous power lies ${size} below mean volts times mean amperes: the current is high while the volts are low, as in short circuits, and two averaging meters miss that.`
      : `The mean of the instantaneous power lies ${size} above mean volts times mean amperes: current and volts rise together, as in pulses, and two averaging meters miss that.`;
  },
  'record-power-same': () =>
    'The mean of the instantaneous power and mean volts times mean amperes differ by less than 1 % in this run.',
  'record-by-means': () =>
    'Worked out from mean volts times mean amperes of meters, for want of a trace of both. With a waveform-controlled source this may be off by up to 30 % either way (Sperko 2010).',
  'record-steady-part': () =>
    'Volts, amperes and power are those of the steady part of the arc, without 0.3 s at either end; the energy takes them for the whole arc time.',
  'record-no-qualification': () =>
    'A record of what one recording shows, to be read by a person. It is no qualification, no inspection and no release of a weld.',
  'outside-procedure': ({ what, stated, allowed }) =>
    `${capital(NAMES[what])} as stated (${stated}) is not what the procedure says (${allowed}).`,
};
