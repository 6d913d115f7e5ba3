import { type ComponentChild, h } from 'preact';
import { UNIT_SYSTEMS } from '../../../core/index.js';
import { TABS, type Tab } from '../shell/state.js';
import { LANGUAGES } from '../words/index.js';
import { aboutView } from './about-view.js';
import { filesView } from './files-view.js';
import { hearView } from './hear-view.js';
import { groundPatterns } from './mode-ground.js';
import { recordView } from './record-view.js';
import { runsView } from './runs-view.js';
import { verdictView } from './verdict-view.js';
import type { View } from './view.js';

const VIEWS: Record<Tab, (view: View) => ComponentChild> = {
  record: recordView,
  verdict: verdictView,
  runs: runsView,
  listen: hearView,
  files: filesView,
  about: aboutView,
};

/** About stands at the foot, out of the way of thick fingers. */
const PARTS = TABS.filter((one) => one !== 'about');

/** The whole page: parts, the part that is open, choices, and what is said aloud. After a run the answer comes first. */
export function pageView(view: View): ComponentChild {
  const { state } = view;
  const { page } = state.words;
  const answered = state.tab === 'verdict' && state.shown !== null;
  const main = h('main', { id: 'main', key: 'main', tabIndex: -1 }, VIEWS[state.tab](view));
  return h('div', { class: `shell tab-${state.tab}${answered ? ' answered' : ''}` }, [
    h('a', { class: 'skip', href: '#main' }, page.skip),
    groundPatterns(),
    ...(answered ? [main, parts(view)] : [parts(view), main]),
    foot(view),
    h('p', { class: 'said', role: 'status' }, state.message),
  ]);
}

const isBusy = ({ phase }: View['state']): boolean => phase === 'recording' || phase === 'starting';

function parts({ app, state }: View): ComponentChild {
  const { page } = state.words;
  const shown = PARTS.filter((one) => one !== 'verdict' || state.shown || state.tab === one);
  return h(
    'nav',
    { class: 'parts', key: 'parts', 'aria-label': page.title },
    shown.map((tab) =>
      h(
        'button',
        {
          type: 'button',
          'aria-current': state.tab === tab ? 'page' : undefined,
          // The screen of a running recording stays where it is.
          disabled: isBusy(state) && tab !== state.tab,
          onClick: () => app.go(tab),
        },
        page.tabs[tab],
      ),
    ),
  );
}

function foot({ app, state }: View): ComponentChild {
  const { page, lang } = state.words;
  return h('footer', { class: 'foot-row' }, [
    h('label', { class: 'language' }, [
      h('span', { class: 'only-read' }, page.languageLabel),
      h(
        'select',
        {
          value: lang,
          onChange: (event: Event) => app.language((event.target as HTMLSelectElement).value),
        },
        LANGUAGES.map((one) => h('option', { value: one.lang, lang: one.lang }, one.page.language)),
      ),
    ]),
    h('label', { class: 'language' }, [
      h('span', { class: 'only-read' }, page.unitsLabel),
      h(
        'select',
        {
          value: state.units,
          onChange: (event: Event) =>
            app.units((event.target as HTMLSelectElement).value === 'inch' ? 'inch' : 'metric'),
        },
        UNIT_SYSTEMS.map((one) => h('option', { value: one }, page.units[one])),
      ),
    ]),
    h(
      'button',
      { type: 'button', class: 'link', disabled: isBusy(state), onClick: () => app.go('about') },
      page.tabs.about,
    ),
  ]);
}
