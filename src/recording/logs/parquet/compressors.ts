import type { Compressors } from 'hyparquet';
import { ArcError } from '../../../core/index.js';

/** A page larger than this is no page of numbers (writers make pages of about 1 MB). */
const MAX_PAGE_BYTES = 512 * 1024 * 1024;

/**
 * The decompressors, loaded when first needed, behind a bound on what one page may unpack to.
 *
 * @throws ArcError `too-large` while reading.
 */
export async function boundedCompressors(): Promise<Compressors> {
  const { compressors } = await import('hyparquet-compressors');
  const bounded: Compressors = {};
  for (const [codec, unpack] of Object.entries(compressors)) {
    if (typeof unpack !== 'function') continue;
    bounded[codec as keyof Compressors] = (input, outputLength) => {
      if (outputLength > MAX_PAGE_BYTES) throw tooLarge(outputLength);
      return unpack(input, outputLength);
    };
  }
  return bounded;
}

function tooLarge(bytes: number): ArcError {
  return new ArcError({
    code: 'too-large',
    what: `A page of the file says that it unpacks to ${Math.round(bytes / 1e6)} MB.`,
    expected: `pages of at most ${Math.round(MAX_PAGE_BYTES / 1e6)} MB`,
    todo: 'Write the table again, or check where the file comes from.',
  });
}
