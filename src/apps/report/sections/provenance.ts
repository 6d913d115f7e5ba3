import type { ResultView, Words } from '../../view/index.js';
import { escapeHtml } from '../escape.js';
import { localizedHtml } from '../localized.js';
import type { RunView } from '../run-view.js';

/** How the answer was made: tool, model with what was measured of it, settings, steps, input. */
export function provenanceSection(
  { result, modelCard }: RunView,
  { steps }: ResultView,
  words: Words,
): string {
  const { tool, source, model, settings } = result;
  const { how } = words.report;
  const facts: [string, string][] = [
    [how.tool, how.document(`${tool.name} ${tool.version}`, tool.host, result.schemaVersion)],
    [how.input, source.path],
    [how.hash, source.sha256 ?? how.noHash],
    [
      how.channels,
      source.channels
        .map((one) => how.channel(words.name(one.quantity), one.name, one.unit))
        .join('; ') || '–',
    ],
    [how.model, model ? `${model.id} ${model.version}, ${model.fingerprint}` : how.noModel],
    [how.features, model?.featureSet ?? '–'],
    [how.settings, settings.fingerprint],
    ...Object.entries(settings.values).map(([key, value]): [string, string] => [
      key,
      String(value),
    ]),
  ];
  const done = steps.map(
    (one) => `<li>${escapeHtml(one.step)}: ${localizedHtml(one.detail, words)}</li>`,
  );
  return `<section id="how" class="long"><h2>${how.heading}</h2><dl>${definitions(facts)}</dl>
${done.length > 0 ? `<h3>${how.steps}</h3><ol>${done.join('')}</ol>` : ''}
${card(modelCard, words)}</section>`;
}

/** Plain facts of the model card; long lists stay in the model document. */
function card(modelCard: Record<string, unknown>, { lang, report }: Words): string {
  const facts = flatten(modelCard, '').slice(0, 40);
  if (facts.length === 0) return '';
  return `<details><summary>${report.how.card}</summary><dl${lang === 'en' ? '' : ' lang="en"'}>${definitions(facts)}</dl></details>`;
}

function flatten(value: unknown, name: string): [string, string][] {
  if (Array.isArray(value)) {
    const short = value.length <= 12 && value.every((one) => typeof one !== 'object');
    return short ? [[name, value.map(say).join(', ')]] : [];
  }
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, one]) =>
      flatten(one, name === '' ? key : `${name}, ${key}`),
    );
  return value === null || value === undefined ? [] : [[name, say(value)]];
}

function say(value: unknown): string {
  return typeof value === 'number' ? String(Number(value.toPrecision(4))) : String(value);
}

function definitions(facts: readonly (readonly [string, string])[]): string {
  return facts
    .map(([name, value]) => `<dt>${escapeHtml(name)}</dt><dd>${escapeHtml(value)}</dd>`)
    .join('');
}
