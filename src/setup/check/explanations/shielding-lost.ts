import { colder } from '../answers.js';
import { type ExplanationRule, lines } from './finding.js';

/** Gas ran out, was blown away or was shut off while welding. */
export const shieldingLost: ExplanationRule = {
  id: 'shielding-lost',
  judge: ({ c }) => {
    const { lasting } = c.timeline;
    if (lasting === null) return null;
    const { from, to, atS } = lasting;
    const good = from === c.setup.expectedMode || c.permitted[from] !== 'no';
    const worse = colder(to, from) || (from === 'short-circuit' && to === 'globular');
    if (!good || !worse || c.permittedAtPoint[to] === 'yes') return null;
    const disputed = c.permittedAtPoint[to] === 'possible' && c.point.voltageMeasured;
    return {
      weight: disputed ? 0.66 : 0.88,
      text: `The mode changed for good from ${from} to ${to} at ${atS.toFixed(1)} s with the settings untouched, as when shielding gas is lost.`,
      evidenceFor: lines(
        `One lasting change at ${atS.toFixed(1)} s.`,
        c.permittedAtPoint[to] === 'no' && `The settings do not permit ${to}.`,
      ),
      evidenceAgainst: lines(
        disputed && `The settings lie where ${to} is possible with good gas as well.`,
        'A change of torch distance or of feed at that moment would look alike.',
      ),
      check:
        'Look at the cylinder gauge and flow meter, the hose, the nozzle (spatter) and draughts; look at the bead from that place on for pores.',
    };
  },
};
