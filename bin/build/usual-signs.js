// Draws arcs and their sound, measures the signs that stand beside an answer by ear, and writes in which range each lies
// for each mode: src/judge/signs/usual-signs.ts. Argument: arcs a mode and family (default 24).
import { writeFileSync } from 'node:fs';

const { SHIPPED_RECIPE } = await import('../../dist/lab/train/data/recipe.js');
const { usualSigns } = await import('../../dist/lab/train/signs/usual-signs.js');

const recipe = {
  ...SHIPPED_RECIPE,
  seed: 'usual signs 1',
  runsPerMode: Number(process.argv[2] ?? 24),
  renderings: SHIPPED_RECIPE.renderings.slice(0, 2),
};
const arcs = recipe.runsPerMode * recipe.families.length * 4;
const signs = usualSigns(recipe, (done) => {
  if (done % 20 === 0) process.stderr.write(`${done} of ${arcs} arcs\n`);
});
writeFileSync(
  'src/judge/signs/usual-signs.ts',
  `import type { UsualSigns } from './usual-range.js';

/**
 * Where the measured signs lie in arcs drawn by the simulator, by mode: 10th, 50th and 90th percentile over the runs of a
 * mode, and the share of runs that show the sign. Of ${arcs} drawn arcs, ${recipe.renderings.length} recordings each, those whose mode is not in doubt by
 * itself; nothing here was measured on a real weld. Made by bin/build/usual-signs.js.
 */
export const USUAL_SIGNS: UsualSigns = ${JSON.stringify(signs, null, 2)
    .replace(/"(\w+)":/g, '$1:')
    .replace(/"/g, "'")};
`,
);
