import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FIGURE_NAMES } from '../../../src/features/index.js';
import { analyseFile } from '../../../src/node.js';

const folder = join(import.meta.dirname, '../../../fixtures/recordings');

describe('names of figures', () => {
  // The type is made of the list: a figure that is missing in it could not be read by its name in TypeScript,
  // and a name that no recording gives would promise what is never there.
  it('are those that the demo recordings give, no fewer and no more', async () => {
    const given = new Set<string>();
    for (const name of readdirSync(folder).filter((one) => /\.(wav|csv)$/.test(one)))
      for (const key of Object.keys((await analyseFile(join(folder, name))).features))
        given.add(key);
    expect([...FIGURE_NAMES].sort()).toEqual([...given].sort());
  });
});
