import type { ColdSign, ConditionName, ConditionParams } from '../rooms/condition.js';
import type { CatalogueOf, Writer } from '../writer.js';

const SIGNS: Readonly<Record<ColdSign, string>> = {
  stubbing: 'stubbing',
  'long-time-shorted': 'more than 30 % of the time shorted',
  'current-dips': 'dips of the current',
};

const times = (count: number): string => (count === 1 ? 'once' : `${count} times`);
const ms = (seconds: number, write: Writer): string => `${write.short(1000 * seconds, 0)} ms`;
const s = (seconds: number, write: Writer): string => `${write.fixed(seconds, 2)} s`;

const USUAL: Readonly<Record<ConditionName, string>> = {
  stubbing: 'none; a short over 20 ms counts (common practice, no source)',
  'arc-outs': 'none within a weld (own choice)',
  'burn-back': 'none; 4 V over the median of the run before the arc goes out (own choice)',
  'long-arc': 'up to 2 % of the arc time; 3 V over the median of the run for 0.1 s (own choice)',
  'current-dips': 'none; a fifth below the median of the run for 0.2 s (own choice)',
  'slow-swings':
    'up to 15 % from the 5th to the 95th percentile of the current over 0.2 s (own choice)',
  touches: 'few (own choice)',
  spatter:
    'rupture at 1.5 to 2.5 times the mean current (from memory of oscillograms in Norrish and Lancaster), spread up to 30 % of it (own choice); that the spread goes with spatter: Kang, Rhee and Eom 1999',
  regularity: 'depends on the mode',
  'cold-lap': 'none of these signs (own choice)',
};

const REGULAR = {
  'short-circuit':
    'up to 1 for the spread of short time and of arc time over their means, added (the sum from memory of Rezende and others 2011; the limit own choice)',
  'pulsed-spray': 'pulses within 15 % of their clock (own choice)',
  spray: 'voltage within 4 % of its mean (own choice)',
} as const;

const TOUCHES = {
  'short-circuit': 'up to a tenth of all shorts (own choice)',
  'pulsed-spray': 'up to 2 shorts a second (own choice)',
  spray: 'up to 2 shorts a second (own choice)',
} as const;

export const CONDITION: CatalogueOf<ConditionParams> = {
  'condition-stubbing': ({ count, totalS, longestS }, write) =>
    count === 0
      ? 'No short lasts over 20 ms.'
      : `The wire stubs ${times(count)}: shorts over 20 ms, the longest ${ms(longestS, write)}, ${s(totalS, write)} in all. Voltage too low or feed too fast for the rest, or too much inductance, does this.`,
  'condition-arc-outs': ({ count, totalS, by }, write) => {
    if (by === 'sound')
      return count === 0
        ? 'The sound of the arc is not interrupted.'
        : `The sound of the arc stops ${times(count)}, ${s(totalS, write)} in all, and comes back. An arc that goes out and a pause of the welder sound the same.`;
    if (count === 0) return 'The arc does not go out.';
    const doubt =
      by === 'current' ? ' From the current alone a trigger let go looks the same.' : '';
    return `The arc goes out ${times(count)}, ${s(totalS, write)} in all.${doubt}`;
  },
  'condition-burn-back': ({ count }) =>
    count === 0
      ? 'No burn-back.'
      : `Burn-back ${times(count)}: the arc grows long, then goes out with the source on. Look at contact tip, liner and drive rolls.`,
  'condition-long-arc': ({ count, totalS }, write) =>
    count === 0
      ? 'The arc is nowhere longer than in the rest of the run.'
      : `The arc grows long ${times(count)}, ${s(totalS, write)} in all. A feed that slips and a gun drawn away look the same.`,
  'condition-current-dips': ({ count, totalS }, write) =>
    count === 0
      ? 'The current dips nowhere.'
      : `The current dips ${times(count)}, ${s(totalS, write)} in all. A feed that slips and a longer stick-out look the same.`,
  'condition-slow-swings': ({ shareOfMean, periodS }, write) => {
    const beat = periodS === null ? '' : `, mostly every ${write.fixed(periodS, 1)} s`;
    return `The current swings slowly by ${write.percent(shareOfMean)} of its mean${beat}. A feed that hunts, a weave and an unsteady hand look the same.`;
  },
  'condition-touches': (params, write) =>
    params.mode === 'short-circuit'
      ? `${write.percent(params.shareOfShorts)} of the shorts are touches that carry no metal over.`
      : `${write.figures(params.rateHz, 2)} shorts a second where free flight has none.`,
  'condition-spatter': ({ meanA, sdA, mostA, overMeanCurrent }, write) =>
    `Bridges break at ${write.fixed(meanA, 0)} A, spread ${write.fixed(sdA, 0)} A, at most ${write.fixed(mostA, 0)} A: ${write.fixed(overMeanCurrent, 1)} times the mean current. High and uneven currents at rupture throw spatter; how much, a trace does not show.`,
  'condition-regularity': (params, write) => {
    if (params.mode === 'short-circuit')
      return `Spread of short time and arc time over their means, added: ${write.fixed(params.index, 2)}.`;
    if (params.mode === 'pulsed-spray')
      return `The pulses keep their clock to ${write.fixed(100 * params.clockCv, 1)} %.`;
    return `The voltage keeps within ${write.fixed(100 * params.spreadShare, 1)} % of its mean.`;
  },
  'condition-cold-lap': ({ signs }, write) =>
    `Signs that go with a cold weld: ${write.and(signs.map((one) => SIGNS[one]))}. They do not show cold lap; look at the toes of the bead there.`,
  'condition-usual': ({ of, mode }) => {
    if (mode !== null && mode !== 'globular' && of === 'regularity')
      return `Usual: ${REGULAR[mode]}.`;
    if (mode !== null && mode !== 'globular' && of === 'touches') return `Usual: ${TOUCHES[mode]}.`;
    return `Usual: ${USUAL[of]}.`;
  },
  'condition-not-by-sound': () =>
    'Sound shows neither stubbing, burn-back and arc length nor the current and what swings in it: log the voltage and current for those.',
  'condition-no-current': () =>
    'Without the current, dips, slow swings and the current at rupture are not shown.',
  'condition-no-voltage': () =>
    'Without the voltage, stubbing, burn-back, long arc and what the shorts do are not shown.',
  'condition-no-mode': () =>
    'No one mode is named, so that shorts, spatter and regularity have no usual range to be held against.',
  'condition-no-fusion': () =>
    'Fusion, cold lap, porosity and undercut are not shown by any recording of the arc.',
};
