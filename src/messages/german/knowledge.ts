import type { BandGas, BandRemark, Co2Saying, KnowledgeParams } from '../rooms/knowledge.js';
import type { Span } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';
import { GERMAN_MATERIALS } from './glossary.js';
import { authority, SOURCES } from './sources.js';

const GASES: Readonly<Record<BandGas, string>> = {
  '80Ar/20CO2': '80Ar/20CO2',
  '90Ar/10CO2': '90Ar/10CO2',
  '90He/7.5Ar/2.5CO2': '90He/7,5Ar/2,5CO2',
  '98Ar/2O2': '98Ar/2O2',
  '99Ar/1O2': '99Ar/1O2',
  Ar: 'Ar',
  'Ar with little CO2 and O2': 'Ar mit wenig CO2 und O2',
  'Ar+1–5O2': 'Ar+1–5O2',
  'Ar+CO2, ratio not stated': 'Ar+CO2, Anteile nicht angegeben',
  'Ar-CO2 or CO2': 'Ar-CO2 oder CO2',
  argon: 'Argon',
  'argon-rich': 'argonreich',
  'CO2 (mild steel) or Ar-CO2 (low alloy)': 'CO2 (unlegiert) oder Ar-CO2 (niedriglegiert)',
  'CO2-rich': 'CO2-reich',
  M21: 'M21',
  'not stated': 'nicht angegeben',
  'prequalified GMAW': 'vorqualifiziertes MSG-Schweißen',
  'pure CO2': '100 % CO2',
  'pure CO2 or mix': '100 % CO2 oder Mischgas',
  'steel, general': 'Stahl allgemein',
};

const REMARKS: Readonly<Record<BandRemark, string>> = {
  'above 230 A and 26 V; the upper ends are open':
    'über 230 A und 26 V; nach oben ist beides offen',
  'butt, 1.0 mm': 'Stumpfnaht, 1,0 mm',
  'butt, 1.2 mm': 'Stumpfnaht, 1,2 mm',
  'butt, 1.6 mm': 'Stumpfnaht, 1,6 mm',
  'butt, 2.3 mm': 'Stumpfnaht, 2,3 mm',
  'butt, 3.2 mm': 'Stumpfnaht, 3,2 mm',
  'butt, 4.0 mm': 'Stumpfnaht, 4,0 mm',
  fillet: 'Kehlnaht',
  'fillet, 1.6 mm': 'Kehlnaht, 1,6 mm',
  'fillet, 2.4 mm': 'Kehlnaht, 2,4 mm',
  'fillet, 3.2 mm': 'Kehlnaht, 3,2 mm',
  'measured on 5 mm plate, top of the dip range':
    'an 5-mm-Blech gemessen, oberes Ende des Kurzlichtbogens',
};

const CO2_SAYS: Readonly<Record<Co2Saying, string>> = {
  'globular-stays-above-15':
    'über etwa 15 % CO2 wird aus dem Übergangslichtbogen kein Sprühlichtbogen',
  'spray-needs-80-argon': 'der Sprühlichtbogen braucht mindestens 80 % Argon',
  'no-spray-above-20-to-25': 'kein Sprühlichtbogen über 20–25 % CO2; mit 75/25 geht es nicht',
  'measured-at-20':
    'ein Sprühlichtbogen wurde bei 20 % CO2 gemessen, aber nur bei 330–350 A mit Draht 1,2 mm',
  'repelled-above-30': 'über 30 % CO2 überwiegen bei jedem Drahtdurchmesser abgestoßene Tropfen',
  '82-18-sold-for-spray': '82/18 wird regelmäßig als für den Sprühlichtbogen geeignet verkauft',
  'pure-never':
    'in 100 % CO2 gibt es nie einen axialen Sprühlichtbogen; die Tropfen werden mit dem Strom kleiner, lösen sich aber neben der Achse',
};

const disputedIn = (disputed: boolean): string => (disputed ? ' (in diesem Gas umstritten)' : '');

const amperes = (current: Span | null, write: Writer): string =>
  current === null ? 'der kritischen Stromstärke (nicht bekannt)' : `${write.span(current, 0)} A`;

export const KNOWLEDGE: CatalogueOf<KnowledgeParams> = {
  authority,
  'band-gas': ({ gas }) => GASES[gas],
  'band-remark': ({ remark }) => REMARKS[remark],
  'band-row': (row, write) => {
    const parts = [
      row.voltageV === null ? null : `${write.span(row.voltageV)} V`,
      row.currentA === null ? null : `${write.span(row.currentA, 0)} A`,
      row.feedMPerMin === null ? null : write.inUnits(row.feedMPerMin, 'feed'),
    ].filter((part) => part !== null);
    const wire = row.diameterMm === null ? null : write.inUnits(row.diameterMm, 'diameter');
    const scope = [wire, GASES[row.gas]].filter((part) => part !== null);
    return `${parts.join('; ')} (${scope.join('; ')}): ${authority(row)}`;
  },
  'transition-row': (row, write) =>
    `ab ${write.span(row.fromA, 0)} A (${write.inUnits(row.diameterMm, 'diameter')}; ${GASES[row.gas]}): ${authority(row)}`,
  'co2-row': (row) => `${CO2_SAYS[row.saying]}: ${authority(row)}`,
  'spray-in-gas': (params, write) => {
    if (params.answer === 'unknown')
      return 'Ohne das Gas lässt sich über den Sprühlichtbogen nichts sagen.';
    const gas = write.gas(params.gas);
    if (params.answer === 'yes')
      return `In ${gas} ist über der kritischen Stromstärke ein axialer Sprühlichtbogen möglich.`;
    const head =
      params.answer === 'no'
        ? `Nach den Veröffentlichungen gibt es in ${gas} keinen axialen Sprühlichtbogen`
        : `Die Quellen sind uneins über den axialen Sprühlichtbogen in ${gas}`;
    const limits = params.limits.map(
      ({ saying, source }) => `${CO2_SAYS[saying]} (${SOURCES[source]})`,
    );
    return `${head}: ${limits.join('; ')}.`;
  },
  'lies-up-to': ({ topV }, write) => `bis ${write.span(topV)} V`,
  'lies-above': ({ bottomV, belowA }, write) =>
    `über ${write.span(bottomV)} V${belowA === null ? '' : `, unter ${amperes(belowA, write)}`}`,
  'lies-in-spray': ({ bottomV, aboveA, disputed }, write) =>
    `über ${write.span(bottomV)} V und ${amperes(aboveA, write)}${disputedIn(disputed)}`,
  'lies-under-pulses': ({ disputed }) =>
    `bei jedem mittleren Strom, mit Impulsprogramm${disputedIn(disputed)}`,
  'not-in-this-gas': () => 'in diesem Gas nicht möglich',
  'mode-lies': ({ mode, where }, write) => `${write.mode(mode)}: ${write.say(where)}`,
  'spray-begins': ({ currentA }, write) =>
    `der Sprühlichtbogen beginnt zwischen ${write.plain(Math.round(currentA.min))} und ${write.plain(Math.round(currentA.max))} A`,
  'window-scope': ({ diameterMm, material, materialStated, gas }, write) => {
    const wire =
      diameterMm === null
        ? 'jeden Drahtdurchmesser'
        : `Draht ${write.inUnits(diameterMm, 'diameter')}`;
    const taken = materialStated ? '' : ' (angenommen: kein Werkstoff angegeben)';
    const inGas = gas === null ? 'jedes Gas' : write.gas(gas);
    return `${wire}, ${GERMAN_MATERIALS[material]}${taken}, ${inGas}`;
  },
};
