import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { TOOL_NAME, TOOL_VERSION } from '../src/core/index.js';
import * as main from '../src/index.js';
import * as node from '../src/node.js';
import { sampleResult } from './support/sample-result.js';

describe('the public interface', () => {
  // Snapshots: a name that goes, or a field of the result that changes, breaks other people's
  // programs, so it is seen in the difference. Update them with `npx vitest run tests/public -u`.
  it('exports these names from the main entry', () => {
    expect(Object.keys(main).sort()).toMatchSnapshot();
  });

  it('adds these names in the entry for Node', () => {
    const added = Object.keys(node).filter((name) => !(name in main));
    expect(added.sort()).toMatchSnapshot();
    expect(Object.keys(main).filter((name) => !(name in node))).toEqual([]);
  });

  it('publishes this schema', () => {
    expect(main.resultJsonSchema()).toMatchSnapshot();
  });

  it('carries the name and version of the package', () => {
    const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
    const { name, version } = JSON.parse(text) as { name: string; version: string };
    expect([TOOL_NAME, TOOL_VERSION]).toEqual([name, version]);
  });

  it('refuses a result with a field of the wrong kind', () => {
    const result = sampleResult();
    expect(main.resultSchema.safeParse(result).success).toBe(true);
    for (const wrong of [
      { confidence: '0.9' },
      { confidence: 1.2 },
      { mode: 'stream' },
      { status: 'fine' },
    ]) {
      expect(main.resultSchema.safeParse({ ...result, ...wrong }).success).toBe(false);
    }
  });
});
