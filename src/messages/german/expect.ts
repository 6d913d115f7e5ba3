import type { ExpectParams } from '../rooms/expect.js';
import type { CatalogueOf } from '../writer.js';
import { AT_FEEDER } from './glossary.js';

export const EXPECT: CatalogueOf<ExpectParams> = {
  'spray-disputed-below': ({ gas }, write) =>
    `Die Quellen sind uneins über den axialen Sprühlichtbogen in ${write.gas(gas)}; alle stehen beim Sprühlichtbogen.`,
  'material-taken': () =>
    'Es wurde kein Drahtwerkstoff angegeben: unlegierter Stahl wurde angenommen.',
  'only-set-voltage': ({ feederV }, write) =>
    `Nur die eingestellte Spannung ist bekannt: Verluste und die Streuung der Tabellen lassen ${write.span(feederV)} V zu. Eine Messung ${AT_FEEDER} während des Schweißens engt das ein.`,
  'thin-wire-drops': (_, write) =>
    `Bei Drähten unter ${write.inUnits(0.9, 'diameter')} mit weniger als 30 % CO2 wurden die Tropfen bei Messungen nie kleiner als der Drahtdurchmesser (Soderstrom & Mendez 2008): „Sprühlichtbogen“ heißt für sie weniger.`,
  'plate-thick-for-short-circuit': () =>
    'Über etwa 6,4 mm (1/4 Zoll) Blechdicke drohen mit dem Kurzlichtbogen nach verbreiteter Lehre Bindefehler (übliche Praxis, ohne Quelle; ein Anhaltspunkt, keine Grenze).',
  'heat-input-method': () =>
    'Bei Stromquellen mit geregeltem Stromverlauf kann das Produkt aus mittlerer Spannung und mittlerem Strom für die Wärmeeinbringung um bis zu 30 % nach oben oder unten danebenliegen (Sperko 2010); die Momentanleistung verwenden, mit etwa 10 000 Werten je Sekunde (Melfi, Welding J. 2010). Im axialen Sprühlichtbogen ist der Unterschied klein.',
};
