import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { toBase64 } from './base64.js';
import { patternDefinitions } from './charts/mode-marks.js';
import { stripPatterns } from './charts/strip-chart.js';
import { escapeHtml } from './escape.js';
import { PAGE_STYLE } from './page-style.js';

/**
 * A whole page that asks nothing of any network: its policy lets in only this style, this script (by
 * hash), pictures within the page and sound made by the script. Anything that gets into the page as text
 * cannot run. `title` is escaped here; `body` must already be.
 */
export function htmlDocument(
  title: string,
  body: string,
  script = '',
  lang = 'en',
  style = PAGE_STYLE,
): string {
  const scripts = script === '' ? "'none'" : hashOf(script);
  const policy = [
    "default-src 'none'",
    `script-src ${scripts}`,
    `style-src ${hashOf(style)}`,
    'img-src data:',
    'media-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="${escapeHtml(lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(title)}</title>
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
<svg class="hidden-defs" aria-hidden="true" focusable="false">${patternDefinitions()}${stripPatterns()}</svg>
${body}
${script === '' ? '' : `<script>${script}</script>`}
</body>
</html>
`;
}

function hashOf(text: string): string {
  return `'sha256-${toBase64(sha256(utf8ToBytes(text)))}'`;
}
