import type { processMaps } from '../../../setup/index.js';

type Outcome = processMaps.Outcome;

/** Words on a drawn map, by language. */
export interface MapWords {
  title: string;
  description: string;
  voltageAxis: string;
  currentAxis: string;
  /** Takes the unit in which feeds are shown. */
  feedAxis: (unit: string) => string;
  outcome: Readonly<Record<Outcome, string>>;
  guide: string;
  transition: string;
  stated: string;
  measured: string;
  wanted: string;
  /** Legend of the terminal's marks. */
  marks: { unsure: string; stated: string; measured: string; wanted: string };
}

export const ENGLISH_MAP: MapWords = {
  title: 'What these volts and amperes give',
  description:
    'Volts at the feeder over mean amperes. Each field is the outcome that is likeliest there; paler where another is nearly as likely.',
  voltageAxis: 'V at the feeder',
  currentAxis: 'mean A',
  feedAxis: (unit) => `wire feed, ${unit}`,
  outcome: {
    stubbing: 'stubbing',
    dip: 'short-circuit',
    globular: 'globular',
    'spray-with-shorts': 'spray with shorts',
    spray: 'spray',
    'long-arc': 'long arc',
    'burn-back': 'burn-back',
  },
  guide: 'conventional load line, a guide',
  transition: 'spray begins',
  stated: 'your setting',
  measured: 'measured',
  wanted: 'wanted',
  marks: {
    unsure: 'small letter: another outcome is nearly as likely',
    stated: '[ ] your setting and what it leaves open',
    measured: '( ) measured',
    wanted: '· · wanted',
  },
};

export const GERMAN_MAP: MapWords = {
  title: 'Was diese Spannungen und Ströme ergeben',
  description:
    'Spannung am Drahtvorschubgerät über dem mittleren Strom. Jedes Feld zeigt, was dort am ehesten kommt; blasser, wo anderes beinahe so wahrscheinlich ist.',
  voltageAxis: 'V am Drahtvorschubgerät',
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
