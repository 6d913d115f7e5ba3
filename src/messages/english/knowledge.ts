import type { Co2Saying, KnowledgeParams, SourceCertainty, Sourcing } from '../rooms/knowledge.js';
import type { Span } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const CERTAINTY: Readonly<Record<SourceCertainty, string>> = {
  F: 'read in the source named',
  F2: 'read in a secondary text; check the primary before relying on it',
  M: 'from memory of the source named',
  CP: 'common practice, no source',
  X: 'worked out here from other rows',
};

const CO2_SAYS: Readonly<Record<Co2Saying, string>> = {
  'globular-stays-above-15': 'above about 15 % CO2 globular does not turn into spray',
  'spray-needs-80-argon': 'spray needs at least 80 % argon',
  'no-spray-above-20-to-25': 'no spray above 20–25 % CO2; 75/25 cannot',
  'measured-at-20': 'spray was measured at 20 % CO2, but only at 330–350 A with 1.2 mm wire',
  'repelled-above-30': 'repelled drops dominate above 30 % CO2 for every diameter',
  '82-18-sold-for-spray': '82/18 is routinely sold as able to spray',
  'pure-never':
    'pure CO2 never gives axial spray; drops shrink with current but leave off the axis',
};

const authority = ({ source, certainty }: Sourcing): string =>
  certainty === 'F' ? source : `${source} (${CERTAINTY[certainty]})`;

const disputedIn = (disputed: boolean): string => (disputed ? ' (disputed in this gas)' : '');

const amperes = (current: Span | null, write: Writer): string =>
  current === null ? 'the transition current (not known)' : `${write.span(current, 0)} A`;

export const KNOWLEDGE: CatalogueOf<KnowledgeParams> = {
  authority,
  'band-gas': ({ gas }) => gas,
  'band-remark': ({ remark }) => remark,
  'band-row': (row, write) => {
    const parts = [
      row.voltageV === null ? null : `${write.span(row.voltageV)} V`,
      row.currentA === null ? null : `${write.span(row.currentA, 0)} A`,
      row.feedMPerMin === null ? null : write.inUnits(row.feedMPerMin, 'feed'),
    ].filter((part) => part !== null);
    const wire = row.diameterMm === null ? null : write.inUnits(row.diameterMm, 'diameter');
    const scope = [wire, row.gas].filter((part) => part !== null);
    return `${parts.join(', ')} (${scope.join(', ')}): ${authority(row)}`;
  },
  'transition-row': (row, write) =>
    `from ${write.span(row.fromA, 0)} A (${write.inUnits(row.diameterMm, 'diameter')}, ${row.gas}): ${authority(row)}`,
  'co2-row': (row) => `${CO2_SAYS[row.saying]}: ${authority(row)}`,
  'spray-in-gas': (params, write) => {
    if (params.answer === 'unknown') return 'Without the gas nothing can be said about spray.';
    const gas = write.gas(params.gas);
    if (params.answer === 'yes') return `${gas} carries axial spray above the transition current.`;
    const head =
      params.answer === 'no'
        ? `Published knowledge gives no axial spray in ${gas}`
        : `The sources disagree about axial spray in ${gas}`;
    const limits = params.limits.map(({ saying, source }) => `${CO2_SAYS[saying]} (${source})`);
    return `${head}: ${limits.join('; ')}.`;
  },
  'lies-up-to': ({ topV }, write) => `up to ${write.span(topV)} V`,
  'lies-above': ({ bottomV, belowA }, write) =>
    `above ${write.span(bottomV)} V${belowA === null ? '' : `, below ${amperes(belowA, write)}`}`,
  'lies-in-spray': ({ bottomV, aboveA, disputed }, write) =>
    `above ${write.span(bottomV)} V and ${amperes(aboveA, write)}${disputedIn(disputed)}`,
  'lies-under-pulses': ({ disputed }) =>
    `at any mean current, with a pulsed programme${disputedIn(disputed)}`,
  'not-in-this-gas': () => 'not in this gas',
  'mode-lies': ({ mode, where }, write) => `${write.mode(mode)}: ${write.say(where)}`,
  'spray-begins': ({ currentA }, write) =>
    `spray begins between ${write.plain(Math.round(currentA.min))} and ${write.plain(Math.round(currentA.max))} A`,
  'window-scope': ({ diameterMm, material, materialStated, gas }, write) => {
    const wire =
      diameterMm === null ? 'any wire diameter' : `${write.inUnits(diameterMm, 'diameter')} wire`;
    const taken = materialStated ? '' : ' (taken: no material was stated)';
    const inGas = gas === null ? 'any gas' : `gas ${write.gas(gas)}`;
    return `${wire}, ${material.replaceAll('-', ' ')}${taken}, ${inGas}`;
  },
};
