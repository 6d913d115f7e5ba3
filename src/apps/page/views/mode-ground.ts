import { type ComponentChild, h } from 'preact';
import { MODES } from '../../../core/index.js';
import type { GlanceKind } from '../../view/index.js';

/** The patterns of the answer's field, once a page: each mode is told by its pattern without its colour. */
export function groundPatterns(): ComponentChild {
  return h('svg', { class: 'hidden-defs', 'aria-hidden': 'true', focusable: 'false' }, [
    h(
      'defs',
      null,
      [...MODES, 'mixed', 'open', 'no-arc', 'failed'].map((kind) => pattern(kind as GlanceKind)),
    ),
  ]);
}

/** The whole field filled with the pattern of a kind. */
export function modeGround(kind: GlanceKind): ComponentChild {
  return h('svg', { class: 'ground', 'aria-hidden': 'true', focusable: 'false' }, [
    h('rect', { width: '100%', height: '100%', fill: `url(#ground-${kind})` }),
  ]);
}

const dot = (x: number, y: number, r: number): ComponentChild =>
  h('circle', { class: 'grain', cx: x, cy: y, r });
const bar = (d: string): ComponentChild => h('path', { class: 'grain', d });

/** Plain, coarse dots, fine grain, upright bars; the two halves for mixed; slanted and level lines where no mode is named. */
const PATTERNS: Readonly<Record<GlanceKind, [size: number, content: ComponentChild[]]>> = {
  'short-circuit': [10, []],
  globular: [44, [dot(22, 22, 11)]],
  spray: [9, [dot(2.5, 2.5, 1.6), dot(7, 7, 1.6)]],
  'pulsed-spray': [26, [bar('M0 0H13V26H0Z')]],
  mixed: [44, [dot(11, 11, 8), bar('M26 0H34V44H26Z')]],
  open: [30, [bar('M0 30L30 0H18L0 18ZM30 30V18L18 30Z')]],
  'no-arc': [22, [bar('M0 0H22V4H0Z')]],
  failed: [30, [bar('M0 0L30 30H18L0 12ZM30 0V12L18 0Z')]],
};

function pattern(kind: GlanceKind): ComponentChild {
  const [size, content] = PATTERNS[kind];
  return h(
    'pattern',
    { id: `ground-${kind}`, width: size, height: size, patternUnits: 'userSpaceOnUse' },
    content,
  );
}
