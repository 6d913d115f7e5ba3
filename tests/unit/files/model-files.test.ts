import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../src/analysis/index.js';
import type { Result } from '../../../src/analysis/result/index.js';
import { modelsOf } from '../../../src/apps/label/engine-module.js';
import { readLabelOptions } from '../../../src/apps/label/label-options.js';
import labelInWorker from '../../../src/apps/label/worker.js';
import { SHIPPED_ENGINE } from '../../../src/apps/terminal/judge/shipped-engine.js';
import { MODEL_MOST_BYTES, modelLoader } from '../../../src/files/model-files.js';
import { loadShippedModel } from '../../../src/files/shipped-models.js';
import { scratch } from '../../support/scratch.js';

/** Writes texts as files and loads models from them. */
function load(...texts: string[]) {
  const folder = scratch(Object.fromEntries(texts.map((text, i) => [`m${i}.json`, text])));
  return modelLoader(texts.map((_, i) => join(folder, `m${i}.json`)));
}

const ofSet = (id: string) => JSON.stringify({ featureSet: { id } });

describe('modelLoader', () => {
  it('gives each kind of recording the model that is for it', async () => {
    const loader = await load(ofSet('sound'), ofSet('voltage'));
    expect(await loader('voltage')).toEqual({ featureSet: { id: 'voltage' } });
    // Rejects falling back on another model in silence.
    await expect(loader('current')).rejects.toMatchObject({ code: 'model-mismatch' });
  });

  it.each([
    ['no JSON', 'function () {}'],
    ['of no kind', '{"featureSet":{"id":{"toString":"sound"}}}'],
    ['a list', '[1, 2]'],
    ['null', 'null'],
    ['nested without end', '['.repeat(100_000)],
    ['nested without end in an object', '{"a":'.repeat(100_000)],
    ['too large', ' '.repeat(MODEL_MOST_BYTES + 1)],
    ['empty', ''],
  ])('refuses a file that is %s', async (_, text) => {
    await expect(load(text)).rejects.toMatchObject({ code: 'bad-model' });
  });

  it('refuses two models for one kind, and a file that is not there', async () => {
    await expect(load(ofSet('sound'), ofSet('sound'))).rejects.toMatchObject({ code: 'bad-model' });
    await expect(modelLoader(['/nowhere/m.json'])).rejects.toMatchObject({ code: 'bad-model' });
  });
});

describe('label --model', () => {
  const recording = join(import.meta.dirname, '../../../fixtures/recordings/spray.csv');

  it('judges in the worker by the file, and names it in the result', async () => {
    const shipped = (await loadShippedModel('voltage-current')) as Record<string, unknown>;
    const folder = scratch({ 'm.json': JSON.stringify({ ...shipped, id: 'my model' }) });
    const models = [join(folder, 'm.json')];
    const outcome = await labelInWorker({
      task: { path: recording, origin: 'named', setup: {}, fingerprint: '' },
      plan: { settings: defaultSettings(), reading: {}, windows: false, models },
      engineUrl: null,
    });
    const { result } = JSON.parse(outcome.line) as { result: Result };
    expect(result.model?.id).toBe('my model');
  });

  it('labels again when the content of the file changes', async () => {
    // Rejects fingerprints of names: a refitted model under the same name would be taken for the old one.
    const engine = { ENGINE: SHIPPED_ENGINE, modelsFingerprint: async () => 'shipped' };
    const print = (text: string) => {
      const folder = scratch({ 'm.json': text });
      const plan = { settings: defaultSettings(), reading: {}, windows: false };
      return modelsOf({ ...plan, models: [join(folder, 'm.json')] }, engine);
    };
    expect(await print('{"a":1}')).toBe(await print('{"a":1}'));
    expect(await print('{"a":1}')).not.toBe(await print('{"a":2}'));
    const plan = { settings: defaultSettings(), reading: {}, windows: false };
    expect(await modelsOf(plan, engine)).toBe('shipped');
  });

  it('goes with a queue: its workers read the same files', async () => {
    // Rejects a queue that drops the flag and labels with the shipped models.
    const given = { out: 'a.csv', model: ['m.json'], queue: 'redis://localhost' };
    expect((await readLabelOptions(given)).plan.models).toEqual(['m.json']);
  });
});
