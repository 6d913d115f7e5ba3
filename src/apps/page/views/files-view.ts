import { type ComponentChild, h } from 'preact';
import { viewVerdict } from '../../view/index.js';
import type { FileJob } from '../shell/state.js';
import { setupChips, wrongFields } from './setup-chips.js';
import { setupForm } from './setup-form.js';
import { sheetView } from './sheet-view.js';
import type { View } from './view.js';

/** Files: drop or pick, worked off one by one with progress, each opened when done. */
export function filesView(view: View): ComponentChild {
  const { app, state } = view;
  const { page } = state.words;
  const take = (list: FileList | null | undefined): void => app.files.add([...(list ?? [])]);
  return h('section', { class: 'files' }, [
    h('h1', null, page.filesTitle),
    h('p', null, page.filesHelp),
    h(
      'div',
      {
        class: 'drop',
        onDragOver: (event: DragEvent) => event.preventDefault(),
        onDrop: (event: DragEvent) => {
          event.preventDefault();
          take(event.dataTransfer?.files);
        },
      },
      [
        h('p', null, page.dropHere),
        h('label', { class: 'pick' }, [
          h('span', null, page.choose),
          h('input', {
            type: 'file',
            multiple: true,
            onChange: (event: Event) => {
              const input = event.target as HTMLInputElement;
              take(input.files);
              input.value = '';
            },
          }),
        ]),
      ],
    ),
    h(
      'ul',
      { class: 'jobs' },
      state.jobs.map((job) => jobRow(view, job)),
    ),
    setupChips(view),
    wrongFields(view),
    setupForm(view),
    sheetView(view),
    readersView(view),
  ]);
}

function jobRow({ app, state }: View, job: FileJob): ComponentChild {
  const { page, view: shared } = state.words;
  const running = job.status === 'waiting' || job.status === 'working';
  const words = {
    waiting: page.waiting,
    working: page.working(`${Math.round(100 * job.share)} %`),
    cancelled: page.cancelled,
    done: job.run ? viewVerdict(job.run.result, shared).headline : page.done,
  }[job.status];
  return h('li', { key: job.id, class: 'job' }, [
    h('span', { class: 'file' }, job.file.name),
    job.status === 'working'
      ? h('progress', { max: 1, value: job.share, 'aria-label': job.file.name })
      : null,
    job.run
      ? h('button', { type: 'button', class: 'link', onClick: () => void openJob(app, job) }, words)
      : h('span', { class: 'small' }, words),
    running
      ? h(
          'button',
          {
            type: 'button',
            'aria-label': `${page.cancel}: ${job.file.name}`,
            onClick: () => app.files.cancel(job.id),
          },
          page.cancel,
        )
      : null,
  ]);
}

/** Opens what was judged; its pictures are drawn from the file itself, kept or not. */
async function openJob(app: View['app'], job: FileJob): Promise<void> {
  if (!job.run) return;
  await app.runs.open(job.run, job.file);
  await app.runs.draw();
}

function readersView({ app, state }: View): ComponentChild {
  const { page } = state.words;
  return h('div', { class: 'block' }, [
    h('h2', null, page.readersTitle),
    h('p', { class: 'small' }, page.readersHelp),
    state.readers === 'ready'
      ? h('p', null, page.readersReady)
      : h('div', { class: 'row' }, [
          h(
            'button',
            {
              type: 'button',
              'aria-disabled': state.readers === 'fetching' ? 'true' : undefined,
              onClick: () => void app.fetchReaders(),
            },
            page.fetchReaders,
          ),
        ]),
    state.readers === 'failed' ? h('p', { role: 'alert' }, page.readersFailed) : null,
  ]);
}
