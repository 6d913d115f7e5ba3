import type { Sentence } from './german-sentences.js';

/** Remarks and sources of the published windows, and how the place of a run was found. */
export const WINDOW_SENTENCES: readonly Sentence[] = [
  // Formulas and symbols of gases are the same in German.
  [/^(\d+(?:He|Ar)[/\d.ArCO]+|M\d\d|Ar\+1–5O2)$/, '$1'],
  [/^CO2 \(mild steel\) or Ar-CO2 \(low alloy\)$/, 'CO2 (unlegiert) oder Ar-CO2 (niedriglegiert)'],
  [/^steel, general$/, 'Stahl allgemein'],
  [/^Ar-CO2 or CO2$/, 'Ar-CO2 oder CO2'],
  [/^Ar with little CO2 and O2$/, 'Ar mit wenig CO2 und O2'],
  [/^fillet$/, 'Kehlnaht'],
  [/^pure CO2$/, 'reines CO2'],
  [/^argon-rich$/, 'argonreich'],
  [/^argon$/, 'Argon'],
  [
    /^above 230 A and 26 V; the upper ends are open$/,
    'über 230 A und 26 V; nach oben ist beides offen',
  ],
  [/^a manufacturer's data sheet, Table (\S+)$/, 'Datenblatt eines Herstellers, Tabelle $1'],
  [/^Welding: Principles and Practices, ch\. (\d+)$/, 'Welding: Principles and Practices, Kap. $1'],
  [/^Modern Welding \(2020\), Fig\. (\S+)$/, 'Modern Welding (2020), Bild $1'],
  [
    /^a reference note on transfer modes \(.+\)$/,
    'Merkblatt zu den Lichtbogenarten (in zweiter Hand gelesen; vor Gebrauch an der Quelle prüfen)',
  ],
  [
    /^a gas supplier's welder's handbook, p\. (\d+), chart as read here$/,
    'Schweißerhandbuch eines Gaslieferanten, S. $1, aus dem Schaubild abgelesen',
  ],
  [
    /^a second manufacturer's table \(b\), whose header may mean cored wire$/,
    'Tabelle eines zweiten Herstellers (b), die vielleicht Fülldraht meint',
  ],
  [/^industry guides \(.+\)$/, 'Leitfäden der Industrie (aus dem Gedächtnis)'],
  [/^shop practice \(.+\)$/, 'Werkstattpraxis (üblich, ohne Quelle)'],
  [/^((?:any wire diameter|\S+ mm wire), .+)$/, '$1'],
  [/^(\S+ V) set, taken as (\S+ V at the feeder)$/, '$1 eingestellt, genommen als $2'],
  [/^(\S+ V) measured (at .+)$/, '$1 gemessen $2'],
  [/^(\S+ V) mean of the trace (at .+)$/, '$1 Mittel der Messreihe $2'],
  [/^(\S+ A) measured$/, '$1 gemessen'],
  [/^(\S+ A) estimated from the wire feed$/, '$1 aus dem Drahtvorschub geschätzt'],
];

/** Words within what the sentences above hold. */
export const WINDOW_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bany wire diameter\b/, 'jeden Drahtdurchmesser'],
  [/(\S+ mm) wire\b/, 'Draht $1'],
  [/\bcarbon steel\b/, 'unlegierten Stahl'],
  [/\bstainless steel\b/, 'nichtrostenden Stahl'],
  [/\baluminium\b/, 'Aluminium'],
  [/\(taken: no material was stated\)/, '(angenommen: kein Werkstoff angegeben)'],
  [/, any gas$/, ', jedes Gas'],
  [/, gas (?=\S)/, ', Gas '],
  [/\bat the source\b/, 'an der Stromquelle'],
  [/\bat the arc\b/, 'am Lichtbogen'],
  [/\bat a place not stated\b/, 'an einer nicht angegebenen Stelle'],
];
