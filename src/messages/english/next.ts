import type { NextParams } from '../rooms/evidence.js';
import type { CatalogueOf } from '../writer.js';

/** Nobody reaches for a live circuit because this tool asks for a figure. */
const BY_WHOM = 'fixed meters or insulated leads, a competent person, no cover opened';

export const NEXT: CatalogueOf<NextParams> = {
  'check-recording': ({ kind }) =>
    kind === 'sound'
      ? 'Record again from about half a metre with the phone’s voice processing off, without clipping, some ten seconds of steady welding; or take a voltage trace.'
      : 'Record the voltage again, 10 000 samples a second or more, at the feeder, some ten seconds of steady welding.',
  'check-programme': () =>
    'Read the process and programme shown on the source’s panel or in the robot job.',
  'check-gas': ({ compareWithProcedure }) =>
    `Read the cylinder label or the mixer setting, and measure the flow at the nozzle.${compareWithProcedure ? ' Compare with the gas of the qualified procedure.' : ''}`,
  'check-source-terminals': () =>
    `Have the volts at the source’s output read while welding (${BY_WHOM}), and see that it runs constant voltage, with all mains phases present.`,
  'check-leads': () =>
    `Have the volts at the source and at the feeder read while welding (${BY_WHOM}). With the power off, look at the ground clamp, lead connections, gun cable and contact tip.`,
  'check-shielding': () =>
    'Look at the cylinder gauge and flow meter, the hose, the nozzle (spatter) and draughts; look at the bead from that place on for pores.',
  'check-stubbing': () =>
    'Hold the voltage at the feeder and the timed wire feed against the qualified procedure; look at the inductance setting, which slows every short when it is high.',
  'check-long-arc': () =>
    'Time the wire feed over a measured length and read the voltage at the feeder; watch through the shield whether the arc is long.',
  'check-measured-not-dial': () =>
    'Take the voltage measured at the feeder, not the dial, as the one to hold against the qualified procedure.',
  'check-polarity': () =>
    'With the power off, see which terminal the gun lead and the work lead are on.',
  'check-stick-out': () =>
    'Measure the wire between contact tip and work with the power off, and time the wire feed over a measured length.',
  'check-feed': () =>
    'Inch wire for ten seconds with the gun clear of work and people (the trigger puts voltage on the wire), measure or weigh it, and compare with the stated feed; look at drive rolls, liner, contact tip and spool brake.',
  'check-volts-for-feed': ({ voltsGiven }) =>
    voltsGiven
      ? 'Time the wire feed over a measured length, and hold it and the measured voltage against the qualified procedure.'
      : `Read the voltage at the feeder while welding (${BY_WHOM}) and time the wire feed; hold both against the qualified procedure.`,
  'check-spool': () =>
    'With the power off, measure the wire itself with calipers and read the label of the spool.',
  'check-settings-again': () =>
    'Read the dial, the voltage at the feeder and the wire feed again, at the machine.',
  'check-feeder-voltage': () =>
    `Read the voltage at the feeder while welding (${BY_WHOM}), and state it together with the place where it was read.`,
  'check-zone': () =>
    'Note volts at the feeder and amperes while welding, and see how close the qualified procedure lets you come to this zone.',
};
