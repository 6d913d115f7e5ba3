import type { Mode } from '../../../core/index.js';
import { boundaryText, rangeText } from '../../index.js';
import { type ExplanationRule, lines } from './finding.js';

const STEADY_MODES: readonly Mode[] = ['short-circuit', 'globular', 'spray'];
/** Volts known to this are narrow enough to say where the point lies. */
const NARROW_V = 3;

/** The point lies where the sources disagree, or where two modes live side by side. */
export const transitionZone: ExplanationRule = {
  id: 'transition-zone',
  judge: ({ c, trouble, seen, wanted }) => {
    const { voltageV, currentA } = c.judged;
    if (!trouble || seen === null || voltageV === null) return null;
    if (voltageV.max - voltageV.min > NARROW_V) return null;
    const open = STEADY_MODES.filter((mode) => c.permitted[mode] === 'possible');
    const other = wanted !== null && wanted !== seen ? wanted : open.find((one) => one !== seen);
    if (!open.includes(seen) || other === undefined || !open.includes(other)) return null;
    const alternates =
      c.timeline.lasting === null && (c.seen.mode === 'mixed' || c.timeline.changes >= 3);
    return {
      weight: alternates ? 0.9 : 0.73,
      text: `The working point lies where ${open.join(' and ')} meet and the sources disagree; either may come without any change of settings.`,
      evidenceFor: lines(
        `${rangeText(voltageV)} V at the feeder`,
        currentA !== null && `${rangeText(currentA, 0)} A`,
        ...open.map((mode) => `${mode}: ${boundaryText(mode, c.bounds)}`),
        alternates && 'The run itself changes between modes.',
      ),
      evidenceAgainst: lines(!alternates && 'The run stays in one mode.'),
      check:
        'Note volts at the feeder and amperes while welding, and see how close the qualified procedure lets you come to this zone.',
    };
  },
};
