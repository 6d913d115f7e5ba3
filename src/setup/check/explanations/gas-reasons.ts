import { sprayInGasText } from '../../index.js';
import { type ExplanationRule, lines } from './finding.js';

const GAS_CHECK =
  'Read the cylinder label or the mixer setting, and measure the flow at the nozzle.';

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
      text: `${wanted} is wanted in a gas that ${spray === 'no' ? 'does not carry it' : 'may not carry it'}.`,
      evidenceFor: [sprayInGasText(gas)],
      evidenceAgainst: lines(spray === 'disputed' && 'Some sources do report spray in such a gas.'),
      check: `${GAS_CHECK} Compare with the gas of the qualified procedure.`,
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
      text: `${sprays.join(' and ')} was seen, and ${gas.text} is stated. Both cannot be: either the gas is not as stated, or the recording was read wrongly (small drops off the axis sound alike).`,
      evidenceFor: lines(
        sprayInGasText(gas),
        teachingConflict(c.setup.setVoltageV) &&
          'Teaching puts "the highest mode" of 0.045 in wire in CO2 at 28–30 V (common practice, no source); published work does not call it axial spray.',
      ),
      evidenceAgainst: lines(
        confidence >= 0.9 &&
          `The mode was named with ${Math.round(confidence * 100)} % confidence.`,
      ),
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
      text: noGas
        ? 'The gas is not stated; too much CO2 would keep the arc globular.'
        : 'Volts and amperes permit spray, and the transfer is globular: the gas may hold more CO2 than stated, or not reach the arc.',
      evidenceFor: lines(measured && 'Measured volts and amperes both lie in the spray region.'),
      evidenceAgainst: lines(!measured && 'Volts or amperes are estimated, not measured.'),
      check: GAS_CHECK,
    };
  },
};
