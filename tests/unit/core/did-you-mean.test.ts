import { describe, expect, it } from 'vitest';
import { didYouMean } from '../../../src/core/index.js';

describe('didYouMean', () => {
  it.each([
    ['unsrue', 'unsure'], // neighbours swapped
    ['dissagrees', 'disagrees'], // one letter too many
    ['SPRAY', 'spray'], // case does not count
  ])('%s is near %s', (typed, meant) => {
    expect(didYouMean(typed, ['unsure', 'disagrees', 'spray'])).toBe(` Did you mean "${meant}"?`);
  });

  it('says nothing where nothing is near', () => {
    // Rejects one that always offers its best guess, however far.
    expect(didYouMean('banana', ['unsure', 'disagrees', 'spray'])).toBe('');
    expect(didYouMean('x', [])).toBe('');
  });
});
