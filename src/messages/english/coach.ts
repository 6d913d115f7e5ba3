import { capital } from '../../core/index.js';
import type { CoachParams, ProcessOutcome } from '../rooms/coach.js';
import type { Span } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const MODE_OF = { dip: 'short-circuit', globular: 'globular', spray: 'spray' } as const;

/** Outcomes that are no mode of their own. */
const OUTCOMES: Readonly<Record<Exclude<ProcessOutcome, keyof typeof MODE_OF>, string>> = {
  stubbing: 'stubbing',
  'spray-with-shorts': 'spray with shorts',
  'long-arc': 'a long arc',
  'burn-back': 'burn-back',
};

/** An outcome by the reader's name of the mode, where it is one. */
const named = (outcome: ProcessOutcome, write: Writer): string =>
  outcome === 'dip' || outcome === 'globular' || outcome === 'spray'
    ? write.mode(MODE_OF[outcome])
    : OUTCOMES[outcome];

/** `2 to 4.5 V`. */
function steps({ min, max }: Span, write: Writer): string {
  const [low, high] = [write.short(min, 1), write.short(max, 1)];
  return low === high ? `${low} V` : `${low} to ${high} V`;
}

/** `2 to 4.5 V up`; up or down by up to so much where the window lies on both sides. */
function move({ min, max }: Span, write: Writer): string {
  if (min >= 0) return `${steps({ min, max }, write)} up`;
  if (max <= 0) return `${steps({ min: -max, max: -min }, write)} down`;
  return `up to ${write.short(Math.max(max, -min), 1)} V ${max > -min ? 'up' : 'down'}`;
}

function feed(mPerMin: Span | null, currentA: Span, write: Writer): string {
  const amps = `${write.span(currentA, 0)} A`;
  return mPerMin === null ? amps : `${write.inUnits(mPerMin, 'feed')} (${amps})`;
}

