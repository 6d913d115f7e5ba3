import { type ComponentChild, h } from 'preact';
import { defaultSettings } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import { verdictLetter } from '../../report/index.js';
import { cautionsOf } from '../../view/index.js';
import type { Shown } from '../shell/state.js';
import { chooseWords } from '../words/index.js';
import { againstView, nextView } from './cross-check-view.js';
import { said } from './localized.js';
import { Pictures } from './pictures.js';
import { runStrip } from './run-strip.js';
import type { View } from './view.js';

const EVEN_ODDS = defaultSettings().arcPrior;

/** The answer first, then why, then against the set-up, then what to do, then the pictures. */
export function verdictView(view: View): ComponentChild {
  const { state } = view;
  const { page } = state.words;
  const { shown } = state;
  if (!shown) return h('section', null, [h('h1', null, page.noVerdict), tryAgain(view)]);
  const { result } = shown.run;
  return h('section', { class: 'verdict-page' }, [
    answer(view, result),
    askWeld(view, shown),
    tryAgain(view),
    runStrip(view),
    state.keptOn.length > 0 && shown.run.origin === 'microphone'
      ? h('p', { class: 'trouble' }, page.keptOn(state.keptOn))
      : null,
    shown.interruption ? h('p', { class: 'trouble' }, page.interruption[shown.interruption]) : null,
    keptWords(view, shown),
    againstView(view, result),
    nextView(view, result),
    reasons(view, result),
    doubts(view, result),
    cautions(view, result),
    pictures(view, shown),
    saving(view, shown),
  ]);
}

function answer(view: View, result: Result): ComponentChild {
  const { words } = view.state;
  const single = result.mode !== null && result.mode !== 'mixed' ? result.mode : 'none';
  // The message of an error says what was expected and what to do, too.
  const reason = result.error?.message ?? result.statusReason;
  const lines = [words.result.where(result), words.result.rates(result)];
  if (result.status === 'unsure') lines.push(words.result.leaning(result));
  return h('div', { class: `answer-card mode-${single}` }, [
    h('div', { class: 'letter', 'aria-hidden': 'true' }, verdictLetter(result)),
    h('div', null, [
      h('h1', { id: 'verdict-words' }, words.result.verdict(result)),
      result.confidence === null
        ? null
        : h('p', { class: 'sure' }, words.result.confidence(result.confidence)),
      h('p', null, said(view, words.result.said(reason))),
      ...lines.filter((line) => line !== '').map((line) => h('p', null, line)),
      h('p', { class: 'small file' }, result.source.path),
    ]),
  ]);
}

/** Whoever recorded knows whether somebody welded; asked only where the sound alone does not say. */
function askWeld({ app, state }: View, { run, file }: Shown): ComponentChild {
  const { source, status, settings } = run.result;
  const open = status === 'unsure' || status === 'no-arc';
  const even = settings.values['arcPrior'] === EVEN_ODDS;
  if (source.kind !== 'sound' || !open || !even || !file) return null;
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

function reasons(view: View, result: Result): ComponentChild {
  const { words } = view.state;
  if (result.reasons.length === 0) return null;
  const ranked = result.reasons.toSorted((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
  return h('div', { class: 'block' }, [
    h('h2', null, words.page.why),
    h(
      'ul',
      null,
      ranked
        .slice(0, 5)
        .map((one) =>
          h('li', null, [
            one.speaksFor ? h('strong', null, `${words.result.mode(one.speaksFor)}: `) : null,
            said(view, words.result.reason(one)),
          ]),
        ),
    ),
  ]);
}

function doubts(view: View, result: Result): ComponentChild {
  const { page, result: words } = view.state.words;
  if (result.status === 'failed') return null;
  const { notes } = result.source;
  return h('div', { class: 'block' }, [
    h('h2', null, page.doubts),
    result.quality.length === 0
      ? h('p', null, page.noDoubts)
      : h(
          'ul',
          null,
          result.quality.map((one) =>
            h('li', null, [said(view, words.said(one.message)), ` (${words.percent(one.share)})`]),
          ),
        ),
    notes.length === 0
      ? null
      : h('details', null, [
          h('summary', null, page.assumed(notes.length)),
          h(
            'ul',
            null,
            notes.map((one) => h('li', null, said(view, words.said(one.message)))),
          ),
        ]),
  ]);
}

function cautions(view: View, result: Result): ComponentChild {
  const { page, result: words } = view.state.words;
  const list = cautionsOf(result);
  if (list.length === 0) return null;
  return h('div', { class: 'block cautions', role: 'note', 'aria-label': page.cautions }, [
    h('h2', null, page.cautions),
    h(
      'ul',
      null,
      list.map((one) => h('li', null, said(view, words.said(one)))),
    ),
  ]);
}

function pictures({ app, state }: View, shown: Shown): ComponentChild {
  const { page } = state.words;
  if (shown.evidence && shown.pictures) {
    const { lang, markup } = shown.pictures;
    const { evidence, run } = shown;
    const words = chooseWords(lang, []).pictures;
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
