import { ENGLISH_TIME, GERMAN_TIME } from '../../view/index.js';
import { type Packed, unpack } from '../pack.js';
import type { TimeRun } from '../run-view.js';
import { hydrate } from './hydrate.js';

const WORDS = [ENGLISH_TIME, GERMAN_TIME];

/** The script of a report page. Without it the page still says everything, at one zoom. */
function start(): void {
  const data = document.getElementById('run-data');
  if (!data || !document.getElementById('stage')) return;
  const { lang } = document.documentElement;
  const words = WORDS.find((one) => one.lang === lang) ?? ENGLISH_TIME;
  hydrate(unpack(JSON.parse(data.textContent) as Packed) as TimeRun, words);
  document.documentElement.classList.add('live');
}

start();
