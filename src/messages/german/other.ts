import type { OtherParams } from '../rooms/other.js';
import type { CatalogueOf } from '../writer.js';

export const OTHER: CatalogueOf<OtherParams> = {
  'in-words': ({ text }) => text,
};
