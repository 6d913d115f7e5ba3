import type { Mode } from '../../core/index.js';
import type { ModeUseParams } from '../rooms/mode-use.js';
import type { CatalogueOf } from '../writer.js';

const PRACTICE = 'übliche Praxis, ohne Quelle';
const COURSE = 'Fundamentals of Professional Welding, Arten des MSG-Schweißens';
const PAGE = 'eine Lehrseite zu den Lichtbogenarten';

const POSITIONS: Readonly<Record<Mode, string>> = {
  'short-circuit': `alle Positionen, vor allem senkrecht und überkopf (${COURSE})`,
  globular: `Wannenlage, Horizontal- und Querposition (${PRACTICE})`,
  spray: `auf unlegiertem und nichtrostendem Stahl Wannenlage, Horizontal- und Querposition (${PAGE})`,
  'pulsed-spray': `fast alle Positionen (${PAGE})`,
};
const GOOD: Readonly<Record<Mode, string>> = {
  'short-circuit': `dünnes Blech mit wenig Verzug und ohne Durchbrand, meist unter 200 A mit Drähten bis 1,2 mm (${COURSE}); Wurzellagen (${PRACTICE})`,
  globular: `dickeres Blech unter CO2, wo Spritzer nicht stören (${PRACTICE})`,
  spray: `dicke Querschnitte: tiefer Einbrand und viel Schweißgut (${COURSE})`,
  'pulsed-spray': `dünn und dick, mit wenig Spritzern (${PAGE})`,
};
const BAD: Readonly<Record<Mode, string>> = {
  'short-circuit': `dickes Blech: Bindefehler (${PRACTICE})`,
  globular: `Aussehen und Gleichmäßigkeit: unruhiger Lichtbogen und viele Spritzer (${COURSE})`,
  spray: `dünnes Blech (${COURSE})`,
  'pulsed-spray': `Stromquellen ohne Programm für diesen Draht und dieses Gas (${PRACTICE})`,
};
const WHERE = {
  vertical: 'senkrecht',
  'vertical-up': 'Steigposition',
  'vertical-down': 'Fallposition',
  overhead: 'Überkopfposition',
  'all-around': 'festes Rohr',
} as const;

export const MODE_USE: CatalogueOf<ModeUseParams> = {
  'mode-positions': ({ mode, aluminium }, write) =>
    aluminium && mode === 'spray'
      ? `Positionen für ${write.mode(mode)}: auf Aluminium alle (${PRACTICE}).`
      : `Positionen für ${write.mode(mode)}: ${POSITIONS[mode]}.`,
  'mode-good-for': ({ mode }, write) => `${write.mode(mode)} eignet sich für: ${GOOD[mode]}.`,
  'mode-bad-for': ({ mode }, write) =>
    `${write.mode(mode)} eignet sich schlecht für: ${BAD[mode]}.`,
  'spray-out-of-position': ({ position }) =>
    `Ungepulster Sprühlichtbogen auf unlegiertem oder nichtrostendem Stahl in dieser Position (${WHERE[position]}): Die hohe Wärmeeinbringung beschränkt ihn auf Wannenlage, Horizontal- und Querposition (${PAGE}). Gelehrt werden hier Impuls- oder Kurzlichtbogen; es entscheidet die qualifizierte Schweißanweisung.`,
};
