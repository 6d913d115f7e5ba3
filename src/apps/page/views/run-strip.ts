import { type ComponentChild, h } from 'preact';
import { viewVerdict } from '../../view/index.js';
import type { View } from './view.js';

const MOST = 8;

/** The last runs side by side, newest first, each one press away. Nothing before the second run. */
export function runStrip({ app, state }: View): ComponentChild {
  const { page, view: words, lang } = state.words;
  const { runs } = state;
  if (runs.length < 2) return null;
  return h('div', { class: 'run-strip' }, [
    h('h2', null, page.latest),
    h(
      'ul',
      { tabIndex: 0, 'aria-label': page.latest },
      runs.slice(0, MOST).map((run) => {
        const { confidence } = run.result;
        const { mode, letter, headline } = viewVerdict(run.result, words);
        const when = new Date(run.createdMs).toLocaleTimeString(lang, { timeStyle: 'short' });
        const sure = confidence === null ? '' : words.numbers.percent(confidence);
        return h('li', { key: run.id }, [
          h(
            'button',
            {
              type: 'button',
              class: `strip-run mode-${mode ?? 'none'}`,
              'aria-current': state.shown?.run.id === run.id && state.tab === 'verdict',
              onClick: () => void app.runs.open(run),
            },
            // What is read out begins with the words of the verdict and holds all that is seen.
            [
              h('span', { class: 'only-read' }, `${headline} `),
              h('strong', { class: 'strip-letter', 'aria-hidden': 'true' }, letter),
              h('span', null, sure === '' ? '–' : sure),
              h('span', { class: 'strip-who' }, run.student || when),
            ],
          ),
        ]);
      }),
    ),
  ]);
}
