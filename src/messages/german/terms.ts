import { GERMAN_MODES } from './glossary.js';

/**
 * German terms of arc welding: one for each thing, used by every sentence and picture in German. From
 * memory of German teaching of MAG welding and of the terms of ISO 4063, ISO 15607 and IEC 60974 in German.
 */
export interface Term {
  german: string;
  /** Other names of the same thing that are not used, so that one thing keeps one name. */
  never: readonly string[];
}

/** English terms by the words of the code, with their German. */
export const GERMAN_TERMS = {
  mode: { german: 'Lichtbogenart', never: ['Übertragungsart', 'Transferart', 'Modus'] },
  transfer: { german: 'Werkstoffübergang', never: ['Materialtransfer', 'Metallübertragung'] },
  shortCircuitArc: { german: GERMAN_MODES['short-circuit'], never: ['Kurzschlusslichtbogen'] },
  globularArc: { german: GERMAN_MODES.globular, never: ['Langlichtbogen', 'Globular'] },
  sprayArc: { german: GERMAN_MODES.spray, never: ['Spraylichtbogen'] },
  pulsedArc: { german: GERMAN_MODES['pulsed-spray'], never: ['Pulslichtbogen'] },
  transitionCurrent: { german: 'kritische Stromstärke', never: ['Übergangsstrom'] },
  shortCircuit: { german: 'Kurzschluss', never: ['Kurzschluß'] },
  feed: { german: 'Drahtvorschub', never: ['Drahtgeschwindigkeit', 'Drahtförder'] },
  feeder: { german: 'Drahtvorschubgerät', never: ['Drahtkoffer', 'Vorschubkoffer'] },
  stickOut: { german: 'freies Drahtende', never: ['Ausstick', 'Stickout', 'Drahtüberstand'] },
  contactTip: { german: 'Kontaktrohr', never: ['Stromdüse', 'Kontaktdüse', 'Kontaktspitze'] },
  torch: { german: 'Brenner', never: ['Schweißpistole', 'Fackel'] },
  gunCable: { german: 'Schlauchpaket', never: ['Brennerkabel'] },
  liner: { german: 'Drahtführungsseele', never: ['Drahtliner'] },
  source: { german: 'Stromquelle', never: ['Schweißgerät', 'Netzteil'] },
  workLead: { german: 'Werkstückleitung', never: ['Massekabel'] },
  workClamp: { german: 'Werkstückklemme', never: ['Masseklemme', 'Erdungsklemme'] },
  pool: { german: 'Schmelzbad', never: ['Schweißbad', 'Schmelzpfütze'] },
  spatter: { german: 'Spritzer', never: ['Schweißspritzer'] },
  procedure: {
    german: 'qualifizierte Schweißanweisung (WPS)',
    never: ['Schweißprozedur', 'Schweißverfahrensanweisung'],
  },
  procedureTest: { german: 'Verfahrensprüfung', never: ['Prozedurprüfung'] },
  essentialVariable: { german: 'wesentliche Einflussgröße', never: ['essentielle Variable'] },
  shieldingGas: { german: 'Schutzgas', never: ['Abschirmgas', 'Schirmgas'] },
  heatInput: { german: 'Wärmeeinbringung', never: ['Wärmeeintrag', 'Hitzeeintrag'] },
  lackOfFusion: { german: 'Bindefehler', never: ['Fusionsmangel'] },
  workingPoint: { german: 'Arbeitspunkt', never: ['Betriebspunkt'] },
  slope: { german: 'Neigung der Kennlinie', never: ['Kennliniensteigung'] },
  trace: { german: 'Messreihe', never: ['Spur der Spannung', 'Messschrieb'] },
  confidence: { german: 'Sicherheit', never: ['Konfidenz', 'Vertrauenswert'] },
  run: { german: 'Versuch', never: ['Durchlauf'] },
  weld: { german: 'Schweißnaht', never: ['Schweißstelle'] },
} as const satisfies Readonly<Record<string, Term>>;
