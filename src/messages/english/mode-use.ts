import type { Mode } from '../../core/index.js';
import type { ModeUseParams } from '../rooms/mode-use.js';
import type { CatalogueOf } from '../writer.js';

const PRACTICE = 'common practice, no source';
const COURSE = 'Fundamentals of Professional Welding, types of GMA welding';
const PAGE = 'a teaching page on the modes of GMAW';

const POSITIONS: Readonly<Record<Mode, string>> = {
  'short-circuit': `all positions, vertical and overhead above all (${COURSE})`,
  globular: `flat and horizontal (${PRACTICE})`,
  spray: `on steel and stainless flat and horizontal (${PAGE})`,
  'pulsed-spray': `almost all positions (${PAGE})`,
};
const GOOD: Readonly<Record<Mode, string>> = {
  'short-circuit': `thin sheet with little distortion and burn-through, usually below 200 A with wires up to 0.045 in (1.2 mm) (${COURSE}); root passes (${PRACTICE})`,
  globular: `plate in CO2 where spatter does not matter (${PRACTICE})`,
  spray: `heavy sections: deep penetration and much metal (${COURSE})`,
  'pulsed-spray': `thin and thick alike, with little spatter (${PAGE})`,
};
const BAD: Readonly<Record<Mode, string>> = {
  'short-circuit': `thick plate: lack of fusion (${PRACTICE})`,
  globular: `appearance and evenness: an unsteady arc and much spatter (${COURSE})`,
  spray: `thin sheet (${COURSE})`,
  'pulsed-spray': `sources without a programme that fits the wire and gas (${PRACTICE})`,
};
const WHERE = {
  vertical: 'vertical',
  'vertical-up': 'vertical up',
  'vertical-down': 'vertical down',
  overhead: 'overhead',
  'all-around': 'fixed pipe',
} as const;

export const MODE_USE: CatalogueOf<ModeUseParams> = {
  'mode-positions': ({ mode, aluminium }, write) =>
    aluminium && mode === 'spray'
      ? `Position of ${write.mode(mode)}: on aluminium all positions (${PRACTICE}).`
      : `Position of ${write.mode(mode)}: ${POSITIONS[mode]}.`,
  'mode-good-for': ({ mode }, write) => `${write.mode(mode)} is good for: ${GOOD[mode]}.`,
  'mode-bad-for': ({ mode }, write) => `${write.mode(mode)} is bad for: ${BAD[mode]}.`,
  'spray-out-of-position': ({ position }) =>
    `Conventional spray on steel or stainless in this position (${WHERE[position]}): its high heat input keeps it to flat and horizontal welding (${PAGE}). Pulsed spray or short-circuit is taught there; the qualified procedure decides.`,
};
