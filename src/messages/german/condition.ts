import type { ColdSign, ConditionName, ConditionParams } from '../rooms/condition.js';
import type { CatalogueOf, Writer } from '../writer.js';

const SIGNS: Readonly<Record<ColdSign, string>> = {
  stubbing: 'Stochern des Drahtes',
  'long-time-shorted': 'über 30 % der Zeit im Kurzschluss',
  'current-dips': 'Einbrüche des Stroms',
};

const times = (count: number): string => (count === 1 ? 'einmal' : `${count}-mal`);
const ms = (seconds: number, write: Writer): string => `${write.short(1000 * seconds, 0)} ms`;
const s = (seconds: number, write: Writer): string => `${write.fixed(seconds, 2)} s`;

const USUAL: Readonly<Record<ConditionName, string>> = {
  stubbing: 'keines; gezählt wird ein Kurzschluss über 20 ms (gängige Praxis, ohne Quelle)',
  'arc-outs': 'keine innerhalb einer Naht (eigene Festlegung)',
  'burn-back':
    'keines; 4 V über dem Median des Versuchs, bevor der Lichtbogen erlischt (eigene Festlegung)',
  'long-arc':
    'bis 2 % der Lichtbogenzeit; 3 V über dem Median des Versuchs für 0,1 s (eigene Festlegung)',
  'current-dips': 'keine; ein Fünftel unter dem Median des Versuchs für 0,2 s (eigene Festlegung)',
  'slow-swings':
    'bis 15 % vom 5. zum 95. Perzentil des über 0,2 s gemittelten Stroms (eigene Festlegung)',
  touches: 'wenige (eigene Festlegung)',
  spatter:
    'Abriss beim 1,5- bis 2,5-Fachen des mittleren Stroms (aus der Erinnerung an Oszillogramme bei Norrish und Lancaster), Streuung bis 30 % davon (eigene Festlegung); dass die Streuung mit den Spritzern zunimmt: Kang, Rhee und Eom 1999',
  regularity: 'hängt von der Lichtbogenart ab',
  'cold-lap': 'keines dieser Anzeichen (eigene Festlegung)',
};

const REGULAR = {
  'short-circuit':
    'bis 1 für die Summe der Streuungen von Kurzschlussdauer und Brennzeit, je durch den Mittelwert (die Summe aus der Erinnerung an Rezende und andere 2011; die Grenze eigene Festlegung)',
  'pulsed-spray': 'Impulse auf 15 % in ihrem Takt (eigene Festlegung)',
  spray: 'Spannung auf 4 % um ihren Mittelwert (eigene Festlegung)',
} as const;

const TOUCHES = {
  'short-circuit': 'bis zu einem Zehntel der Kurzschlüsse (eigene Festlegung)',
  'pulsed-spray': 'bis 2 Kurzschlüsse je Sekunde (eigene Festlegung)',
  spray: 'bis 2 Kurzschlüsse je Sekunde (eigene Festlegung)',
} as const;

