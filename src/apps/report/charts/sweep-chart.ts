import type { SweepStep } from '../../../analysis/sweep/index.js';
import { NEAR } from '../../../analysis/sweep/index.js';
import type { Mode } from '../../../core/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import type { Words } from '../../view/index.js';
import { type Box, type Frame, frame } from './frame.js';
import { modeClass, modeFill } from './mode-marks.js';
import { el, hint, picture, short, text } from './svg.js';

const SIZE = { width: 620, height: 430 };
const BOX: Box = { left: 50, right: 604, top: 30, bottom: 350 };
const CELLS = { across: 62, up: 48 };

/** Edges of the axes, so that two maps can be laid side by side. */
export interface SweepLimits {
  leastA: number;
  mostA: number;
  leastV: number;
  mostV: number;
}

export type PlacedStep = SweepStep & { meanVoltageV: number; meanCurrentA: number };

export function placedSteps(steps: readonly SweepStep[]): PlacedStep[] {
  return steps.filter(
    (one): one is PlacedStep => one.meanVoltageV !== null && one.meanCurrentA !== null,
  );
}

/**
 * The map of what was measured: around each step the ground in which `expect` goes by it, and its letter. Ground that
 * no step is near to stays empty.
 */
export function sweepChart(
  steps: readonly PlacedStep[],
  best: ReadonlySet<SweepStep>,
  limits: SweepLimits,
  id: string,
  words: Words,
): string {
  const axes = frame(
    BOX,
    { from: limits.leastA, to: limits.mostA, label: words.map.currentAxis },
    { from: limits.leastV, to: limits.mostV, label: words.sweep.heads[4] },
    words.numbers,
  );
  const inside = steps.filter(
    (one) =>
      one.meanCurrentA >= limits.leastA &&
      one.meanCurrentA <= limits.mostA &&
      one.meanVoltageV >= limits.leastV &&
      one.meanVoltageV <= limits.mostV,
  );
  return picture(
    SIZE,
    {
      id,
      title: words.sweep.mapTitle,
      description: words.sweep.mapDescription(steps.length),
    },
    ground(inside, limits, axes) +
      axes.svg +
      inside.map((one) => spot(one, best.has(one), axes, words)).join('') +
      key(words),
  );
}

const modeOf = ({ status, mode }: SweepStep): Mode | null =>
  status === 'ok' && mode !== 'mixed' ? mode : null;

function ground(steps: readonly PlacedStep[], limits: SweepLimits, { x, y }: Frame): string {
  const stepA = (limits.mostA - limits.leastA) / CELLS.across;
  const stepV = (limits.mostV - limits.leastV) / CELLS.up;
  const paths = new Map<Mode | null, string>();
  for (let column = 0; column < CELLS.across; column++)
    for (let row = 0; row < CELLS.up; row++) {
      const amps = limits.leastA + (column + 0.5) * stepA;
      const volts = limits.leastV + (row + 0.5) * stepV;
      const near = nearestOf(steps, volts, amps);
      if (!near) continue;
      const mode = modeOf(near);
      const [left, right] = [x(amps - stepA / 2), x(amps + stepA / 2)];
      const [top, bottom] = [y(volts + stepV / 2), y(volts - stepV / 2)];
      const cell = `M${short(left)} ${short(top)}H${short(right)}V${short(bottom)}H${short(left)}Z`;
      paths.set(mode, (paths.get(mode) ?? '') + cell);
    }
  return [...paths]
    .map(([mode, d]) =>
      el('path', { class: modeClass(mode), d, fill: modeFill(mode), opacity: '0.35' }),
    )
    .join('');
}

function nearestOf(
  steps: readonly PlacedStep[],
  volts: number,
  amps: number,
): PlacedStep | undefined {
  let best: PlacedStep | undefined;
  let least = 1;
  for (const one of steps) {
    const distance = Math.hypot(
      (one.meanVoltageV - volts) / NEAR.volts,
      (one.meanCurrentA - amps) / (NEAR.share * amps),
    );
    if (distance <= least) {
      least = distance;
      best = one;
    }
  }
  return best;
}

function spot(step: PlacedStep, isBest: boolean, { x, y }: Frame, words: Words): string {
  const mode = modeOf(step);
  const [cx, cy] = [x(step.meanCurrentA), y(step.meanVoltageV)];
  const letter = mode === null ? '?' : MODE_LETTERS[mode];
  const name = mode === null ? words.sweep.unclear : words.mode(mode);
  const said = `${name}: ${words.numbers.figure(step.meanVoltageV)} V, ${words.numbers.figure(step.meanCurrentA)} A`;
  return el(
    'g',
    {},
    [
      isBest ? el('circle', { class: 'sweep-best', cx, cy, r: 13 }) : '',
      el('circle', { class: `sweep-step ${modeClass(mode)}`, cx, cy, r: 9 }),
      text(cx, cy + 4, letter, { class: 'sweep-letter', 'text-anchor': 'middle' }),
      hint(said),
    ].join(''),
  );
}

function key({ sweep }: Words): string {
  const right = BOX.right - sweep.mostEven.length * 6.1 - 20;
  return (
    el('circle', { class: 'sweep-best', cx: right, cy: 14, r: 8 }) +
    text(right + 14, 18, sweep.mostEven, { class: 'label' })
  );
}
