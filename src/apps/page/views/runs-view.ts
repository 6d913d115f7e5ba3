import { type ComponentChild, h } from 'preact';
import { viewVerdict } from '../../view/index.js';
import type { Run } from '../storage/database.js';
import { compareView } from './compare-view.js';
import type { View } from './view.js';

/** Kept runs: a strip of the newest, all of them as a list, two side by side, export and deletion. */
export function runsView(view: View): ComponentChild {
  const { app, state } = view;
  const { page } = state.words;
  const { runs, room } = state;
  return h('section', { class: 'runs' }, [
    h('h1', null, page.runsTitle),
    state.store === 'none' ? h('p', { class: 'trouble' }, page.noStore) : null,
    runs.length === 0 ? h('p', null, page.noRuns) : h('p', { class: 'small' }, page.runsHelp),
    h(
      'ul',
      { class: 'run-list' },
      runs.map((run) => runRow(view, run)),
    ),
    runs.length > 1 ? compareView(view) : null,
    room
      ? h('p', { class: 'small' }, page.room(megabytes(room.usedBytes), megabytes(room.allBytes)))
      : null,
    runs.length > 0
      ? h('div', { class: 'row' }, [
          h('button', { type: 'button', onClick: () => app.runs.saveTable() }, page.share.table),
        ])
      : null,
    deletion(view),
  ]);
}

function runRow(view: View, run: Run): ComponentChild {
  const { app, state } = view;
  const { page, view: words, lang } = state.words;
  const { mode, letter, headline, sure } = viewVerdict(run.result, words);
  const who = [run.student, run.booth].filter((one) => one !== '').join(', ');
  const when = new Date(run.createdMs).toLocaleString(lang, {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
  return h('li', { key: run.id, class: `run mode-${mode ?? 'none'}` }, [
    h('span', { class: 'letter small-letter', 'aria-hidden': 'true' }, letter),
    h('div', { class: 'run-words' }, [
      h(
        'button',
        { type: 'button', class: 'link', onClick: () => void app.runs.open(run) },
        headline,
      ),
      h('p', { class: 'small' }, sure ?? ' '),
      h('p', { class: 'small' }, [who === '' ? '' : `${who} · `, when]),
      run.origin === 'file' ? h('p', { class: 'small file' }, run.result.source.path) : null,
    ]),
    h('div', { class: 'run-acts' }, [
      h('label', { class: 'tick' }, [
        h('input', {
          type: 'checkbox',
          checked: state.picked.includes(run.id),
          onChange: () => app.runs.pick(run.id),
        }),
        h('span', null, page.comparePick),
      ]),
      h(
        'button',
        {
          type: 'button',
          'aria-label': `${page.remove}: ${headline}, ${when}`,
          onClick: () => void app.runs.remove(run.id),
        },
        page.remove,
      ),
    ]),
  ]);
}

function deletion({ app, state }: View): ComponentChild {
  const { page } = state.words;
  if (!state.asking)
    return h('div', { class: 'row' }, [
      h(
        'button',
        { type: 'button', class: 'danger', onClick: () => app.store.set({ asking: true }) },
        page.deleteAll,
      ),
    ]);
  return h('div', { class: 'trouble', role: 'alertdialog', 'aria-label': page.deleteAll }, [
    h('p', null, page.deleteSure),
    h('div', { class: 'row' }, [
      h(
        'button',
        { type: 'button', class: 'danger', onClick: () => void app.clear() },
        page.yesDelete,
      ),
      h('button', { type: 'button', onClick: () => app.store.set({ asking: false }) }, page.keep),
    ]),
  ]);
}

function megabytes(bytes: number): string {
  return bytes >= 1e9 ? `${(bytes / 1e9).toFixed(1)} GB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
