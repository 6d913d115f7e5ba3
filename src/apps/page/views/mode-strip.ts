import { type ComponentChild, h } from 'preact';
import type { Result } from '../../../analysis/result/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import type { View } from './view.js';

const WIDTH = 360;
const HEIGHT = 44;
/** A part must be this wide to hold its letter, of the strip's own units. */
const LETTER_NEEDS = 18;

/** The modes over time, as wide as the screen: colour and pattern of each, its letter, and the same in words. */
export function modeStrip({ state }: View, result: Result): ComponentChild {
  const { page, view: words } = state.words;
  const { segments, source, arcStretches } = result;
  const lengthS = source.durationS ?? 0;
  if (!(lengthS > 0)) return null;
  const x = (timeS: number): number => (WIDTH * timeS) / lengthS;
  const time = (timeS: number): string => words.numbers.time(timeS);
  const parts = segments.map(({ mode, startS, endS }) => ({
    kind: mode ?? 'open',
    letter: mode ? MODE_LETTERS[mode] : '?',
    from: x(startS),
    width: x(endS) - x(startS),
    words: page.stripPart(mode ? words.mode(mode) : words.notClear, time(startS), time(endS)),
  }));
  const said = parts.map((one) => one.words).join('; ') || page.stripNone;
  return h('figure', { class: 'mode-strip' }, [
    h('figcaption', null, page.strip),
    h(
      'svg',
      { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': `${page.strip}: ${said}` },
      [
        h('rect', { class: 'strip-none', width: WIDTH, height: HEIGHT }),
        ...arcStretches.map(({ startS, endS }) =>
          h('rect', {
            class: 'strip-arc',
            x: x(startS),
            width: x(endS) - x(startS),
            height: HEIGHT,
          }),
        ),
        ...parts.map(({ kind, from, width }) =>
          h('rect', { class: `strip-part field-${kind}`, x: from, width, height: HEIGHT }),
        ),
        ...parts.map(({ kind, from, width }) =>
          h('rect', { x: from, width, height: HEIGHT, fill: `url(#ground-${kind})` }),
        ),
        ...parts
          .filter(({ width }) => width >= LETTER_NEEDS)
          .map(({ kind, letter, from }) =>
            h('text', { class: `strip-name field-${kind}`, x: from + 6, y: 29 }, letter),
          ),
      ],
    ),
    h('p', { class: 'strip-ends', 'aria-hidden': 'true' }, [
      h('span', null, '0 s'),
      h('span', null, time(lengthS)),
    ]),
    parts.length > 1 ? h('p', { class: 'small', 'aria-hidden': 'true' }, said) : null,
  ]);
}
