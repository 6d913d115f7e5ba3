import type { Evaluation } from '../../../lab/evaluate/index.js';
import { type Table, tablesOf } from '../../../lab/evaluate/index.js';
import { escapeHtml, htmlDocument } from '../../report/index.js';
import { summaryLines } from './text.js';

/** The evaluation as one page that asks nothing of any network; every text in it is escaped. */
export function evaluationPage(evaluation: Evaluation, name: string): string {
  const title = `Labels of people against answers: ${name}`;
  const lines = summaryLines(evaluation).map((line) => `<li>${escapeHtml(line)}</li>`);
  const models = evaluation.models.map(({ id, version, fingerprint }) =>
    escapeHtml(`${id} ${version} (${fingerprint})`),
  );
  const body = `<a class="skip" href="#main">Skip to the figures</a>
<header class="top"><h1>${escapeHtml(title)}</h1></header>
<main id="main">
<section id="summary"><h2>In short</h2><ul>${lines.join('')}</ul></section>
${tablesOf(evaluation).map(section).join('\n')}
</main>
<footer class="foot"><p>${escapeHtml(`${evaluation.tool.name} ${evaluation.tool.version}`)}${models.length > 0 ? `; models: ${models.join(', ')}` : ''}. The answers are estimates from recordings, not an inspection.</p></footer>`;
  return htmlDocument(title, body);
}

function section({ title, head, rows, note }: Table): string {
  const cell = (value: Table['head'][number]) => escapeHtml(value === null ? '–' : String(value));
  const top = head.map((one, k) => `<th scope="col"${k > 0 ? ' class="n"' : ''}>${cell(one)}</th>`);
  const lines = rows.map(([first, ...rest]) => {
    const cells = rest.map((one) => `<td class="n">${cell(one)}</td>`).join('');
    return `<tr><th scope="row">${cell(first ?? null)}</th>${cells}</tr>`;
  });
  return `<section><h2>${escapeHtml(title)}</h2><div class="card scroll" tabindex="0" role="group" aria-label="${escapeHtml(title)}"><table><thead><tr>${top.join('')}</tr></thead><tbody>${lines.join('')}</tbody></table></div>${note ? `<p>${escapeHtml(note)}</p>` : ''}</section>`;
}