export const COACH: CatalogueOf<CoachParams> = {
  'most-likely': ({ outcome, inTen, alike = null, next, dialV }, write) => {
    const one = named(outcome, write);
    const head =
      alike === null
        ? `Most likely ${one} (${write.plain(inTen)} in 10)`
        : `Either ${one} or ${named(alike, write)}, one as likely as the other (${write.plain(inTen)} in 10 each)`;
    if (next === null) return `${head}.`;
    const other = named(next.outcome, write);
    if (dialV !== null && dialV > next.atV) {
      const loss = `${write.short(dialV - next.atV, 1)} V between dial and feeder`;
      const when =
        next.side === 'below' ? `more than ${loss} are lost` : `less than ${loss} are lost`;
      return `${head}; ${other} if ${when}.`;
    }
    const at = `${next.side} ${write.fixed(next.atV, 1)} V at the feeder`;
    return next.outcome === alike
      ? `${head}: ${other} ${at}, ${one} ${next.side === 'below' ? 'above' : 'below'} it.`
      : `${head}; ${other} ${at}.`;
  },
  'outcome-chance': ({ outcome, chance, inTen, flipsAtV, likeliest, alike }, write) => {
    const name = capital(named(outcome, write));
    const words = { permitted: 'expected', unlikely: 'unlikely', 'not-possible': 'not possible' };
    const share = chance === 'not-possible' ? '' : ` (${write.plain(inTen)} in 10)`;
    if (alike) return `${name}: as likely as the other${share}.`;
    const flip =
      flipsAtV === null
        ? ''
        : likeliest
          ? `, as far as ${write.fixed(flipsAtV, 1)} V`
          : `; the likeliest from ${write.fixed(flipsAtV, 1)} V`;
    return `${name}: ${words[chance]}${share}${flip}.`;
  },
  'expected-losses': ({ lossV }, write) =>
    `Between dial and feeder ${write.span(lossV)} V are to be expected at this current.`,
  'move-volts': ({ wanted, trouble, byV, targetV }, write) =>
    `Too ${trouble === 'too-cold' ? 'cold' : 'hot'} for ${write.mode(wanted)}: ${move(byV, write)} at this feed (${write.span(targetV)} V at the feeder).`,
  'move-feed': ({ up, feedMPerMin, currentA, instead }, write) =>
    `${instead ? 'Or the' : 'The'} feed ${up ? 'up' : 'down'} to ${feed(feedMPerMin, currentA, write)} at these volts.`,
  'move-both': ({ up, feedMPerMin, currentA, targetV }, write) =>
    `The feed ${up ? 'up' : 'down'} to ${feed(feedMPerMin, currentA, write)}, with ${write.span(targetV)} V at the feeder: neither alone does it.`,
  'settings-suit': ({ wanted, inTen, targetV }, write) =>
    `The settings suit ${write.mode(wanted)} (${write.plain(inTen)} in 10); at this current it lies at ${write.span(targetV)} V at the feeder.`,
  'look-before-moving': ({ wanted }, write) =>
    `The settings suit ${write.mode(wanted)}, and something else was seen: find the cause before you move anything.`,
  'measure-first': ({ wanted, targetV }, write) =>
    `Measure the volts at the feeder while welding first: ${write.mode(wanted)} lies at ${write.span(targetV)} V there.`,
  'gas-carries-spray': ({ gas }, write) => `The gas carries spray: ${write.gas(gas)}.`,
  'gas-never-carries': ({ wanted, gas, nearestGas }, write) =>
    `No setting gives ${write.mode(wanted)} in ${write.gas(gas)}.${nearestGas === null ? '' : ` The nearest that does: ${nearestGas}.`} In this gas ${write.mode('short-circuit')} and ${write.mode('globular')} can be had.`,
  'gas-without-source': ({ wanted, gas, nearestGas }, write) =>
    `No source read here gives ${write.mode(wanted)} in ${write.gas(gas)}: it is not to be expected.${nearestGas === null ? '' : ` The nearest that is known to: ${nearestGas}.`}`,
  'wire-without-rows': ({ wanted, sizesMm }, write) =>
    `For ${write.mode(wanted)} with this wire no current is held; rows are held for ${write.inUnits(sizesMm, 'diameter')}.`,
  'source-cannot-pulse': () =>
    'A steady source gives no pulsed spray; spray above the transition current is the nearest.',
  'polarity-first': () =>
    'Everything held here is for electrode positive: see to the polarity before any setting.',
  'pulse-by-programme': () =>
    'Pulsed spray is a matter of the source’s programme for this wire and gas, not of a place in volts and feed.',
  'no-settings-held': ({ wanted }, write) =>
    `No volts and feed are held here that give ${write.mode(wanted)} with this wire and gas.`,
  'mixture-decides': ({ wanted, symbol }, write) =>
    `${symbol} names many mixtures, and whether ${write.mode(wanted)} can be had hangs on which: state the one on the label of the cylinder.`,
  'set-like-this': ({ feedMPerMin, currentA, feederV, inTen }, write) =>
    `${feedMPerMin === null ? '' : `${write.inUnits(feedMPerMin, 'feed')}, `}about ${write.fixed(currentA, 0)} A, ${write.span(feederV)} V at the feeder (${write.plain(inTen)} in 10).`,
  'keep-stick-out': ({ stickOutMm }, write) => `Stick-out ${write.inUnits(stickOutMm, 'length')}.`,
  'windows-published': ({ published }) =>
    published
      ? 'The currents lie within published windows of this wire and gas.'
      : 'No published window is held for just this wire and gas: the currents are worked out.',
  'heat-input-lacks': ({ volts, amps }, write) =>
    `Travel speed is stated; for the heat input ${write.and([volts ? 'volts' : '', amps ? 'amperes' : ''].filter((one) => one !== ''))} are missing.`,
  'plate-changes-nothing': () =>
    'Plate thickness is stated; it changes nothing here, since it counts for short-circuit on thick plate alone.',
  'map-only-wire': () =>
    'Of this wire a few published rows are held, and no recording of it is judged; for metal-cored wire they part by 5 V.',
  'state-wire-and-gas': () => 'State wire diameter and gas: without them no settings can be named.',
  'inside-procedure': () => 'Only as far as your qualified procedure allows it.',
};
