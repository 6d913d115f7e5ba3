import { MODES, type Mode } from '../../../core/index.js';
import { el } from './svg.js';

/** Class that carries the hue of a mode; the pattern of {@link modeFill} carries it without hue. */
export function modeClass(mode: Mode | null): string {
  return mode === null ? 'mode-none' : `mode-${mode}`;
}

/** Fill by pattern: solid, dots, fine slanted lines, upright bars; wide slanted lines for "not clear". */
export function modeFill(mode: Mode | null): string {
  return mode === null ? 'url(#pattern-none)' : `url(#pattern-${mode})`;
}

/** The patterns, once a page or once a single figure. */
export function patternDefinitions(): string {
  return el('defs', {}, [...MODES.map(pattern), pattern(null)].join(''));
}

function pattern(mode: Mode | null): string {
  const shapes: Record<string, [size: number, content: string]> = {
    'short-circuit': [6, el('rect', { class: 'ink', width: 6, height: 6 })],
    globular: [8, el('circle', { class: 'ink', cx: 4, cy: 4, r: 2.6 })],
    spray: [5, el('path', { class: 'ink-line', d: 'M-1 6L6 -1M-1 1L1 -1M4 6L6 4' })],
    'pulsed-spray': [5, el('rect', { class: 'ink', width: 2.6, height: 5 })],
    none: [9, el('path', { class: 'ink-line', d: 'M-1 -1L10 10' })],
  };
  const [size, content] = shapes[mode ?? 'none']!;
  const ground = el('rect', { class: 'ground', width: size, height: size });
  return el(
    'pattern',
    {
      id: `pattern-${mode ?? 'none'}`,
      class: modeClass(mode),
      width: size,
      height: size,
      patternUnits: 'userSpaceOnUse',
    },
    ground + content,
  );
}
