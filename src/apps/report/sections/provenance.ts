import { escapeHtml } from '../escape.js';
import type { RunView } from '../run-view.js';

/** How the answer was made: tool, model with what was measured of it, settings, steps, input. */
export function provenanceSection({ result, modelCard }: RunView): string {
  const { tool, source, model, settings, steps } = result;
  const facts: [string, string][] = [
    ['Tool', `${tool.name} ${tool.version} (${tool.host}), document ${result.schemaVersion}`],
    ['Input', source.path],
    ['SHA-256 of the input', source.sha256 ?? 'not taken'],
    [
      'Channels',
      source.channels.map((one) => `${one.quantity} “${one.name}”, ${one.unit}`).join('; ') || '–',
    ],
    ['Model', model ? `${model.id} ${model.version}, ${model.fingerprint}` : 'none used'],
    ['Features', model?.featureSet ?? '–'],
    ['Settings', settings.fingerprint],
    ...Object.entries(settings.values).map(([key, value]): [string, string] => [
      key,
      String(value),
    ]),
  ];
  const done = steps.map((one) => `<li>${escapeHtml(one.step)}: ${escapeHtml(one.detail)}</li>`);
  return `<section id="how" class="long"><h2>How was it made?</h2><dl>${definitions(facts)}</dl>
${done.length > 0 ? `<h3>Steps taken</h3><ol>${done.join('')}</ol>` : ''}
${card(modelCard)}</section>`;
}

/** Plain facts of the model card; long lists stay in the model document. */
function card(modelCard: Record<string, unknown>): string {
  const facts = flatten(modelCard, '').slice(0, 40);
  if (facts.length === 0) return '';
  return `<details><summary>From the model card: how it was fitted and what was measured</summary><dl>${definitions(facts)}</dl></details>`;
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
