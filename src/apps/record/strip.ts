import type { WeldRecord } from '../../record/index.js';
import { MODE_LETTERS } from '../../setup/index.js';
import { el, hint, modeClass, modeFill, picture } from '../report/index.js';
import type { Words } from '../view/index.js';
import type { RecordWords } from './words/index.js';

const WIDTH = 760;
const BAR = 22;
/** Shown before and after the arc, s. */
const ROUND_S = 0.5;
/** Narrower than this a letter does not fit. */
const LETTER_ROOM = 14;

/** The modes of a run over time, with the longest departure marked below; empty where nothing burned. */
export function modeStrip({ run, mode }: WeldRecord, words: Words, own: RecordWords): string {
  const [first, last] = [run.arcStretches[0], run.arcStretches.at(-1)];
  if (!first || !last) return '';
  // A weld of a stream may lie hours behind its first sample.
  const fromS = Math.max(0, first.startS - ROUND_S);
  const endS = last.endS + ROUND_S;
  const x = (timeS: number): number => (WIDTH * (timeS - fromS)) / (endS - fromS);
  const ground = el('rect', { class: 'no-arc', x: 0, y: 0, width: WIDTH, height: BAR });
  const blocks = run.segments.map((one) => {
    const [from, width] = [x(one.startS), x(one.endS) - x(one.startS)];
    const name = one.mode === null ? own.unclear : words.mode(one.mode);
    const said = hint(`${name}, ${seconds(one.startS, words)}–${seconds(one.endS, words)} s`);
    const rect = { class: `block ${modeClass(one.mode)}`, x: from, y: 0, width, height: BAR };
    const letter =
      width < LETTER_ROOM
        ? ''
        : el(
            'text',
            {
              class: `lane-letter`,
              x: from + width / 2,
              y: 15.5,
              'text-anchor': 'middle',
            },
            one.mode === null ? '?' : MODE_LETTERS[one.mode],
          );
    const plate =
      letter === ''
        ? ''
        : el('rect', { class: 'plate', x: from + width / 2 - 7, y: 3, width: 14, height: 16 });
    return el('rect', { ...rect, fill: modeFill(one.mode) }, said) + plate + letter;
  });
  const ticks = [0, 0.25, 0.5, 0.75, 1].map((part) =>
    el(
      'text',
      {
        class: 'tick',
        x: part * WIDTH,
        y: 46,
        'text-anchor': part === 0 ? 'start' : part === 1 ? 'end' : 'middle',
      },
      `${seconds(fromS + part * (endS - fromS), words)} s`,
    ),
  );
  const out = mode.longestDeparture;
  const mark = out
    ? el('path', {
        class: 'axis',
        d: `M${x(out.startS).toFixed(1)} 26V31H${x(out.endS).toFixed(1)}V26`,
        fill: 'none',
      })
    : '';
  const description = out
    ? own.longest(
        words.mode(out.mode),
        seconds(out.endS - out.startS, words),
        seconds(out.startS, words),
      )
    : own.noDeparture;
  return picture(
    { width: WIDTH, height: 50 },
    { id: 'strip', title: own.modes, description },
    `${ground}${blocks.join('')}${mark}${ticks.join('')}`,
  );
}

export const seconds = (value: number, { sentences }: Words): string =>
  sentences.write.fixed(value, 1);
