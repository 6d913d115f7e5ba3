import type { NextParams } from '../rooms/evidence.js';
import type { CatalogueOf } from '../writer.js';

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
    'Measure the volts at the source’s own terminals while welding, and see that it runs constant voltage, with all mains phases present.',
  'check-leads': () =>
    'While welding, measure the volts at the source and at the feeder; feel for warm joints afterwards, with the power off. Look at the ground clamp, lead connections, gun cable and contact tip.',
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
    'Run wire for ten seconds with the arc off, measure or weigh it, and compare with the stated feed; look at drive rolls, liner, contact tip and spool brake.',
  'check-settings-for-wanted': () =>
    'Read the voltage at the feeder and time the wire feed, and hold both against the qualified procedure.',
  'check-settings-again': () =>
    'Read the dial, the voltage at the feeder and the wire feed again, at the machine.',
  'check-feeder-voltage': () =>
    'Read the voltage at the feeder while welding, and state it together with the place where it was read.',
  'check-zone': () =>
    'Note volts at the feeder and amperes while welding, and see how close the qualified procedure lets you come to this zone.',
};
