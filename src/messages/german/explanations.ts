import type { ExplanationParams } from '../rooms/explanations.js';
import type { CatalogueOf } from '../writer.js';
import { AT_FEEDER } from './glossary.js';
import { modes } from './names.js';

export const EXPLANATIONS: CatalogueOf<ExplanationParams> = {
  'wrong-wire': ({ thicker }) =>
    `Der Vorschub zieht ${thicker ? 'mehr' : 'weniger'} Strom, als der angegebene Draht zöge, wie es ein ${thicker ? 'dickerer' : 'dünnerer'} tut.`,
  'hot-dip': () =>
    'Zu heiß für den Kurzlichtbogen bei diesem Vorschub: Der Draht erreicht das Schmelzbad nicht mehr.',
  'cold-spray': ({ shorts }) =>
    shorts
      ? 'Etwas zu kalt für den Sprühlichtbogen: Die Tropfen berühren das Schmelzbad, ehe sie sich vom Draht lösen.'
      : 'Zu kalt für den Sprühlichtbogen: Der Strom reichte, die Spannung nicht.',
  'even-dip-like-pulses': () =>
    'Spannung und Strom sind die eines Kurzlichtbogens: Eine Stromquelle, die jeden Kurzschluss steuert, schlägt so gleichmäßig wie Impulse.',
  'recording-cannot-support': () =>
    'Die Aufnahme trägt die Aussage nicht; erst die Aufnahme ansehen, dann die Maschine.',
  'pulsed-programme-running': () =>
    'Es scheint ein Impulsprogramm zu laufen, wo Konstantspannung gemeint war.',
  'pulsed-programme-missing': () =>
    'Ein Impulsprogramm war gemeint, die Stromquelle scheint aber ohne zu laufen.',
  'controlled-dip-running': () =>
    'Die Stromquelle läuft mit einem Programm, das jeden Kurzschluss regelt, wo eine andere Lichtbogenart gemeint war.',
  'wrong-gas-for-mode': ({ wanted, carries }, write) =>
    `Gewünscht ist der ${write.mode(wanted)}, in einem Gas, in dem er ${carries === 'not' ? 'nicht möglich' : 'vielleicht nicht möglich'} ist.`,
  'gas-mode-conflict': ({ seen, gas }, write) =>
    `Erkannt: ${modes(seen, write)}. Angegeben: ${write.gas(gas)}. Beides zugleich geht nicht: Entweder ist das Gas nicht das angegebene, oder die Aufnahme wurde falsch gedeutet (kleine Tropfen neben der Achse klingen gleich).`,
  'drooping-supply': () =>
    'Die Spannung der Stromquelle bricht ein: Unter Last liegt sie an den Klemmen deutlich unter der eingestellten.',
  'lead-loss': () =>
    'Zwischen Stromquelle und Lichtbogen geht mehr Spannung verloren, als Leitungen und Verbindungen kosten sollten.',
  'shielding-lost': ({ from, to, atS }, write) =>
    `Bei ${write.fixed(atS, 1)} s wechselte die Lichtbogenart ohne Änderung der Einstellung auf Dauer: vorher ${write.mode(from)}, danach ${write.mode(to)}, wie beim Ausfall des Schutzgases.`,
  stubbing: () =>
    'Der Draht stößt auf: Er taucht ins Schmelzbad ein, und jeder Kurzschluss dauert zu lange.',
  'long-arc': () =>
    'Der Lichtbogen ist lang: Es liegt mehr Spannung an, als der Strom bei diesem Drahtvorschub verlangt.',
  'normal-drop': ({ wanted }, write) =>
    `Die eingestellte Spannung würde zum ${write.mode(wanted)} passen, nach den üblichen Verlusten bekommt der Lichtbogen aber weniger.`,
  'wrong-polarity': () =>
    'Der Strom ist so, wie ihn eine Drahtelektrode am Minuspol zöge; Massivdraht wird am Pluspol verschweißt.',
  'long-stick-out': ({ shown }) => {
    if (shown === 'by-current')
      return 'Der Strom ist niedrig für den Drahtvorschub, wie bei langem freiem Drahtende.';
    return shown === 'as-stated'
      ? 'Das freie Drahtende ist lang; das senkt den Strom, den der Drahtvorschub zieht.'
      : 'Ein langes freies Drahtende würde Strom und Lichtbogenspannung senken.';
  },
  'feed-trouble': () => 'Der Draht kommt vielleicht ungleichmäßig an oder langsamer als angegeben.',
  'wrong-setting': (params, write) =>
    params.how === 'suits-another'
      ? `Die Einstellung passt zum ${write.mode(params.seen)}, nicht zum ${write.mode(params.wanted)}.`
      : 'Die Maschine lief vielleicht nicht mit der angegebenen Einstellung.',
  'set-voltage-uncertain': ({ open }, write) =>
    `Nur die eingestellte Spannung ist bekannt. Was davon ${AT_FEEDER} ankommt, lässt mehrere Lichtbogenarten offen (${modes(open, write)}): zuerst die gemessene Spannung besorgen.`,
  'transition-zone': ({ open }, write) =>
    `Der Arbeitspunkt liegt, wo ${modes(open, write)} aneinandergrenzen und die Quellen uneins sind; jede dieser Lichtbogenarten kann sich einstellen, ohne dass jemand etwas verstellt.`,
  'gas-not-as-stated': ({ gasStated }) =>
    gasStated
      ? 'Spannung und Strom lassen den Sprühlichtbogen zu, der Werkstoffübergang ist aber grobtropfig: Das Gas enthält vielleicht mehr CO2 als angegeben oder kommt nicht am Lichtbogen an.'
      : 'Das Gas ist nicht angegeben; zu viel CO2 hielte den Werkstoffübergang grobtropfig.',
};
