import { escapeHtml } from '../escape.js';

type Attributes = Record<string, string | number | undefined>;

/** One SVG element as text. Attribute values are escaped; numbers are kept to a tenth of a unit. */
export function el(name: string, attributes: Attributes, content = ''): string {
  const parts = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) =>
        ` ${key}="${typeof value === 'number' ? short(value) : escapeHtml(value!)}"`,
    )
    .join('');
  return content === '' ? `<${name}${parts}/>` : `<${name}${parts}>${content}</${name}>`;
}

/** Text at a place. */
export function text(x: number, y: number, words: string, attributes: Attributes = {}): string {
  return el('text', { x, y, ...attributes }, escapeHtml(words));
}

/** Words that pointing at the element brings up. */
export function hint(words: string): string {
  return `<title>${escapeHtml(words)}</title>`;
}

/** A number for coordinates. */
export function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** A whole picture. `title` and `description` are read out by screen readers. */
export function picture(
  size: { width: number; height: number },
  words: { id: string; title: string; description: string },
  content: string,
): string {
  const { width, height } = size;
  const { id, title, description } = words;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="chart" viewBox="0 0 ${short(width)} ${short(height)}" role="img" aria-labelledby="${id}-t ${id}-d"><title id="${id}-t">${escapeHtml(title)}</title><desc id="${id}-d">${escapeHtml(description)}</desc>${content}</svg>`;
}
