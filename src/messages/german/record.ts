import type { FixedQuantity, LimitedQuantity, RecordParams } from '../rooms/record.js';
import type { CatalogueOf } from '../writer.js';

const NAMES: Readonly<Record<LimitedQuantity | FixedQuantity, string>> = {
  volts: 'Spannung',
  amperes: 'Strom',
  wireFeed: 'Drahtvorschub',
  travelSpeed: 'Schweißgeschwindigkeit',
  stickOut: 'Freies Drahtende',
  heatInput: 'Wärmeeinbringung',
  wire: 'Drahtdurchmesser',
  material: 'Drahtwerkstoff',
  gas: 'Schutzgas',
  polarity: 'Polung',
  source: 'Programm der Stromquelle',
  position: 'Schweißposition',
  plate: 'Blechdicke',
};

const MISSING = { volts: 'keine Spannung', amperes: 'keinen Strom' } as const;
const AT = { source: 'an der Stromquelle', feeder: 'am Drahtvorschubgerät', arc: 'am Lichtbogen' };

export const RECORD: CatalogueOf<RecordParams> = {
  'record-no-weld': () => 'Die Aufnahme zeigt keinen Lichtbogen, der sich beurteilen lässt.',
  'record-mode-not-named': () =>
    'Für diese Schweißung ist keine Lichtbogenart genannt; sie wird nicht an der Schweißanweisung gemessen.',
  'record-share-open': ({ wantedShare, unclearShare }, write) =>
    `${write.percent(wantedShare)} der Lichtbogenzeit entfallen auf eine Lichtbogenart der Schweißanweisung, für ${write.percent(unclearShare)} ist keine klar.`,
  'record-departure': ({ mode, startS, lengthS }, write) =>
    `${write.mode(mode)} für ${write.fixed(lengthS, 1)} s ab ${write.fixed(startS, 1)} s.`,
  'record-sound-shows-no': ({ quantity }) =>
    `Eine Tonaufnahme zeigt ${MISSING[quantity]}. Aufzeichnen oder den Messwert eines Messgeräts angeben.`,
  'record-trace-lacks': ({ quantity }) =>
    `Die Aufzeichnung enthält ${MISSING[quantity]}. Aufzeichnen oder den Messwert eines Messgeräts angeben.`,
  'record-place-not-stated': ({ at }) =>
    `Die Messstelle der Aufzeichnung ist nicht angegeben, und die Grenze gilt ${AT[at]}: mit --trace-volts-at angeben.`,
  'record-other-place': ({ place, at }) =>
    `Gemessen wurde ${AT[place]}, die Grenze gilt ${AT[at]}; was die Leitungen dazwischen aufnehmen, ist nicht bekannt.`,
  'record-not-stated': ({ what }) => `${NAMES[what]}: nicht zu sehen und nicht angegeben.`,
  'record-programme-not-seen': () =>
    'Die Aufnahme zeigt nicht, mit welchem Programm die Stromquelle lief.',
  'record-programme-neither': () =>
    'Die Aufnahme sieht nach einem vom Gerät geregelten Kurzlichtbogen aus; der ist weder ungepulst noch gepulst.',
  'record-needs-travel': () =>
    'Die Energie je Länge braucht Schweißgeschwindigkeit oder Raupenlänge; beide sind nicht angegeben.',
  'record-needs-power': () =>
    'Die Energie braucht Spannung und Strom der Schweißung: eine Aufzeichnung von beiden oder die Messwerte von Messgeräten.',
  'record-needs-feed': () =>
    'Der abgeschmolzene Draht braucht Drahtvorschub, Drahtdurchmesser und Drahtwerkstoff; nicht alle sind angegeben.',
  'record-power-difference': ({ differenceShare }, write) => {
    const size = write.percent(Math.abs(differenceShare));
    return differenceShare < 0
      ? `Das Mittel der Momentanleistung liegt ${size} unter mittlerer Spannung mal mittlerem Strom: Der Strom ist hoch, während die Spannung niedrig ist, wie im Kurzschluss; zwei mittelnde Messgeräte zeigen das nicht.`
      : `Das Mittel der Momentanleistung liegt ${size} über mittlerer Spannung mal mittlerem Strom: Strom und Spannung steigen gemeinsam, wie im Impuls; zwei mittelnde Messgeräte zeigen das nicht.`;
  },
  'record-power-same': () =>
    'Das Mittel der Momentanleistung und mittlere Spannung mal mittlerer Strom weichen bei dieser Schweißung um weniger als 1 % voneinander ab.',
  'record-by-means': () =>
    'Aus mittlerer Spannung mal mittlerem Strom von Messgeräten berechnet, da keine Aufzeichnung von beiden vorliegt. Bei Stromquellen mit geregeltem Stromverlauf kann das um bis zu 30 % nach oben oder unten danebenliegen (Sperko 2010).',
  'record-steady-part': () =>
    'Spannung, Strom und Leistung sind die des eingeschwungenen Teils, ohne 0,3 s an jedem Ende; die Energie rechnet mit ihnen für die ganze Lichtbogenzeit.',
  'record-no-qualification': () =>
    'Ein Protokoll dessen, was eine Aufnahme zeigt; ein Mensch muss es beurteilen. Es ist keine Verfahrensprüfung, keine Abnahme und keine Freigabe einer Schweißnaht.',
  'outside-procedure': ({ what, stated, allowed }) =>
    `${NAMES[what]} laut Angabe (${stated}) entspricht nicht der Schweißanweisung (${allowed}).`,
};
