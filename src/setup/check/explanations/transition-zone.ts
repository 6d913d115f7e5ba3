import type { Mode } from '../../../core/index.js';
import { message, said } from '../../../messages/index.js';
import { sayBoundary } from '../../index.js';
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
      what: message('transition-zone', { open }),
      evidenceFor: lines(
        message('point-voltage', { feederV: voltageV }),
        currentA !== null && message('point-current', { currentA }),
        ...open.map((mode) =>
          message('mode-lies', { mode, where: said(sayBoundary(mode, c.bounds)) }),
        ),
        alternates && message('run-changes-modes'),
      ),
      evidenceAgainst: lines(!alternates && message('run-keeps-mode')),
      check: message('check-zone'),
    };
  },
};
