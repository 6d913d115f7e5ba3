import type { Result } from '../../../analysis/result/index.js';
import { TOOL_NAME, TOOL_VERSION } from '../../../core/index.js';
import type { Interval } from '../score/bootstrap.js';
import { type Confusion, summarise } from '../score/confusion.js';
import { type Agreement, agreementOf } from './agreement.js';
import {
  answerFigures,
  confusionOfRuns,
  decided,
  type ProbabilityFigures,
  probabilityFigures,
  type RateFigures,
  rateFigures,
  type SpanFigures,
  spanFigures,
} from './figures.js';
import { type JudgedRun, judgeRun } from './judged-run.js';
import type { TruthRun } from './truth-runs.js';
import { AMBIGUOUS, eitherOf } from './vocabulary.js';

/** Version of the document. Fields only get added within one major version. */
export const EVALUATION_VERSION = '1.0';

/** Everything that is known when people's labels are laid beside the tool's answers. */
export interface Evaluation {
  kind: 'arc-transfer-evaluation';
  schemaVersion: typeof EVALUATION_VERSION;
  tool: { name: string; version: string };
  /** The models that answered, each once. */
  models: NonNullable<Result['model']>[];
  settings: Result['settings'] | null;
  /** Files by what can be scored of them. */
  runs: { labelled: number; scored: number; undecided: number; inPart: number; failed: number };
  confusion: Confusion;
  support: { label: string; runs: number }[];
  /** Keyed `accuracy`, `coverage`, `accuracyOfAnswered`, `macroRecall`, `macroF1`, `recall spray`, … */
  answers: Record<string, Interval | null>;
  probabilities: ProbabilityFigures;
  /** Runs that people could not decide: nothing there is right or wrong. */
  undecided: {
    ambiguous: number;
    ambiguousNamed: number;
    either: number;
    eitherNamed: number;
    eitherOneOfTwo: number;
  };
  rates: RateFigures | null;
  spans: SpanFigures | null;
  agreement: Agreement | null;
  /** Figures of each group; empty where no groups are stated. */
  groups: GroupRow[];
  files: Pick<JudgedRun, 'file' | 'group' | 'truth' | 'answer' | 'confidence' | 'error'>[];
}

/** One group in short. */
export interface GroupRow {
  group: string;
  runs: number;
  accuracy: number | null;
  coverage: number | null;
  accuracyOfAnswered: number | null;
  macroRecall: number | null;
}

/**
 * The evaluation of labelled recordings. `unsure` and `failed` are misses; runs whose truth is ambiguous
 * are counted apart.
 * @param results the answer to each run, in the same order
 */
export function evaluateRuns(
  truths: readonly TruthRun[],
  results: readonly Result[],
  mixedShare: number,
): Evaluation {
  const runs = truths.map((truth, i) => judgeRun(truth, results[i]!, mixedShare));
  const scored = decided(runs);
  const confusion = confusionOfRuns(runs);
  const models = new Map(
    results.flatMap(({ model }) => (model ? [[model.fingerprint, model]] : [])),
  );
  return {
    kind: 'arc-transfer-evaluation',
    schemaVersion: EVALUATION_VERSION,
    tool: { name: TOOL_NAME, version: TOOL_VERSION },
    models: [...models.values()],
    settings: results[0]?.settings ?? null,
    runs: {
      labelled: runs.length,
      scored: scored.length,
      undecided: runs.filter((run) => run.truth !== null).length - scored.length,
      inPart: runs.filter((run) => run.truth === null).length,
      failed: runs.filter((run) => run.answer === 'failed').length,
    },
    confusion,
    support: summarise(confusion).labels.map(({ label, support }) => ({ label, runs: support })),
    answers: answerFigures(runs),
    probabilities: probabilityFigures(runs),
    undecided: undecidedRuns(runs),
    rates: rateFigures(runs),
    spans: spanFigures(runs),
    agreement: agreementOf(truths, mixedShare),
    groups: groupRows(runs),
    files: runs.map(({ file, group, truth, answer, confidence, error }) => ({
      file,
      group,
      truth,
      answer,
      confidence,
      error,
    })),
  };
}

function undecidedRuns(runs: readonly JudgedRun[]): Evaluation['undecided'] {
  const ambiguous = runs.filter((run) => run.truth === AMBIGUOUS);
  const either = runs.filter((run) => run.truth !== null && eitherOf(run.truth) !== null);
  const named = (run: JudgedRun) => !['unsure', 'failed', 'no-arc'].includes(run.answer);
  return {
    ambiguous: ambiguous.length,
    ambiguousNamed: ambiguous.filter(named).length,
    either: either.length,
    eitherNamed: either.filter(named).length,
    eitherOneOfTwo: either.filter((run) => eitherOf(run.truth!)!.includes(run.answer)).length,
  };
}

function groupRows(runs: readonly JudgedRun[]): GroupRow[] {
  const names = [...new Set(runs.map((run) => run.group))].sort();
  if (names.every((name) => name === '')) return [];
  return names.map((group) => {
    const own = runs.filter((run) => run.group === group);
    const { accuracy, coverage, accuracyOfAnswered, macroRecall } = summarise(confusionOfRuns(own));
    const count = decided(own).length;
    return { group, runs: count, accuracy, coverage, accuracyOfAnswered, macroRecall };
  });
}
