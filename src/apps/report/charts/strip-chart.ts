import type { StripKind, StripPart, StripView, Words } from '../../view/index.js';
import { escapeHtml } from '../escape.js';
import { el, hint } from './svg.js';

const HEIGHT = 56;
/** Width in which a name must have room: that of the strip on the smallest phone, and of a wide page. */
const PHONE = 250;
const WIDE = 640;
/** About the width of a letter of a name. */
const LETTER = 8.2;
const PATTERNED: readonly StripKind[] = ['globular', 'spray', 'pulsed-spray', 'not-clear'];

/**
 * The run from start to end as one band in the colours and patterns of its modes. It stretches with the page
 * while its letters keep their size; what has no room for its name is named below.
 */
export function stripChart(strip: StripView, words: Words): string {
  const { parts, durationS, said, end } = strip;
  const share = (seconds: number): number => seconds / durationS;
  const drawn = parts.map((part) => {
    const at = share(part.startS);
    const width = share(part.endS - part.startS);
    const place = { x: percent(at), width: percent(width), y: 0, height: HEIGHT };
    const name = hint(
      `${part.name}, ${words.numbers.range(time(part.startS, words), time(part.endS, words))}`,
    );
    return (
      el('rect', { class: `strip-part strip-${part.kind}`, ...place }, name) +
      (PATTERNED.includes(part.kind)
        ? el('rect', { fill: `url(#strip-${part.kind})`, ...place, 'pointer-events': 'none' })
        : '') +
      label(part, at, width)
    );
  });
  const description = [said, ...parts.slice(0, 20).map(({ name }) => name)].filter(Boolean);
  return `<svg class="strip" width="100%" height="${HEIGHT}" role="img" aria-label="${escapeHtml(`${words.answer.strip.title}: ${description.join(', ')}`)}">${drawn.join('')}</svg>
<div class="strip-ends"><span>0 s</span><span class="strip-said">${escapeHtml(said)}</span><span>${escapeHtml(end)}</span></div>
${unnamed(parts, durationS)}`;
}

function label(part: StripPart, at: number, width: number): string {
  const room = LETTER * part.name.length + 16;
  if (width * WIDE < room) return '';
  const wide = width * PHONE < room ? ' wide-only' : '';
  const place = { x: percent(at), y: HEIGHT - 14, dx: 8 };
  const cls = `strip-name strip-${part.kind}${wide}`;
  return el('text', { class: cls, ...place }, escapeHtml(part.name));
}

/** The kinds of which no part has its name within it on a phone. */
function unnamed(parts: readonly StripPart[], durationS: number): string {
  const kinds = new Map<string, { kind: StripKind; wide: boolean; phone: boolean }>();
  for (const { kind, name, startS, endS } of parts) {
    const width = (endS - startS) / durationS;
    const room = LETTER * name.length + 16;
    const before = kinds.get(name);
    kinds.set(name, {
      kind,
      wide: before?.wide === true || width * WIDE >= room,
      phone: before?.phone === true || width * PHONE >= room,
    });
  }
  const items = [...kinds]
    .filter(([, { phone }]) => !phone)
    .map(
      ([name, { kind, wide }]) =>
        `<li${wide ? ' class="phone-only"' : ''}><svg class="swatch" width="18" height="14" aria-hidden="true"><rect class="strip-part strip-${kind}" width="18" height="14"/>${PATTERNED.includes(kind) ? `<rect fill="url(#strip-${kind})" width="18" height="14"/>` : ''}</svg>${escapeHtml(name)}</li>`,
    );
  return items.length === 0 ? '' : `<ul class="strip-key">${items.join('')}</ul>`;
}

/** Patterns over the hues, so that the modes are told apart without colour. Once a page. */
export function stripPatterns(): string {
  const shapes: Record<string, [size: number, content: string]> = {
    globular: [22, el('circle', { class: 'strip-ink', cx: 11, cy: 11, r: 4 })],
    spray: [5, el('rect', { class: 'strip-ink', x: 1, y: 1, width: 1.5, height: 1.5 })],
    'pulsed-spray': [12, el('rect', { class: 'strip-ink', width: 4, height: 12 })],
    'not-clear': [9, el('path', { class: 'strip-line', d: 'M-1 -1L10 10' })],
  };
  const patterns = Object.entries(shapes).map(([kind, [size, content]]) =>
    el(
      'pattern',
      { id: `strip-${kind}`, width: size, height: size, patternUnits: 'userSpaceOnUse' },
      content,
    ),
  );
  return el('defs', {}, patterns.join(''));
}

const percent = (share: number): string => `${Math.round(10_000 * share) / 100}%`;
const time = (seconds: number, { numbers }: Words): string => numbers.time(seconds);
