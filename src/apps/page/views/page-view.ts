import { type ComponentChild, h } from 'preact';
import { UNIT_SYSTEMS } from '../../../core/index.js';
import { TABS, type Tab } from '../shell/state.js';
import { LANGUAGES } from '../words/index.js';
import { aboutView } from './about-view.js';
import { filesView } from './files-view.js';
import { recordView } from './record-view.js';
import { runsView } from './runs-view.js';
import { verdictView } from './verdict-view.js';
import type { View } from './view.js';

const VIEWS: Record<Tab, (view: View) => ComponentChild> = {
  record: recordView,
  verdict: verdictView,
  runs: runsView,
  files: filesView,
  about: aboutView,
};

/** About stands at the foot, out of the way of thick fingers. */
const PARTS = TABS.filter((one) => one !== 'about');

/** The whole page: name, parts, the part that is open, and what is said aloud. */
export function pageView(view: View): ComponentChild {
  const { app, state } = view;
  const { page, lang } = state.words;
  const busy = state.phase === 'recording' || state.phase === 'starting';
  return h('div', { class: `shell tab-${state.tab}` }, [
    h('a', { class: 'skip', href: '#main' }, page.skip),
    h('header', { class: 'head' }, [
      h('p', { class: 'name' }, page.title),
      h('label', { class: 'language' }, [
        h('span', { class: 'only-read' }, page.languageLabel),
        h(
          'select',
          {
            value: lang,
            onChange: (event: Event) => app.language((event.target as HTMLSelectElement).value),
          },
          LANGUAGES.map((one) =>
            h('option', { value: one.lang, lang: one.lang }, one.page.language),
          ),
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
    ]),
    h(
      'nav',
      { class: 'parts', 'aria-label': page.title },
      PARTS.map((tab) =>
        h(
          'button',
          {
            type: 'button',
            'aria-current': state.tab === tab ? 'page' : undefined,
            // The screen of a running recording stays where it is.
            disabled: busy && tab !== state.tab,
            onClick: () => app.go(tab),
          },
          page.tabs[tab],
        ),
      ),
    ),
    h('main', { id: 'main', tabIndex: -1 }, VIEWS[state.tab](view)),
    h('footer', null, [
      h(
        'button',
        { type: 'button', class: 'link', disabled: busy, onClick: () => app.go('about') },
        page.tabs.about,
      ),
    ]),
    h('p', { class: 'said', role: 'status' }, state.message),
  ]);
}
