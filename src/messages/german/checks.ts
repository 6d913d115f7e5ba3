import type { Mode } from '../../core/index.js';
import type { CheckParams, CodeRule, Place } from '../rooms/checks.js';
import type { Message } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';
import { AT_FEEDER } from './glossary.js';
import { modes } from './names.js';
import { SOURCES } from './sources.js';

const CHECK_THE_CODE = 'In der geltenden Ausgabe des eigenen Regelwerks nachsehen.';

const RULES: Readonly<Record<CodeRule, string>> = {
  'aws-d1':
    'AWS D1.1 führt den Kurzlichtbogen nicht als vorqualifiziert: Eine Schweißanweisung damit braucht ihre eigene Verfahrensprüfung. AWS D1.3 (Blech) lässt ihn vorqualifiziert zu.',
  'asme-ix':
    'ASME IX QW-409.2 zählt den Wechsel von Übergangs-, Sprüh- oder Impulslichtbogen zum Kurzlichtbogen, und umgekehrt, zu den wesentlichen Einflussgrößen.',
  'iso-15614':
    'ISO 15614-1: Der Kurzlichtbogen qualifiziert nur den Kurzlichtbogen; Sprüh-, Impuls- oder Übergangslichtbogen qualifiziert Sprüh-, Impuls- und Übergangslichtbogen.',
};

const PROGRAMME = {
  steady: 'Stromquelle laut Angabe ungepulst',
  pulsed: 'Stromquelle laut Angabe gepulst',
} as const;

/** The working point in words, as the beginning of a sentence. */
function at({ feederV, voltsBy, currentA, gas, source }: Place, write: Writer): string {
  const by = {
    measured: ` V ${AT_FEEDER}`,
    set: ` V ${AT_FEEDER}, wie die eingestellte Spannung sie erwarten lässt`,
    'place-unknown': ' V (Messstelle der Aufzeichnung nicht angegeben)',
  };
  const parts = [
    feederV === null ? null : `${write.span(feederV)}${by[voltsBy ?? 'measured']}`,
    currentA === null ? null : `${write.span(currentA, 0)} A`,
    gas === null ? null : write.gas(gas),
  ].filter((part) => part !== null);
  const where = parts.length === 0 ? 'Mit dieser Einstellung' : `Mit ${parts.join(', ')}`;
  return source === null ? where : `${where} (${PROGRAMME[source]})`;
}

/** "ein Kurzlichtbogen und ein Sprühlichtbogen" */
const some = (list: readonly Mode[], write: Writer): string =>
  write.and(list.map((mode) => `ein ${write.mode(mode)}`));

const areOrIs = (list: readonly unknown[]): string => (list.length > 1 ? 'sind' : 'ist');

/** "liegt über 24 V", "ist in diesem Gas nicht möglich" */
const lies = (where: Message, write: Writer): string =>
  `${where.code === 'not-in-this-gas' ? 'ist' : 'liegt'} ${write.say(where)}`;

export const CHECKS: CatalogueOf<CheckParams> = {
  'measured-above-dial': ({ setV, measuredV }, write) =>
    `Gemessen sind ${write.fixed(measuredV, 1)} V, eingestellt ${write.short(setV, 1)} V: Kein Verlust erhöht eine Spannung.`,
  'nothing-found': () => 'In der Aufnahme wurde kein Lichtbogen gefunden.',
  'not-analysed': () => 'Die Aufnahme ließ sich nicht auswerten.',
  'no-mode-named': () => 'Die Aufnahme nennt keine Lichtbogenart.',
  'confidence-only': ({ confidence }, write) =>
    `Die Lichtbogenart ist mit einer Sicherheit von nur ${write.percent(confidence)} genannt.`,
  'no-setting-stated': () => 'Es wurde keine Einstellung zum Vergleichen angegeben.',
  'polarity-not-held': () =>
    'Die Bereiche hier gelten für die Drahtelektrode am Pluspol; über diese Polung sagen sie nichts.',
  'setup-permits': ({ place, modes: possible }, write) =>
    `${at(place, write)} ${areOrIs(possible)} ${some(possible, write)} möglich.`,
  'setup-forbids': ({ place, modes: refused, outside }, write) => {
    const where = outside.map((one) => `der ${write.mode(one.mode)} ${lies(one.where, write)}`);
    const none = write.and(refused.map((mode) => `kein ${write.mode(mode)}`));
    return `${at(place, write)} ist ${none} möglich: ${where.join('; ')}.`;
  },
  'setup-leaves-open': ({ place, modes: seen, others }, write) =>
    `${at(place, write)} ${seen.length > 1 ? 'können' : 'kann'} sich ${some(seen, write)} einstellen, aber auch ${write.or(others.map((mode) => `ein ${write.mode(mode)}`)) || 'andere Lichtbogenarten'}.`,
  'wanted-and-seen': ({ wanted }, write) => `${write.mode(wanted)} war gewünscht und kam vor.`,
  'wanted-not-seen': ({ wanted, seen, shareOfTime }, write) => {
    const part =
      shareOfTime > 0 ? ` (${write.mode(wanted)} in ${write.percent(shareOfTime)} der Zeit)` : '';
    return `Gewünscht war der ${write.mode(wanted)}; erkannt ${seen.length > 1 ? 'wurden' : 'wurde'} ${modes(seen, write)}${part}.`;
  },
  'essential-variable': ({ seen, wanted }, write) =>
    `${write.mode(seen)} statt ${write.mode(wanted)} kann die Änderung einer wesentlichen Einflussgröße sein. ${CHECK_THE_CODE}`,
  'code-rule-from': ({ rule, source }) =>
    `${RULES[rule]} (${SOURCES[source]}, aus zweiter Hand.) ${CHECK_THE_CODE}`,
};
