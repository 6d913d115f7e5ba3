import type { SuspicionParams } from '../rooms/suspicions.js';
import type { CatalogueOf } from '../writer.js';

export const SUSPICIONS: CatalogueOf<SuspicionParams> = {
  'swapped-channels': ({ meanVoltageV, meanCurrentA }, write) =>
    `The voltage averages ${write.figures(meanVoltageV, 4)} V and the current ${write.figures(meanCurrentA, 4)} A: it looks as if the two columns were swapped. They were read as they are; state the columns to change that.`,
  'implausible-voltage': ({ limitV, shareOfTime }, write) =>
    `The voltage lies beyond ${write.plain(limitV)} V for ${write.percent(shareOfTime)} of the time, and no arc burns there: a wrong scale, the mains, or a column that holds something else?`,
  'implausible-current': (given, write) =>
    given.how === 'beyond'
      ? `The current lies beyond ${write.plain(given.limitA)} A for ${write.percent(given.shareOfTime)} of the time, more than any source of this process gives: a wrong scale, or a column that holds something else?`
      : `The current never goes beyond ${write.figures(given.peakA, 3)} A, and no wire melts with that: a wrong scale, or a column that holds something else?`,
  'voltage-too-high': ({ peakV, looksLike }, write) =>
    looksLike === 'millivolts'
      ? `The voltage reaches ${write.figures(peakV, 4)} V: it looks like millivolts taken for volts. It was read as it is; state a voltage scale of 0.001 if so.`
      : `The voltage reaches ${write.figures(peakV, 4)} V, more than a welding source gives: a wrong scale, or a column that holds something else?`,
  'voltage-too-low': ({ peakV, looksLike }, write) =>
    looksLike === 'kilovolts'
      ? `The voltage stays below ${write.figures(peakV, 4)} V: kilovolts taken for volts, or a probe factor that is missing? State a voltage scale (1000 for kilovolts) if so.`
      : `The voltage stays below ${write.figures(peakV, 4)} V, where no arc burns: a divider or probe factor (often 10) seems to be missing. State a voltage scale if so.`,
  'negative-voltage': ({ meanVoltageV }, write) =>
    `The voltage averages ${write.figures(meanVoltageV, 4)} V: swapped polarity of the probe, or electrode negative. It was read as it is; state a negative voltage scale to turn it over.`,
  'current-too-high': ({ peakA }, write) =>
    `The current reaches ${write.figures(peakA, 4)} A: it looks like milliamperes taken for amperes. It was read as it is; state a current scale of 0.001 if so.`,
  'current-too-low': ({ peakA }, write) =>
    `The current stays below ${write.figures(peakA, 4)} A, too little for this process: the volts of a shunt or Hall sensor, or kiloamperes? State a current scale (amperes per unit) if so.`,
  'negative-current': ({ meanCurrentA }, write) =>
    `The current averages ${write.figures(meanCurrentA, 4)} A: the clamp faces the other way, or the electrode is negative. It was read as it is; state a negative current scale to turn it over.`,
};
