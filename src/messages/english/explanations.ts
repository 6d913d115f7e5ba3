import type { Mode } from '../../core/index.js';
import type { ExplanationParams } from '../rooms/explanations.js';
import type { CatalogueOf, Writer } from '../writer.js';

const named = (modes: readonly Mode[], write: Writer): string =>
  write.and(modes.map((mode) => write.mode(mode)));

export const EXPLANATIONS: CatalogueOf<ExplanationParams> = {
  'recording-cannot-support': () =>
    'The recording cannot carry the claim; look at the recording before the machine.',
  'pulsed-programme-running': () =>
    'A pulsed programme seems to run where constant voltage was meant.',
  'pulsed-programme-missing': () =>
    'A pulsed programme was meant, and the source seems to run without it.',
  'controlled-dip-running': () =>
    'The source runs a programme that controls each short circuit, where another mode was meant.',
  'wrong-gas-for-mode': ({ wanted, carries }, write) =>
    `${write.mode(wanted)} is wanted in a gas that ${carries === 'not' ? 'does not carry it' : 'may not carry it'}.`,
  'gas-mode-conflict': ({ seen, gas }, write) =>
    `${named(seen, write)} was seen, and ${write.gas(gas)} is stated. Both cannot be: either the gas is not as stated, or the recording was read wrongly (small drops off the axis sound alike).`,
  'drooping-supply': () =>
    'The source droops: its terminals stand well below the set voltage under load.',
  'lead-loss': () =>
    'More voltage is lost between source and arc than leads and joints should take.',
  'shielding-lost': ({ from, to, atS }, write) =>
    `The mode changed for good from ${write.mode(from)} to ${write.mode(to)} at ${write.fixed(atS, 1)} s with the settings untouched, as when shielding gas is lost.`,
  'even-dip-like-pulses': () =>
    'Volts and amperes are those of short-circuit: a source that controls each short beats as evenly as pulses do.',
  'cold-spray': ({ shorts }) =>
    shorts
      ? 'A little too cold for spray: the drops touch the pool before they leave the wire.'
      : 'Too cold for spray: the current would do, the voltage does not.',
  'hot-dip': () => 'Too hot for short-circuit at this feed: the wire no longer reaches the pool.',
  'wrong-wire': ({ thicker }) =>
    `The feed draws ${thicker ? 'more' : 'less'} current than the stated wire would, as a ${thicker ? 'thicker' : 'thinner'} one does.`,
  stubbing: () => 'The wire stubs: it dives into the pool and each short lasts too long.',
  'long-arc': () =>
    'The arc is long: there is more voltage than the current at this feed asks for.',
  'normal-drop': ({ wanted }, write) =>
    `The set voltage would suit ${write.mode(wanted)}, but after the usual losses the arc gets less.`,
  'wrong-polarity': () =>
    'The current is what electrode negative would draw; solid wire is run on electrode positive.',
  'long-stick-out': ({ shown }) => {
    if (shown === 'by-current') return 'The current is low for the feed, as with a long stick-out.';
    return shown === 'as-stated'
      ? 'The stick-out is long, which lowers the current the feed draws.'
      : 'A long stick-out would lower current and arc voltage.';
  },
  'feed-trouble': () => 'The wire may not arrive evenly, or slower than stated.',
  'wrong-setting': (params, write) =>
    params.how === 'suits-another'
      ? `The settings suit ${write.mode(params.seen)}, not ${write.mode(params.wanted)}.`
      : 'The machine may not have run at the settings stated.',
  'set-voltage-uncertain': ({ open }, write) =>
    `Only the set voltage is known. What it leaves at the feeder spans ${named(open, write)}: get the measured voltage first.`,
  'transition-zone': ({ open }, write) =>
    `The working point lies where ${named(open, write)} meet and the sources disagree; either may come without any change of settings.`,
  'gas-not-as-stated': ({ gasStated }) =>
    gasStated
      ? 'Volts and amperes permit spray, and the transfer is globular: the gas may hold more CO2 than stated, or not reach the arc.'
      : 'The gas is not stated; too much CO2 would keep the arc globular.',
};
