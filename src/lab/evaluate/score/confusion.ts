/** Counts of answers by truth. Rows are true labels, columns answers; `unsure` and the like are answers too. */
export interface Confusion {
  truths: string[];
  answers: string[];
  counts: number[][];
}

/** Counts pairs of truth and answer in the order given for both. */
export function confusionOf(
  pairs: readonly { truth: string; answer: string }[],
  truths: readonly string[],
  answers: readonly string[],
): Confusion {
  const counts = truths.map(() => answers.map(() => 0));
  for (const { truth, answer } of pairs) {
    const row = counts[truths.indexOf(truth)];
    const column = answers.indexOf(answer);
    if (row && column >= 0) row[column] = row[column]! + 1;
  }
  return { truths: [...truths], answers: [...answers], counts };
}

/** Recall and precision of one label. */
export interface LabelScore {
  label: string;
  /** Runs that truly are of this label. */
  support: number;
  /** Hits over support; null where there is no such run. An answer of `unsure` is a miss. */
  recall: number | null;
  /** Hits over answers of this label; 0 where a label with support was never answered. */
  precision: number | null;
}

export interface ScoreSummary {
  labels: LabelScore[];
  /** Mean recall over the labels with support: a label missed altogether counts 0. */
  macroRecall: number | null;
  /** Mean of the harmonic means of recall and precision, the same way. */
  macroF1: number | null;
  accuracy: number | null;
  /** Share of runs that got a label at all, and the accuracy of those. */
  coverage: number | null;
  accuracyOfAnswered: number | null;
}

/** Recall, precision and their macro averages; a label that was never found pulls them down, never drops out. */
export function summarise(confusion: Confusion): ScoreSummary {
  const { truths, answers, counts } = confusion;
  const labels = truths.map((label, row) => {
    const column = answers.indexOf(label);
    const support = sum(counts[row]!);
    const hits = column >= 0 ? counts[row]![column]! : 0;
    const answered = column >= 0 ? sum(counts.map((line) => line[column]!)) : 0;
    return {
      label,
      support,
      recall: support > 0 ? hits / support : null,
      precision: answered > 0 ? hits / answered : support > 0 ? 0 : null,
    };
  });
  const total = sum(counts.flat());
  const hits = sum(truths.map((label, row) => counts[row]![answers.indexOf(label)] ?? 0));
  const answered = sum(
    counts.flatMap((line) => line.filter((_, column) => truths.includes(answers[column]!))),
  );
  const present = labels.filter((one) => one.support > 0);
  return {
    labels,
    macroRecall: mean(present.map((one) => one.recall!)),
    macroF1: mean(present.map((one) => harmonic(one.recall!, one.precision!))),
    accuracy: total > 0 ? hits / total : null,
    coverage: total > 0 ? answered / total : null,
    accuracyOfAnswered: answered > 0 ? hits / answered : null,
  };
}

function harmonic(a: number, b: number): number {
  return a + b > 0 ? (2 * a * b) / (a + b) : 0;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function mean(values: readonly number[]): number | null {
  return values.length > 0 ? sum(values) / values.length : null;
}
