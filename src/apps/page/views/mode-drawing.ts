import { type ComponentChild, h } from 'preact';
import type { GlanceKind } from '../../view/index.js';

/** Wire end, drop and pool as each mode has them: one line drawing each, in the colour of the letters. */
export function modeDrawing(kind: GlanceKind): ComponentChild {
  return h(
    'svg',
    { class: `mode-drawing drawing-${kind}`, viewBox: '0 0 240 150', 'aria-hidden': 'true' },
    DRAWINGS[kind],
  );
}

const line = (d: string, more = ''): ComponentChild => h('path', { class: `line ${more}`, d });
const solid = (d: string, more = ''): ComponentChild => h('path', { class: `solid ${more}`, d });
const dot = (x: number, y: number, r: number, more = ''): ComponentChild =>
  h('circle', { class: `solid ${more}`, cx: x, cy: y, r });
const sign = (text: string, y: number): ComponentChild =>
  h('text', { class: 'drawing-sign', x: 120, y, 'text-anchor': 'middle' }, text);

/** A wire of width 20 about `x` that ends at `toY` and comes from above the drawing. */
const wire = (x: number, toY: number): ComponentChild =>
  line(`M${x - 10} -300V${toY}M${x + 10} -300V${toY}`);
const PLATE = line('M6 128C40 126 70 130 88 134M152 134C170 130 200 126 234 128');
const pool = (depth: number): ComponentChild =>
  line(`M88 134Q120 ${134 - depth} 152 134Q120 ${134 + depth} 88 134Z`, 'pool');

const DRAWINGS: Readonly<Record<GlanceKind, readonly ComponentChild[]>> = {
  // The wire end has touched: metal bridges the gap and necks; bits fly off.
  'short-circuit': [
    wire(120, 70),
    solid(
      'M110 68C110 84 115 90 115 98C115 110 104 116 96 130L144 130C136 116 125 110 125 98C125 90 130 84 130 68Z',
    ),
    PLATE,
    pool(9),
    dot(76, 96, 4),
    dot(62, 108, 3),
    dot(164, 92, 4),
    dot(180, 104, 3),
  ],
  // One drop, larger than the wire, hangs and wanders; the arc burns from its underside.
  globular: [
    wire(120, 42),
    dot(120, 66, 29, 'falls'),
    line('M106 104L98 120M120 106V122M134 104L142 120', 'arc'),
    PLATE,
    pool(9),
    dot(182, 112, 6),
  ],
  // The wire end is drawn to a point; fine drops cross in line with it within the cone of the arc.
  spray: [
    wire(120, 30),
    solid('M110 28H130L121 62H119Z'),
    dot(120, 72, 4.5, 'falls one'),
    dot(120, 85, 4.5, 'falls two'),
    dot(120, 98, 4.5, 'falls three'),
    dot(120, 111, 4.5),
    dot(120, 123, 4.5),
    line('M110 60L84 122M130 60L156 122', 'arc'),
    PLATE,
    pool(13),
  ],
  // One drop a pulse; the course of the current beside it.
  'pulsed-spray': [
    wire(120, 36),
    solid('M110 34H130L122 58H118Z'),
    dot(120, 84, 10, 'falls'),
    line('M111 58L96 122M129 58L144 122', 'arc'),
    PLATE,
    pool(11),
    line('M172 60H184V24H196V60H208V24H220V60H234', 'pulse'),
  ],
  // Two ways at once: a bridge on one side, a drop on the other.
  mixed: [
    wire(78, 66),
    solid(
      'M68 64C68 82 74 92 73 102C72 114 64 120 58 130H98C92 120 84 114 83 102C82 92 88 82 88 64Z',
    ),
    wire(162, 40),
    dot(162, 62, 24, 'falls'),
    line('M152 96L146 118M162 98V120M172 96L178 118', 'arc'),
    line('M6 130H234'),
    line('M46 132Q78 144 110 132M130 132Q162 144 194 132', 'pool'),
  ],
  // The wire end is there; how the metal leaves it is not known.
  open: [wire(120, 30), sign('?', 112), PLATE, pool(9)],
  // Wire and plate, and nothing between them.
  'no-arc': [
    wire(120, 52),
    line('M110 52H130'),
    line('M6 130H234'),
    line('M92 76L148 112M148 76L92 112', 'none'),
  ],
  // A sound that breaks off.
  failed: [line('M20 84L40 60L56 104L74 48L92 110M148 84H220'), sign('!', 112)],
};
