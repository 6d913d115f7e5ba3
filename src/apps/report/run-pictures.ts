import type { Words } from '../view/index.js';
import type { RunView } from './run-view.js';
import { placeSection, reasonSection } from './sections/place-and-reasons.js';
import { shapeSection } from './sections/shape.js';
import { timeSection } from './sections/time.js';

/** The pictures of one run with their tables, as parts of a page; with English words the same as on its report. */
export function runPictures(run: RunView, words: Words): string {
  const sections = [timeSection, shapeSection, placeSection, reasonSection];
  return sections.map((section) => section(run, words)).join('\n');
}
