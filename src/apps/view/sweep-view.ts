import type { SweepStep } from '../../analysis/sweep/index.js';
import type { Words } from './words/words.js';

/** One step of a sweep: its cells in the order of the heads. */
export interface StepView {
  cells: string[];
}

export function viewSteps(steps: readonly SweepStep[], words: Words): StepView[] {
  const { numbers } = words;
  const names: Readonly<Record<string, string>> = words.result.condition.names;
  const known = (value: number | null, digits: number): string =>
    value === null ? '–' : numbers.decimal(value.toFixed(digits));
  return steps.map((step, k) => ({
    cells: [
      `${k + 1} ${step.path}`,
      numbers.time(step.fromS),
      sayMode(step, words),
      step.confidence === null ? '–' : numbers.percent(step.confidence),
      known(step.meanVoltageV, 1),
      known(step.meanCurrentA, 0),
      known(step.setVoltageV, 1),
      step.wireFeedMPerMin === null
        ? '–'
        : words.sentences.write.inUnits(step.wireFeedMPerMin, 'feed'),
      step.regularity === null ? '–' : numbers.decimal(step.regularity.toPrecision(2)),
      step.off.map((one) => names[one] ?? one).join(', '),
    ],
  }));
}

function sayMode({ status, mode }: SweepStep, words: Words): string {
  if (status !== 'ok' || mode === null)
    return words.result.headlines[status === 'ok' ? 'unsure' : status].short;
  return mode === 'mixed' ? words.result.transfer('mixed') : words.mode(mode);
}

/** Where a step lies, in words. */
export function sayStepPlace(step: SweepStep, words: Words): string {
  const { numbers, sweep, sentences } = words;
  const { meanVoltageV, meanCurrentA, setVoltageV, wireFeedMPerMin } = step;
  return sweep.place(
    meanVoltageV === null ? null : `${numbers.decimal(meanVoltageV.toFixed(1))} V`,
    meanCurrentA === null ? null : `${meanCurrentA.toFixed(0)} A`,
    setVoltageV === null ? null : `${numbers.decimal(setVoltageV.toFixed(1))} V`,
    wireFeedMPerMin === null ? null : sentences.write.inUnits(wireFeedMPerMin, 'feed'),
  );
}
