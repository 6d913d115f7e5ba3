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
