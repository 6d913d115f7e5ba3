import { message } from '../../../messages/index.js';
import { gasName, saySprayInGas } from '../../index.js';
import { type ExplanationRule, lines } from './finding.js';

const GAS_CHECK = message('check-gas', { compareWithProcedure: false });

/** The gas cannot carry the mode that is wanted. */
export const wrongGasForMode: ExplanationRule = {
  id: 'wrong-gas-for-mode',
  judge: ({ c, wanted, intended }) => {
    const { gas } = c.setup;
    if (wanted !== 'spray' && wanted !== 'pulsed-spray') return null;
    if (intended?.answer === 'agrees' || gas === null) return null;
    const { spray, transition } = c.bounds;
    if (spray !== 'no' && spray !== 'disputed') return null;
    const beyond = transition !== null && (c.judged.currentA?.min ?? 0) > transition.currentA.max;
    return {
      weight: spray === 'no' ? 0.95 : beyond ? 0.75 : 0.5,
      what: message('wrong-gas-for-mode', { wanted, carries: spray === 'no' ? 'not' : 'perhaps' }),
      evidenceFor: [saySprayInGas(gas)],
      evidenceAgainst: lines(spray === 'disputed' && message('some-report-spray')),
      check: message('check-gas', { compareWithProcedure: true }),
    };
  },
};

/** A mode was seen that the stated gas should not give: said as a conflict, never settled silently. */
export const gasModeConflict: ExplanationRule = {
  id: 'gas-mode-conflict',
  judge: ({ c }) => {
    const { gas } = c.setup;
    const sprays = c.modes.filter((mode) => mode === 'spray' || mode === 'pulsed-spray');
    if (gas === null || sprays.length === 0 || c.bounds.spray !== 'no') return null;
    const confidence = c.seen.confidence ?? 0;
    return {
      weight: 0.94,
      what: message('gas-mode-conflict', { seen: sprays, gas: gasName(gas) }),
      evidenceFor: lines(
        saySprayInGas(gas),
        teachingConflict(c.setup.setVoltageV) && message('taught-highest-mode'),
      ),
      evidenceAgainst: lines(confidence >= 0.9 && message('named-with-confidence', { confidence })),
      check: GAS_CHECK,
    };
  },
};

const teachingConflict = (volts: number | null): boolean =>
  volts !== null && volts >= 27 && volts <= 31;

/** Settings and measurements permit spray, and colder free flight is seen throughout. */
export const gasNotAsStated: ExplanationRule = {
  id: 'gas-not-as-stated',
  judge: ({ c, seen, wanted, intended, settings }) => {
    if (seen !== 'globular' || c.timeline.lasting !== null) return null;
    const missed = intended?.answer === 'disagrees' && wanted === 'spray';
    const clear = settings.answer === 'disagrees' && c.permittedAtPoint.spray === 'yes';
    const noGas = missed && c.setup.gas === null && c.permittedAtPoint.spray === 'possible';
    if (!clear && !noGas) return null;
    const measured = c.point.voltageMeasured && c.point.currentMeasured;
    return {
      weight: clear ? (measured ? 0.74 : 0.45) : 0.45,
      what: message('gas-not-as-stated', { gasStated: !noGas }),
      evidenceFor: lines(measured && message('measured-in-spray')),
      evidenceAgainst: lines(!measured && message('point-estimated')),
      check: GAS_CHECK,
    };
  },
};
