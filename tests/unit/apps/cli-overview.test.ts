import { describe, expect, it } from 'vitest';
import { createProgram } from '../../../src/apps/cli/main.js';

describe('the list of commands in the general help', () => {
  it('is the one that the commands themselves would give', async () => {
    const help = async (overview: boolean): Promise<string> =>
      (await createProgram(undefined, overview)).helpInformation();
    expect(await help(true)).toBe(await help(false));
    expect(await help(true)).toMatch(/classify \[options\] <inputs\.\.\.>/);
  });
});
