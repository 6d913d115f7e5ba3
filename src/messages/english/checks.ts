import type { Mode } from '../../core/index.js';
import type { CheckParams, CodeRule, Place } from '../rooms/checks.js';
import type { CatalogueOf, Writer } from '../writer.js';

const CHECK_THE_CODE = "Check your code's current edition.";

const RULES: Readonly<Record<CodeRule, string>> = {
  'aws-d1':
    'AWS D1.1 does not prequalify short-circuit transfer: a procedure with it needs its own qualification test. AWS D1.3 (sheet) allows it prequalified.',
  'asme-ix':
    'ASME IX QW-409.2 counts a change from globular, spray or pulsed to short-circuit, or the reverse, among the essential variables.',
  'iso-15614':
    'ISO 15614-1: short-circuit qualifies only short-circuit; spray, pulse or globular qualifies spray, pulse and globular.',
};

const named = (modes: readonly Mode[], write: Writer): string =>
  write.and(modes.map((mode) => write.mode(mode)));

/** The working point in words. */
function at({ feederV, voltsBy, currentA, gas, source }: Place, write: Writer): string {
  const by = {
    measured: ' V at the feeder',
    set: ' V to be expected at the feeder from the set voltage',
    'place-unknown': ' V (the trace’s place is not stated)',
  };
  const parts = [
    feederV === null ? null : `${write.span(feederV)}${by[voltsBy ?? 'measured']}`,
    currentA === null ? null : `${write.span(currentA, 0)} A`,
    gas === null ? null : write.gas(gas),
    source === null ? null : `a source said to run ${source}`,
  ];
  return parts.filter((part) => part !== null).join(', ') || 'The set-up';
}

export const CHECKS: CatalogueOf<CheckParams> = {
  'nothing-found': () => 'No arc was found in the recording.',
  'not-analysed': () => 'The recording could not be analysed.',
  'no-mode-named': () => 'The recording names no mode.',
  'confidence-only': ({ confidence }, write) =>
    `The mode is named with a confidence of only ${write.percent(confidence)}.`,
  'no-setting-stated': () => 'No setting was stated to compare with.',
  'polarity-not-held': () =>
    'The bands held here are for electrode positive; they say nothing about this polarity.',
  'setup-permits': ({ place, modes }, write) =>
    `${at(place, write)} permits ${named(modes, write)}.`,
  'setup-forbids': ({ place, modes, outside }, write) => {
    const lies = outside.map(({ mode, where }) => `${write.mode(mode)} lies ${write.say(where)}`);
    return `${at(place, write)} does not permit ${named(modes, write)}: ${lies.join('; ')}.`;
  },
  'setup-leaves-open': ({ place, modes, others }, write) =>
    `${at(place, write)} may give ${named(modes, write)}, but also ${write.or(others.map((mode) => write.mode(mode))) || 'others'}.`,
  'measured-above-dial': ({ setV, measuredV }, write) =>
    `${write.fixed(measuredV, 1)} V were measured and ${write.short(setV, 1)} V are set: no loss raises a voltage.`,
  'wanted-and-seen': ({ wanted }, write) => `${write.mode(wanted)} was wanted and seen.`,
  'wanted-not-seen': ({ wanted, seen, shareOfTime }, write) => {
    const part =
      shareOfTime > 0
        ? ` (${write.mode(wanted)} for ${write.percent(shareOfTime)} of the time)`
        : '';
    return `${write.mode(wanted)} was wanted; ${named(seen, write)} was seen${part}.`;
  },
  'essential-variable': ({ seen, wanted }, write) =>
    `${write.mode(seen)} instead of ${write.mode(wanted)} may be a change of an essential variable. ${CHECK_THE_CODE}`,
  'code-rule-from': ({ rule, source }) =>
    `${RULES[rule]} (${source}, second hand.) ${CHECK_THE_CODE}`,
};
