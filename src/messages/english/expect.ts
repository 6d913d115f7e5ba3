import type { ExpectParams } from '../rooms/expect.js';
import type { CatalogueOf } from '../writer.js';

export const EXPECT: CatalogueOf<ExpectParams> = {
  'spray-disputed-below': ({ gas }, write) =>
    `The sources disagree about axial spray in ${write.gas(gas)}; each is listed under spray.`,
  'material-taken': () => 'No wire material was stated: carbon steel was taken.',
  'only-set-voltage': ({ feederV }, write) =>
    `Only the set voltage is known: losses and the spread between tables leave ${write.span(feederV)} V. Measure at the feeder while welding to narrow this.`,
  'thin-wire-drops': (_, write) =>
    `For wires below ${write.inUnits(0.9, 'diameter')} with less than 30 % CO2 drops were measured never to fall below the wire diameter (Soderstrom & Mendez 2008): "spray" means less for them.`,
  'plate-thick-for-short-circuit': () =>
    'Above about 6.4 mm (1/4 in) plate short-circuit transfer is taught to risk lack of fusion (common practice, no source; a guide, not a limit).',
  'heat-input-method': () =>
    'For waveform-controlled sources the product of mean volts and mean amperes may be off by up to 30 % either way (Sperko 2010); use the instantaneous power, sampled some 10 000 times a second (Melfi, Welding J. 2010). In axial spray the difference is small.',
};
