import type { Sentence } from './german-sentences.js';

const PROCEDURE = 'mit der qualifizierten Schweißanweisung vergleichen';

const BY_WHOM = 'feste Messgeräte oder isolierte Leitungen, eine Fachkraft, keine Abdeckung öffnen';

/** What a person can look at. */
export const CHECK_SENTENCES: readonly Sentence[] = [
  [
    /^Read the voltage at the feeder while welding \(.+\) and time the wire feed; .+$/,
    `Während des Schweißens die Spannung am Vorschubgerät ablesen (${BY_WHOM}), den Drahtvorschub mit der Uhr messen und beides ${PROCEDURE}.`,
  ],
  [
    /^Time the wire feed over a measured length, and hold it .+$/,
    `Den Drahtvorschub über eine gemessene Länge mit der Uhr messen und mit der gemessenen Spannung zusammen ${PROCEDURE}.`,
  ],
  [
    /^Read the voltage at the feeder while welding \(.+\), and state it .+$/,
    `Während des Schweißens die Spannung am Vorschubgerät ablesen (${BY_WHOM}) und diese angeben, mit dem Ort, an dem sie gilt.`,
  ],
  [
    /^With the power off, measure the wire itself .+$/,
    'Bei ausgeschalteter Stromquelle den Draht selbst mit dem Messschieber messen und das Schild der Spule lesen.',
  ],
  [
    /^Read the cylinder label or the mixer setting, and measure the flow at the nozzle\.$/,
    'Das Schild der Flasche oder die Einstellung des Mischers lesen und die Gasmenge an der Düse messen.',
  ],
  [
    /^Read the cylinder label or the mixer setting, and measure the flow at the nozzle\. Compare .+$/,
    'Das Schild der Flasche oder die Einstellung des Mischers lesen, die Gasmenge an der Düse messen und mit dem Gas der qualifizierten Schweißanweisung vergleichen.',
  ],
  [
    /^Read the dial, the voltage at the feeder and the wire feed again, at the machine\.$/,
    'An der Maschine noch einmal ablesen: Drehknopf, Spannung am Vorschubgerät und Drahtvorschub.',
  ],
  [
    /^Read the process and programme shown on the source’s panel .+$/,
    'Verfahren und Programm an der Anzeige der Stromquelle oder im Roboterprogramm ablesen.',
  ],
  [
    /^Hold the voltage at the feeder and the timed wire feed against .+$/,
    `Die Spannung am Vorschubgerät und den mit der Uhr gemessenen Drahtvorschub ${PROCEDURE}; die Drosseleinstellung ansehen, die hoch eingestellt jeden Kurzschluss verlangsamt.`,
  ],
  [
    /^Look at the cylinder gauge and flow meter, .+$/,
    'Flaschendruck und Gasmengenmesser, Schlauch, Düse (Spritzer) und Zugluft ansehen; die Raupe von dieser Stelle an auf Poren ansehen.',
  ],
  [
    /^Have the volts at the source’s output read while welding .+$/,
    `Während des Schweißens die Spannung am Ausgang der Stromquelle ablesen lassen (${BY_WHOM}) und nachsehen, ob sie mit konstanter Spannung läuft und alle Netzphasen anliegen.`,
  ],
  [
    /^Measure the wire between contact tip and work with the power off, .+$/,
    'Bei ausgeschalteter Stromquelle den Draht zwischen Stromdüse und Werkstück messen; den Drahtvorschub über eine gemessene Länge mit der Uhr messen.',
  ],
  [
    /^Note volts at the feeder and amperes while welding, .+$/,
    'Während des Schweißens Spannung am Vorschubgerät und Strom aufschreiben und nachsehen, wie nahe die qualifizierte Schweißanweisung an diesen Bereich heranlässt.',
  ],
  [
    /^Record again from about half a metre .+$/,
    'Noch einmal aus etwa einem halben Meter aufnehmen, ohne Sprachbearbeitung des Telefons, ohne Übersteuern, gut zehn Sekunden ruhiges Schweißen; oder die Spannung aufzeichnen.',
  ],
  [
    /^Record the voltage again, .+$/,
    'Die Spannung noch einmal aufzeichnen, mit 10 000 Messwerten je Sekunde oder mehr, am Vorschubgerät, gut zehn Sekunden ruhiges Schweißen.',
  ],
  [
    /^Inch wire for ten seconds with the gun clear .+$/,
    'Zehn Sekunden Draht einfädeln, den Brenner weg von Werkstück und Menschen (der Taster legt Spannung an den Draht), messen oder wiegen und mit dem angegebenen Vorschub vergleichen; Vorschubrollen, Drahtseele, Stromdüse und Spulenbremse ansehen.',
  ],
  [
    /^Take the voltage measured at the feeder, not the dial, .+$/,
    'Die am Vorschubgerät gemessene Spannung, nicht den Drehknopf, mit der qualifizierten Schweißanweisung vergleichen.',
  ],
  [
    /^Time the wire feed over a measured length and read .+$/,
    'Den Drahtvorschub über eine gemessene Länge mit der Uhr messen und die Spannung am Vorschubgerät ablesen; durch den Schweißerschutzfilter sehen, ob der Lichtbogen lang ist.',
  ],
  [
    /^Have the volts at the source and at the feeder read while welding .+$/,
    `Während des Schweißens die Spannung an der Stromquelle und am Vorschubgerät ablesen lassen (${BY_WHOM}). Bei ausgeschalteter Stromquelle Masseklemme, Leitungsanschlüsse, Brennerkabel und Stromdüse ansehen.`,
  ],
  [
    /^With the power off, see which terminal .+$/,
    'Bei ausgeschalteter Stromquelle nachsehen, an welchen Klemmen Brenner- und Werkstückleitung liegen.',
  ],
];
