import type { ModeUseParams } from '../../../src/messages/rooms/mode-use.js';
import type { RecordParams } from '../../../src/messages/rooms/record.js';

type Said = RecordParams & ModeUseParams;

/** As in `written.ts`, for what a record of a weld says, and where a mode may be used. */
export const RECORDED: { [C in keyof Said]: (readonly [Said[C], string])[] } = {
  'mode-positions': [
    [
      { mode: 'spray', aluminium: false },
      'Position of spray: on steel and stainless flat and horizontal (a teaching page on the modes of GMAW).',
    ],
    [
      { mode: 'spray', aluminium: true },
      'Position of spray: on aluminium all positions (common practice, no source).',
    ],
    [
      { mode: 'globular', aluminium: false },
      'Position of globular: flat and horizontal (common practice, no source).',
    ],
  ],
  'mode-good-for': [
    [
      { mode: 'pulsed-spray' },
      'pulsed-spray is good for: thin and thick alike, with little spatter (a teaching page on the modes of GMAW).',
    ],
  ],
  'mode-bad-for': [
    [
      { mode: 'short-circuit' },
      'short-circuit is bad for: thick plate: lack of fusion (common practice, no source).',
    ],
  ],
  'spray-out-of-position': [
    [
      { position: 'vertical-up' },
      'Conventional spray on steel or stainless in this position (vertical up): its high heat input keeps it to flat and horizontal welding (a teaching page on the modes of GMAW). Pulsed spray or short-circuit is taught there; the qualified procedure decides.',
    ],
  ],
  'record-no-weld': [[{}, 'The recording shows no arc that could be judged.']],
  'record-mode-not-named': [
    [{}, 'No mode is named for this run, so none is held against the procedure.'],
  ],
  'record-share-open': [
    [
      { wantedShare: 0.854, unclearShare: 0.1 },
      '85 % of the arc time is in a mode of the procedure, and for 10 % no mode is clear.',
    ],
  ],
  'record-departure': [
    [{ mode: 'globular', startS: 2.25, lengthS: 0.84 }, 'globular for 0.8 s from 2.3 s on.'],
  ],
  'record-sound-shows-no': [
    [
      { quantity: 'volts' },
      'A sound recording shows no voltage. Log it, or state what a meter read.',
    ],
  ],
  'record-trace-lacks': [
    [{ quantity: 'amperes' }, 'The trace holds no current. Log it, or state what a meter read.'],
  ],
  'record-place-not-stated': [
    [
      { at: 'feeder' },
      'It is not stated where the trace was taken, and the limit holds at the feeder: say it with --trace-volts-at.',
    ],
  ],
  'record-other-place': [
    [
      { place: 'source', at: 'arc' },
      'The volts were taken at the source, and the limit holds at the arc; what the leads between them take is not known.',
    ],
  ],
  'record-not-stated': [
    [{ what: 'travelSpeed' }, 'The travel speed cannot be seen and was not stated.'],
  ],
  'record-programme-not-seen': [
    [{}, 'The recording does not show which programme the source ran.'],
  ],
  'record-programme-neither': [
    [
      {},
      'The recording looks like a dip that the source controls, which is neither steady nor pulsed.',
    ],
  ],
  'record-needs-travel': [
    [{}, 'Energy per length needs the travel speed or the length of the bead; neither was stated.'],
  ],
  'record-needs-power': [
    [{}, 'Energy needs volts and amperes of the run: a trace of both, or what meters read.'],
  ],
  'record-needs-feed': [
    [
      {},
      'Melted wire needs wire feed, wire diameter and wire material; not all of them were stated.',
    ],
  ],
  'record-power-difference': [
    [
      { differenceShare: -0.247 },
      'The mean of the instantaneous power lies 25 % below mean volts times mean amperes: the current is high while the volts are low, as in short circuits, and two averaging meters miss that.',
    ],
    [
      { differenceShare: 0.12 },
      'The mean of the instantaneous power lies 12 % above mean volts times mean amperes: current and volts rise together, as in pulses, and two averaging meters miss that.',
    ],
  ],
  'record-power-same': [
    [
      {},
      'The mean of the instantaneous power and mean volts times mean amperes differ by less than 1 % in this run.',
    ],
  ],
  'record-by-means': [
    [
      {},
      'Worked out from mean volts times mean amperes of meters, for want of a trace of both. With a waveform-controlled source this may be off by up to 30 % either way (Sperko 2010).',
    ],
  ],
  'record-steady-part': [
    [
      {},
      'Volts, amperes and power are those of the steady part of the arc, without 0.3 s at either end; the energy takes them for the whole arc time.',
    ],
  ],
  'record-no-qualification': [
    [
      {},
      'A record of what one recording shows, to be read by a person. It is no qualification, no inspection and no release of a weld.',
    ],
  ],
  'outside-procedure': [
    [
      { what: 'gas', stated: 'Ar + 8 % CO2', allowed: 'Ar + 18 % CO2' },
      'Gas as stated (Ar + 8 % CO2) is not what the procedure says (Ar + 18 % CO2).',
    ],
  ],
};
