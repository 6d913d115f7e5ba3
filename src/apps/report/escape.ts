import { plain } from '../view/index.js';

const ENTITIES: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text from anywhere made safe between tags and in quoted attributes; control and direction marks are shown. */
export function escapeHtml(text: string): string {
  return plain(text).replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}

/** JSON that may stand inside a script element: nothing in it can end the element. */
export function scriptJson(value: unknown): string {
  return JSON.stringify(value).replace(/[<>&\u2028\u2029]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}