export const CONDITION: CatalogueOf<ConditionParams> = {
  'condition-stubbing': ({ count, totalS, longestS }, write) =>
    count === 0
      ? 'Kein Kurzschluss dauert länger als 20 ms.'
      : `Der Draht stochert ${times(count)}: Kurzschlüsse über 20 ms, der längste ${ms(longestS, write)}, zusammen ${s(totalS, write)}. Das kommt von zu niedriger Spannung, zu schnellem Drahtvorschub oder zu großer Drossel.`,
  'condition-arc-outs': ({ count, totalS, by }, write) => {
    if (by === 'sound')
      return count === 0
        ? 'Das Geräusch des Lichtbogens setzt nicht aus.'
        : `Das Geräusch des Lichtbogens setzt ${times(count)} aus, zusammen ${s(totalS, write)}, und kommt wieder. Ein erloschener Lichtbogen und eine Pause des Schweißers klingen gleich.`;
    if (count === 0) return 'Der Lichtbogen erlischt nicht.';
    const doubt =
      by === 'current' ? ' Am Strom allein sieht ein losgelassener Brennertaster ebenso aus.' : '';
    return `Der Lichtbogen erlischt ${times(count)}, zusammen ${s(totalS, write)}.${doubt}`;
  },
  'condition-burn-back': ({ count }) =>
    count === 0
      ? 'Kein Zurückbrennen des Drahtes.'
      : `Der Draht brennt ${times(count)} zurück: Der Lichtbogen wird lang und erlischt dann, während die Stromquelle eingeschaltet ist. Kontaktrohr, Drahtführungsseele und Vorschubrollen ansehen.`,
  'condition-long-arc': ({ count, totalS }, write) =>
    count === 0
      ? 'Der Lichtbogen ist nirgends länger als sonst im Versuch.'
      : `Der Lichtbogen wird ${times(count)} lang, zusammen ${s(totalS, write)}. Ein rutschender Drahtvorschub und ein weggezogener Brenner sehen gleich aus.`,
  'condition-current-dips': ({ count, totalS }, write) =>
    count === 0
      ? 'Der Strom bricht nirgends ein.'
      : `Der Strom bricht ${times(count)} ein, zusammen ${s(totalS, write)}. Ein rutschender Drahtvorschub und ein längeres freies Drahtende sehen gleich aus.`,
  'condition-slow-swings': ({ shareOfMean, periodS }, write) => {
    const beat = periodS === null ? '' : `, meist alle ${write.fixed(periodS, 1)} s`;
    return `Der Strom schwankt langsam um ${write.percent(shareOfMean)} seines Mittelwerts${beat}. Ein ungleichmäßiger Drahtvorschub, Pendeln und eine unruhige Hand sehen gleich aus.`;
  },
  'condition-touches': (params, write) =>
    params.mode === 'short-circuit'
      ? `${write.percent(params.shareOfShorts)} der Kurzschlüsse sind Berührungen ohne Werkstoffübergang.`
      : `${write.figures(params.rateHz, 2)} Kurzschlüsse je Sekunde, wo der freie Übergang keine hat.`,
  'condition-spatter': ({ meanA, sdA, mostA, overMeanCurrent }, write) =>
    `Die Brücken reißen bei ${write.fixed(meanA, 0)} A, Streuung ${write.fixed(sdA, 0)} A, höchstens ${write.fixed(mostA, 0)} A: dem ${write.fixed(overMeanCurrent, 1)}-Fachen des mittleren Stroms. Hohe und ungleiche Ströme beim Abriss werfen Spritzer; wie viele, zeigt eine Messreihe nicht.`,
  'condition-regularity': (params, write) => {
    if (params.mode === 'short-circuit')
      return `Streuungen von Kurzschlussdauer und Brennzeit, je durch den Mittelwert, zusammen: ${write.fixed(params.index, 2)}.`;
    if (params.mode === 'pulsed-spray')
      return `Die Impulse halten ihren Takt auf ${write.fixed(100 * params.clockCv, 1)} %.`;
    return `Die Spannung bleibt auf ${write.fixed(100 * params.spreadShare, 1)} % um ihren Mittelwert.`;
  },
  'condition-cold-lap': ({ signs }, write) =>
    `Anzeichen, wie sie zu einer kalten Naht gehören: ${write.and(signs.map((one) => SIGNS[one]))}. Einen Bindefehler zeigen sie nicht; dort die Nahtübergänge ansehen.`,
  'condition-usual': ({ of, mode }) => {
    if (mode !== null && mode !== 'globular' && of === 'regularity')
      return `Üblich: ${REGULAR[mode]}.`;
    if (mode !== null && mode !== 'globular' && of === 'touches')
      return `Üblich: ${TOUCHES[mode]}.`;
    return `Üblich: ${USUAL[of]}.`;
  },
  'condition-not-by-sound': () =>
    'Der Ton zeigt weder Stochern, Zurückbrennen und Lichtbogenlänge noch den Strom und seine Schwankungen: dafür Spannung und Strom aufzeichnen.',
  'condition-no-current': () =>
    'Ohne den Strom sind Einbrüche, langsame Schwankungen und der Strom beim Abriss nicht zu sehen.',
  'condition-no-voltage': () =>
    'Ohne die Spannung sind Stochern, Zurückbrennen, langer Lichtbogen und die Kurzschlüsse nicht zu sehen.',
  'condition-no-mode': () =>
    'Es wird keine einzelne Lichtbogenart genannt; darum fehlt für Kurzschlüsse, Spritzer und Regelmäßigkeit der übliche Bereich.',
  'condition-no-fusion': () =>
    'Einbrand, Bindefehler, Poren und Einbrandkerben zeigt keine Aufnahme des Lichtbogens.',
};
