import { type ComponentChild, h } from 'preact';
import { defaultSettings } from '../../../analysis/index.js';
import { type ResultView, viewResult, wordsFor } from '../../view/index.js';
import type { Shown } from '../shell/state.js';
import { chooseWords } from '../words/index.js';
import { againstView, nextView } from './cross-check-view.js';
import { said, saidList } from './localized.js';
import { Pictures } from './pictures.js';
import { runStrip } from './run-strip.js';
import type { View } from './view.js';

const DEFAULT_PRIOR = defaultSettings().arcPrior;

/** The answer first, then why, then against the set-up, then what to do, then the pictures. */
export function verdictView(view: View): ComponentChild {
  const { state } = view;
  const { page } = state.words;
  const { shown } = state;
  if (!shown) return h('section', null, [h('h1', null, page.noVerdict), tryAgain(view)]);
  const { result } = shown.run;
  const said = viewResult(result, wordsFor(state.words.view, { units: state.units }));
  return h('section', { class: 'verdict-page' }, [
    answer(view, said),
    askWeld(view, shown),
    tryAgain(view),
    runStrip(view),
    state.keptOn.length > 0 && shown.run.origin === 'microphone'
      ? h('p', { class: 'trouble' }, page.keptOn(state.keptOn))
      : null,
    shown.interruption ? h('p', { class: 'trouble' }, page.interruption[shown.interruption]) : null,
    keptWords(view, shown),
    againstView(view, said),
    nextView(view, said),
    reasons(view, said),
    doubts(view, said),
    cautions(view, said),
    pictures(view, shown),
    saving(view, shown),
  ]);
}

function answer(view: View, { verdict, file }: ResultView): ComponentChild {
  const lines = [verdict.where, verdict.rates, verdict.leaning ?? ''].filter((line) => line !== '');
  return h('div', { class: `answer-card mode-${verdict.mode ?? 'none'}` }, [
    h('div', { class: 'letter', 'aria-hidden': 'true' }, verdict.letter),
    h('div', null, [
      h('h1', { id: 'verdict-words' }, verdict.headline),
      verdict.sure === null ? null : h('p', { class: 'sure' }, verdict.sure),
      h('p', null, said(view, verdict.why)),
      ...lines.map((line) => h('p', null, line)),
      verdict.settle === null ? null : h('p', null, said(view, verdict.settle)),
      h('p', { class: 'small file' }, file),
    ]),
  ]);
}

/** Whoever recorded knows whether somebody welded; asked only where the sound alone does not say. */
function askWeld({ app, state }: View, { run, file }: Shown): ComponentChild {
  const { source, status, settings } = run.result;
  const open = status === 'unsure' || status === 'no-arc';
  const untold = settings.values['arcPrior'] === DEFAULT_PRIOR;
  if (source.kind !== 'sound' || !open || !untold || !file) return null;
  const { page } = state.words;
  return h('div', { class: 'block' }, [
    h('p', null, page.wasWeldHelp),
    judgeButton(state, page.wasWeld, () => app.runs.judgeAsWeld()),
  ]);
}

/** Says so while the kept file is being judged. */
function judgeButton(
  { drawing, words }: View['state'],
  label: string,
  act: () => Promise<void>,
): ComponentChild {
  const busy = drawing ? 'true' : undefined;
  return h(
    'button',
    { type: 'button', 'aria-disabled': busy, onClick: () => void act() },
    drawing ? words.page.judging : label,
  );
}

function tryAgain({ app, state }: View): ComponentChild {
  return h(
    'button',
    { type: 'button', class: 'again', onClick: () => app.go('record') },
    state.words.page.tryAgain,
  );
}

function keptWords({ state }: View, { kept }: Shown): ComponentChild {
  const { page } = state.words;
  if (kept === 'yes') return h('p', { class: 'small' }, page.kept);
  if (kept === 'only-result') return h('p', { class: 'small' }, page.tooLargeToKeep);
  const words = state.store === 'none' ? page.noStore : page.notSaved;
  return h('p', { class: 'trouble', role: 'alert' }, words);
}

function reasons(view: View, { reasons: ranked }: ResultView): ComponentChild {
  if (ranked.length === 0) return null;
  return h('div', { class: 'block' }, [
    h('h2', null, view.state.words.page.why),
    h(
      'ul',
      null,
      ranked
        .slice(0, 5)
        .map(({ mode, side, text }) =>
          h('li', null, [mode === null ? null : h('strong', null, `${side}: `), said(view, text)]),
        ),
    ),
  ]);
}

function doubts(view: View, { doubts: list, notes, verdict }: ResultView): ComponentChild {
  const { page } = view.state.words;
  if (verdict.status === 'failed') return null;
  return h('div', { class: 'block' }, [
    h('h2', null, page.doubts),
    list.length === 0
      ? h('p', null, page.noDoubts)
      : h(
          'ul',
          null,
          list.map(({ text, share }) => h('li', null, [said(view, text), ` (${share})`])),
        ),
    notes.length === 0
      ? null
      : h('details', null, [h('summary', null, page.assumed(notes.length)), saidList(view, notes)]),
  ]);
}

function cautions(view: View, { cautions: list }: ResultView): ComponentChild {
  const { page } = view.state.words;
  if (list.length === 0) return null;
  return h('div', { class: 'block cautions', role: 'note', 'aria-label': page.cautions }, [
    h('h2', null, page.cautions),
    saidList(view, list),
  ]);
}

function pictures({ app, state }: View, shown: Shown): ComponentChild {
  const { page } = state.words;
  if (shown.evidence && shown.pictures) {
    const { lang, markup } = shown.pictures;
    const { evidence, run } = shown;
    const words = chooseWords(lang, []).view;
    return h('div', { class: 'evidence', lang, key: `${run.id} ${lang}` }, [
      h('h2', { lang: state.words.lang }, page.pictures),
      h(Pictures, { evidence, result: run.result, markup, words }),
    ]);
  }
  if (!shown.file) return null;
  return h('div', { class: 'block' }, [
    h('h2', null, page.pictures),
    h('p', null, page.picturesLater),
    judgeButton(state, page.drawPictures, () => app.runs.draw()),
  ]);
}

function saving({ app, state }: View, { file }: Shown): ComponentChild {
  const { share } = state.words.page;
  return h('div', { class: 'row' }, [
    file ? h('button', { type: 'button', onClick: () => app.runs.saveSound() }, share.wav) : null,
    h('button', { type: 'button', onClick: () => app.runs.saveResult() }, share.result),
  ]);
}
