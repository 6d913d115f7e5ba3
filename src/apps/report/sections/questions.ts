import type { CheckView, LocalizedText, ResultView, Words } from '../../view/index.js';
import { localizedHtml } from '../localized.js';

const KINDS = { agrees: 'good', disagrees: 'bad', 'cannot-tell': 'doubt' } as const;

/** The three questions that come before acting: is the evidence good, does the set-up fit, was it wanted. */
export function questionCards(view: ResultView, words: Words): string {
  if (view.verdict.status === 'failed') return '';
  const { report } = words;
  const cards = [
    card(report.reliable, quality(view, words)),
    card(
      report.fits,
      view.settings ? answer(view.settings, words) : notStated(report.noSetup, words),
    ),
    card(
      report.wanted,
      view.wanted ? answer(view.wanted, words) : notStated(report.noWanted, words),
    ),
  ];
  return `<section class="questions" aria-label="${report.questions}">${cards.join('\n')}</section>`;
}

function card(title: string, body: string): string {
  return `<div><h2>${title}</h2>${body}</div>`;
}

function quality({ doubts, notes: list }: ResultView, words: Words): string {
  const { report } = words;
  const notes =
    list.length === 0
      ? ''
      : `<details><summary>${report.assumed(list.length)}</summary>${bullets(list, words)}</details>`;
  if (doubts.length === 0) {
    const [good, none] = report.nothingAgainst;
    return `<p class="answer good">${good}</p><p>${none}</p>${notes}`;
  }
  const items = doubts.map(
    ({ text, share }) => `<li>${localizedHtml(text, words)} (${share})</li>`,
  );
  return `<p class="answer doubt">${report.doubts(doubts.length)}</p><ul>${items.join('')}</ul>${notes}`;
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
 * What to change, then what to check next, likeliest first, each with what speaks for and against it; and the
 * cautions, those of the advice before those that stand with every result.
 */
export function actionSection(view: ResultView, words: Words): string {
  const { report, result } = words;
  const checks = view.next
    .map(
      (one) =>
        `<li><strong>${localizedHtml(one.check, words)}</strong><div class="because">${localizedHtml(one.because, words)}</div>${evidence(result.speaksForIt, one.speaksFor, words)}${evidence(result.speaksAgainstIt, one.speaksAgainst, words)}</li>`,
    )
    .join('\n');
  const lines = (list: readonly LocalizedText[]): string =>
    list.map((one) => `<p>${localizedHtml(one, words)}</p>`).join('');
  const change =
    view.change.length === 0 ? '' : `<h2>${report.whatToChange}</h2>${lines(view.change)}`;
  const next = checks === '' ? '' : `<h2>${report.checkNext}</h2><ol class="checks">${checks}</ol>`;
  const head = change + lines(view.remarks) + next;
  const warn = cautionBox([...view.cautions, ...view.ownCautions], words);
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
