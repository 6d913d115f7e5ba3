import { type Machine, mostRegular } from '../../../analysis/sweep/index.js';
import { MODES } from '../../../core/index.js';
import { type Look, sayStepPlace, viewSteps, visible, type Words, wrap } from '../../view/index.js';

/** The answer of `arc-transfer sweep` for a terminal. */
export function sweepText(
  machine: Machine,
  disagrees: { count: number; of: number } | null,
  look: Look,
  words: Words,
): string {
  const { bold, dim } = look.paint;
  const { sweep } = words;
  const rows = viewSteps(machine.steps, words).map(({ cells }) => cells.map(visible));
  const table = [[...sweep.heads], ...rows];
  const widths = sweep.heads.map((_, k) => Math.max(...table.map((row) => row[k]!.length)));
  const lines = table.map((row) =>
    row
      .map((cell, k) => (k >= 3 && k <= 8 ? cell.padStart(widths[k]!) : cell.padEnd(widths[k]!)))
      .join('  ')
      .trimEnd(),
  );
  const best = mostRegular(machine.steps);
  const bests = MODES.flatMap((mode) => {
    const step = best[mode];
    if (!step) return [];
    const spread = words.numbers.figure(step.regularity!);
    return [sweep.bestOf(words.mode(mode), sayStepPlace(step, words), spread)];
  });
  return `${[
    bold(sweep.title(visible(machine.machine))),
    '',
    bold(lines[0]!),
    ...lines.slice(1),
    '',
    bold(sweep.best),
    ...(bests.length === 0 ? [sweep.none] : bests).flatMap((one) => wrap(one, look.width, 2, 2)),
    '',
    ...wrap(
      disagrees === null ? sweep.noPublished : sweep.disagrees(disagrees.count, disagrees.of),
      look.width,
      2,
    ),
    '',
    ...wrap(sweep.caution, look.width, 2).map(dim),
  ].join('\n')}\n`;
}
