import type { Result } from '../../../analysis/result/index.js';
import { parseSetup } from '../../../setup/index.js';
import { runPictures } from '../../report/index.js';
import { type Evidence, placeRun } from '../../view/evidence/index.js';
import { wordsFor } from '../../view/index.js';
import type { Drawn, RawSetup } from '../messages.js';
import { chooseWords, tagOf, unitsOfTag } from '../words/index.js';

/** What is drawn, and in which language of the page. */
export interface ToDraw {
  result: Result;
  evidence: Evidence;
  setup: RawSetup;
  lang: string;
}

/** The pictures of a judged run. @throws ArcError where the set-up can't be read */
export function draw({ result, evidence, setup, lang }: ToDraw): Drawn {
  const units = unitsOfTag(lang);
  const words = wordsFor(chooseWords(lang, []).view, { units });
  const placement = placeRun(parseSetup(setup), result);
  return {
    lang: tagOf(words.lang, units),
    markup: runPictures({ result, evidence, placement, modelCard: {} }, words),
  };
}
