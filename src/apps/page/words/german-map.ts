import type { MapWords } from '../../view/index.js';

/** Words on the drawn process map in German. */
export const GERMAN_MAP: MapWords = {
  title: 'Was diese Spannungen und Ströme ergeben',
  description:
    'Spannung am Vorschubgerät über dem mittleren Strom. Jedes Feld zeigt, was dort am ehesten kommt; blasser, wo anderes beinahe so wahrscheinlich ist.',
  voltageAxis: 'V am Vorschubgerät',
  currentAxis: 'mittlerer Strom, A',
  feedAxis: (unit) => `Drahtvorschub, ${unit}`,
  outcome: {
    stubbing: 'Draht stößt',
    dip: 'Kurzlichtbogen',
    globular: 'Übergangslichtbogen',
    'spray-with-shorts': 'Sprühen mit Kurzschlüssen',
    spray: 'Sprühlichtbogen',
    'long-arc': 'langer Lichtbogen',
    'burn-back': 'Draht brennt zurück',
  },
  guide: 'genormte Lastlinie, nur zur Führung',
  transition: 'ab hier Sprühen',
  stated: 'Einstellung',
  measured: 'gemessen',
  wanted: 'gewünscht',
  marks: {
    unsure: 'kleiner Buchstabe: anderes ist beinahe so wahrscheinlich',
    stated: '[ ] Einstellung und was sie offen lässt',
    measured: '( ) gemessen',
    wanted: '· · gewünscht',
  },
};
