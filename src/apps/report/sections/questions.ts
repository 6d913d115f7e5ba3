import type { AnswerView, CheckView, LocalizedText, ResultView, Words } from '../../view/index.js';
import { localizedHtml } from '../localized.js';

const KINDS = { agrees: 'good', disagrees: 'bad', 'cannot-tell': 'doubt' } as const;

/** Whether the settings go with the answer. */
export function settingsCard({ settings }: ResultView, words: Words): string {
  const { report } = words;
  const body = settings ? answer(settings, words) : notStated(report.noSetup, words);
  return `<div><h2>${report.fits}</h2>${body}</div>`;
}

function bullets(list: readonly LocalizedText[], words: Words): string {
  return `<ul>${list.map((one) => `<li>${localizedHtml(one, words)}</li>`).join('')}</ul>`;
}

function answer({ answer: kind, words: said, text, compared }: CheckView, words: Words): string {
  const which = compared ? `<p>${words.result.compared(localizedHtml(compared, words))}</p>` : '';
  return `<p class="answer ${KINDS[kind]}">${said}</p><p>${localizedHtml(text, words)}</p>${which}`;
}

function notStated(why: string, { report }: Words): string {
  return `<p class="answer doubt">${report.notStated}</p><p>${why}</p>`;
}

/**
 * What else to change, then what to check next, likeliest first, each with what speaks for and against it; and
 * the cautions.
 * What stands in a card above already is not said again.
 */
export function actionSection(
  view: ResultView,
  words: Words,
  { todo, rest }: Pick<AnswerView, 'todo' | 'rest'>,
): string {
  const { report, result } = words;
  const above = ({ text }: LocalizedText): boolean => text === todo?.text.text;
  const checks = view.next
    .map(
      (one) =>
        `<li>${above(one.check) ? '' : `<strong>${localizedHtml(one.check, words)}</strong>`}<div class="because">${localizedHtml(one.because, words)}</div>${evidence(result.speaksForIt, one.speaksFor, words)}${evidence(result.speaksAgainstIt, one.speaksAgainst, words)}</li>`,
    )
    .join('\n');
  const lines = (list: readonly LocalizedText[]): string =>
    list.map((one) => `<p>${localizedHtml(one, words)}</p>`).join('');
  const change = rest.length === 0 ? '' : `<h2>${report.whatToChange}</h2>${lines(rest)}`;
  const next = checks === '' ? '' : `<h2>${report.checkNext}</h2><ol class="checks">${checks}</ol>`;
  const rules =
    view.qualification.length === 0
      ? ''
      : `<details><summary>${report.rules}</summary>${lines(view.qualification)}</details>`;
  const head = change + lines(view.remarks) + next + rules;
  const warn = cautionBox(view.cautions, words);
  return head + warn === '' ? '' : `<section id="next">${head}\n${warn}</section>`;
}

/** Each caution once. */
export function cautionBox(cautions: readonly LocalizedText[], words: Words): string {
  const each = [...new Map(cautions.map((one) => [one.text, one])).values()];
  if (each.length === 0) return '';
  return `<div class="cautions" role="note" aria-label="${words.report.cautions}">${bullets(each, words)}</div>`;
}

function evidence(title: string, points: readonly LocalizedText[], words: Words): string {
  if (points.length === 0) return '';
  // The points are sentences or parts of one; together they are one sentence.
  const said = points
    .map(({ text, lang }) => localizedHtml({ text: text.replace(/\.$/, ''), lang }, words))
    .join('; ');
  return `<div class="because">${title}: ${said}.</div>`;
}
