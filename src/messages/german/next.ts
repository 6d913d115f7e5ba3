import { capital } from '../../core/index.js';
import type { NextParams } from '../rooms/evidence.js';
import type { CatalogueOf } from '../writer.js';
import { AT_FEEDER, PROCEDURE } from './glossary.js';

const BY_WHOM = 'feste Messgeräte oder isolierte Leitungen, eine Fachkraft, keine Abdeckung öffnen';
const TIMED_FEED = 'den Drahtvorschub über eine gemessene Länge mit der Uhr messen';

export const NEXT: CatalogueOf<NextParams> = {
  'check-spool': () =>
    'Bei ausgeschalteter Stromquelle den Draht selbst mit dem Messschieber messen und das Schild der Spule lesen.',
  'check-volts-for-feed': ({ voltsGiven }) =>
    voltsGiven
      ? `Den Drahtvorschub über eine gemessene Länge mit der Uhr messen und ihn zusammen mit der gemessenen Spannung mit ${PROCEDURE.dative} vergleichen.`
      : `Während des Schweißens die Spannung am Drahtvorschubgerät ablesen (${BY_WHOM}), den Drahtvorschub mit der Uhr messen und beides mit ${PROCEDURE.dative} vergleichen.`,
  'check-recording': ({ kind }) =>
    kind === 'sound'
      ? 'Noch einmal aus etwa einem halben Meter aufnehmen, mit abgeschalteter Sprachbearbeitung des Telefons, ohne Übersteuern, gut zehn Sekunden ruhiges Schweißen; oder die Spannung als Messreihe aufzeichnen.'
      : `Die Spannung noch einmal aufzeichnen, mit 10 000 Werten je Sekunde oder mehr, ${AT_FEEDER}, gut zehn Sekunden ruhiges Schweißen.`,
  'check-programme': () =>
    'Verfahren und Programm an der Anzeige der Stromquelle oder im Roboterprogramm ablesen.',
  'check-gas': ({ compareWithProcedure }) =>
    `Das Flaschenschild oder die Einstellung des Mischers ablesen und die Gasmenge an der Düse messen.${compareWithProcedure ? ` Mit dem Gas nach ${PROCEDURE.dative} vergleichen.` : ''}`,
  'check-source-terminals': () =>
    `Während des Schweißens die Spannung am Ausgang der Stromquelle ablesen lassen (${BY_WHOM}) und nachsehen, ob sie mit Konstantspannung läuft und alle Netzphasen anliegen.`,
  'check-leads': () =>
    `Während des Schweißens die Spannung an der Stromquelle und am Drahtvorschubgerät ablesen lassen (${BY_WHOM}). Bei ausgeschalteter Stromquelle Werkstückklemme, Leitungsanschlüsse, Schlauchpaket und Kontaktrohr ansehen.`,
  'check-shielding': () =>
    'Flaschendruck und Gasmengenmesser, Schlauch, Gasdüse (Spritzer) und Zugluft ansehen; die Raupe von dieser Stelle an auf Poren ansehen.',
  'check-stubbing': () =>
    `Die Spannung ${AT_FEEDER} und den mit der Uhr gemessenen Drahtvorschub mit ${PROCEDURE.dative} vergleichen; die Einstellung der Drossel ansehen, die bei hohem Wert jeden Kurzschluss verlangsamt.`,
  'check-long-arc': () =>
    `${capital(TIMED_FEED)} und die Spannung ${AT_FEEDER} ablesen; durch den Schweißerschutzfilter beobachten, ob der Lichtbogen lang ist.`,
  'check-measured-not-dial': () =>
    `Die ${AT_FEEDER} gemessene Spannung, nicht die am Drehknopf, mit ${PROCEDURE.dative} vergleichen.`,
  'check-polarity': () =>
    'Bei ausgeschalteter Stromquelle nachsehen, an welchen Klemmen Brenner- und Werkstückleitung liegen.',
  'check-stick-out': () =>
    `Bei ausgeschalteter Stromquelle den Draht zwischen Kontaktrohr und Werkstück messen, und ${TIMED_FEED}.`,
  'check-feed': () =>
    'Zehn Sekunden Draht einfädeln, den Brenner weg von Werkstück und Menschen (der Taster legt Spannung an den Draht), messen oder wiegen und mit dem angegebenen Drahtvorschub vergleichen; Vorschubrollen, Drahtführungsseele, Kontaktrohr und Spulenbremse ansehen.',
  'check-settings-again': () =>
    `An der Maschine noch einmal ablesen: Drehknopf, Spannung ${AT_FEEDER} und Drahtvorschub.`,
  'check-feeder-voltage': () =>
    `Während des Schweißens die Spannung am Drahtvorschubgerät ablesen (${BY_WHOM}) und zusammen mit der Messstelle angeben.`,
  'check-zone': () =>
    `Während des Schweißens Spannung ${AT_FEEDER} und Strom aufschreiben und nachsehen, wie nahe ${PROCEDURE.nominative} an diesen Bereich heranlässt.`,
};
