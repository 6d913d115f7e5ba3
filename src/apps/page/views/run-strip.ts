import { type ComponentChild, h } from 'preact';
import { verdictLetter } from '../../report/index.js';
import type { View } from './view.js';

const MOST = 8;

/** The last runs side by side, newest first, each one press away. Nothing before the second run. */
export function runStrip({ app, state }: View): ComponentChild {
  const { page, result, lang } = state.words;
  const { runs } = state;
  if (runs.length < 2) return null;
  return h('div', { class: 'run-strip' }, [
    h('h2', null, page.latest),
    h(
      'ul',
      { tabIndex: 0, 'aria-label': page.latest },
      runs.slice(0, MOST).map((run) => {
        const { mode, confidence } = run.result;
        const single = mode !== null && mode !== 'mixed' ? mode : 'none';
        const when = new Date(run.createdMs).toLocaleTimeString(lang, { timeStyle: 'short' });
        const sure = confidence === null ? '' : result.percent(confidence);
        return h('li', { key: run.id }, [
          h(
            'button',
            {
              type: 'button',
              class: `strip-run mode-${single}`,
              'aria-current': state.shown?.run.id === run.id && state.tab === 'verdict',
              onClick: () => void app.runs.open(run),
            },
            // What is read out begins with the words of the verdict and holds all that is seen.
            [
              h('span', { class: 'only-read' }, `${result.verdict(run.result)} `),
              h(
                'strong',
                { class: 'strip-letter', 'aria-hidden': 'true' },
                verdictLetter(run.result),
              ),
              h('span', null, sure === '' ? '–' : sure),
              h('span', { class: 'strip-who' }, run.student || when),
            ],
          ),
        ]);
      }),
    ),
  ]);
}
