import type { AnswerView, LocalizedText, ResultView, Words } from '../../view/index.js';
import { localizedHtml } from '../localized.js';
import type { RunView } from '../run-view.js';
import { settingsCard } from './questions.js';

/** What to change, what was heard or seen, how far to trust it, and the settings against the answer. */
export function answerCards(
  { result }: RunView,
  view: ResultView,
  answer: AnswerView,
  words: Words,
): string {
  if (view.verdict.status === 'failed') return '';
  const { report, answer: said } = words;
  const cards = [
    answer.todo
      ? card(answer.todo.kind === 'change' ? report.whatToChange : said.checkFirst, [
          `<p class="todo">${localizedHtml(answer.todo.text, words)}</p>`,
          `<p>${answer.todo.procedure}</p>`,
        ])
      : '',
    card(result.source.kind === 'sound' ? said.heard : said.seen, reasons(answer, words)),
    card(said.trust.heading, [
      ...answer.trust.map((line) => `<p>${localizedHtml(line, words)}</p>`),
      notes(view, words),
    ]),
    settingsCard(view, words),
  ].filter((one) => one !== '');
  return `<section class="answers" aria-label="${report.questions}">${cards.join('\n')}</section>`;
}

export function card(title: string, parts: readonly string[]): string {
  const body = parts.filter((one) => one !== '').join('');
  return body === '' ? '' : `<div><h2>${title}</h2>${body}</div>`;
}

function reasons({ reasons: { fits, against } }: AnswerView, words: Words): string[] {
  return [
    fits ? `<h3 class="good">✓ ${fits.title}</h3>${bullets(fits.list, words)}` : '',
    against
      ? `<h3 class="bad">✗ ${against.title}</h3>${bullets(against.list, words)}${against.weighed === '' ? '' : `<p>${against.weighed}</p>`}`
      : '',
  ];
}

function notes({ notes: list }: ResultView, words: Words): string {
  if (list.length === 0) return '';
  return `<details><summary>${words.report.assumed(list.length)}</summary>${bullets(list, words)}</details>`;
}

function bullets(list: readonly LocalizedText[], words: Words): string {
  return `<ul>${list.map((one) => `<li>${localizedHtml(one, words)}</li>`).join('')}</ul>`;
}
