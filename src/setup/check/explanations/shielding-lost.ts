import { message } from '../../../messages/index.js';
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
      what: message('shielding-lost', { from, to, atS }),
      evidenceFor: lines(
        message('lasting-change', { atS }),
        c.permittedAtPoint[to] === 'no' && message('setup-forbids-mode', { mode: to }),
      ),
      evidenceAgainst: lines(
        disputed && message('possible-with-good-gas', { mode: to }),
        message('torch-or-feed-alike'),
      ),
      check: message('check-shielding'),
    };
  },
};
