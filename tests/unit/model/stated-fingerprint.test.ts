import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fingerprint } from '../../../src/core/index.js';
import { SOUND_FEATURES } from '../../../src/features/index.js';
import { modelFingerprint } from '../../../src/model/index.js';
import { parseModel } from '../../../src/model/parse/index.js';

const root = join(import.meta.dirname, '../../..');
const read = (folder: string, name: string) =>
  JSON.parse(readFileSync(join(root, folder, name), 'utf8'));
const names = readdirSync(join(root, 'src/model/shipped')).filter(
  (name) => name.endsWith('.json') && name !== 'pooling.json',
);

describe('the fingerprint that a shipped model states', () => {
  it.each(names)('is that of its content: %s', (name) => {
    const { fingerprint: stated, ...document } = read('dist/model/shipped', name);
    expect(stated).toBe(fingerprint(document));
    expect(document).toEqual(read('src/model/shipped', name));
  });

  it('is not believed of a model from elsewhere', () => {
    const document = { ...read('src/model/shipped', 'sound.json'), fingerprint: '0'.repeat(16) };
    expect(modelFingerprint(parseModel(document, SOUND_FEATURES))).not.toBe('0'.repeat(16));
  });
});
