import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { WatchEvent } from '../../../../src/apps/watch/events.js';
import { openWeldFolder, WeldFolder, writeWhole } from '../../../../src/apps/watch/weld-folder.js';
import { sampleResult } from '../../../support/sample-result.js';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'arc-welds-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

function weld(number: number): WatchEvent {
  const result = sampleResult();
  const { status, mode, confidence } = result;
  return { event: 'weld', timeS: 9, weld: number, startS: 1, status, mode, confidence, result };
}

describe('a folder of welds', () => {
  it('holds each result whole and goes on with the numbers of the run before', async () => {
    const first = await openWeldFolder(folder, () => {});
    expect(first.firstWeld).toBe(1);
    await first.tell(weld(1));
    await first.tell(weld(2));
    expect((await readdir(folder)).sort()).toEqual(['weld-000001.json', 'weld-000002.json']);
    const text = await readFile(join(folder, 'weld-000002.json'), 'utf8');
    expect(JSON.parse(text)).toEqual(sampleResult());
    expect((await openWeldFolder(folder, () => {})).firstWeld).toBe(3);
  });

  // Rejects one that drops the weld, ends the run, or harms the files that are there.
  it('keeps what a full disk refuses and writes it once there is room', async () => {
    let full = false;
    const said: string[] = [];
    const welds = new WeldFolder(
      folder,
      1,
      (text) => said.push(text),
      async (...args) => {
        if (full)
          throw Object.assign(new Error('ENOSPC: no space left on device'), { code: 'ENOSPC' });
        await writeWhole(...args);
      },
    );
    await welds.tell(weld(1));
    full = true;
    await welds.tell(weld(2));
    await welds.tell(weld(3));
    expect(welds.unsaved).toBe(2);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain('ENOSPC');
    expect(await readdir(folder)).toEqual(['weld-000001.json']);
    full = false;
    await welds.tell(weld(4));
    expect(welds.unsaved).toBe(0);
    expect(await readdir(folder)).toHaveLength(4);
  });

  it('refuses a folder that is a file', async () => {
    const path = join(folder, 'file');
    await writeFile(path, '');
    await expect(openWeldFolder(path, () => {})).rejects.toMatchObject({ code: 'cannot-write' });
  });
});
