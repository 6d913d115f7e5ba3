import { ENGLISH_PICTURES } from '../english.js';
import { type Packed, unpack } from '../pack.js';
import type { TimeRun } from '../run-view.js';
import { hydrate } from './hydrate.js';

/** The script of a report page. Without it the page still says everything, at one zoom. */
function start(): void {
  const data = document.getElementById('run-data');
  if (!data || !document.getElementById('stage')) return;
  hydrate(unpack(JSON.parse(data.textContent) as Packed) as TimeRun, ENGLISH_PICTURES);
  document.documentElement.classList.add('live');
}

start();
