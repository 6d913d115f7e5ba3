import { number, share } from '../../../lab/evaluate/index.js';
import type { ComparedFigure, FigureName, ModelComparison } from '../../../lab/train/index.js';
import { plain } from '../../view/index.js';

const NAMES: Record<FigureName, string> = {
  accuracy: 'the named mode',
  brier: 'the Brier score',
  logLoss: 'the log loss',
};

function answerLine({ answer, better, worse }: ModelComparison): string {
  const on = (names: readonly FigureName[]) => names.map((name) => NAMES[name]).join(' and ');
  if (answer === 'better')
    return `The new model is better than the shipped one on these recordings, by ${on(better)}.`;
  if (answer === 'worse')
    return `The new model is worse than the shipped one on these recordings, by ${on(worse)}: keep the shipped one.`;
  return 'These recordings show no difference that matters between the two models.';
}

/** The comparison in words and figures, for a terminal. */
export function comparisonText(comparison: ModelComparison): string {
  const { accuracy, brier, logLoss, parts, runs } = comparison;
  const line = (name: string, figure: ComparedFigure): string => {
    const { low, high } = figure.difference;
    return `${name}: new ${number(figure.own)}, shipped ${number(figure.shipped)}, difference ${number(figure.difference.value)} (95 % interval ${number(low)} to ${number(high)})`;
  };
  const lines = [
    `${answerLine(comparison)} ${runs} recordings, each scored by a model that had not seen its group:`,
    line('accuracy (more is better)', accuracy),
    line('log loss (less is better)', logLoss),
    line('Brier score (less is better)', brier),
    ...parts.map(
      (part) =>
        `${plain(part.part)}: ${part.runs} recordings, right new ${share(part.own)}, shipped ${share(part.shipped)}`,
    ),
    'Given that an arc burns. Both models read the same windows; neither is an inspection of a weld.',
  ];
  return `${lines.join('\n')}\n`;
}
