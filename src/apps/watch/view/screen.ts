import { MODES } from '../../../core/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import type { Look, Words } from '../../view/index.js';
import type { Observer, StripCell, WatchEvent, WatchState } from '../events.js';
import { clock } from '../words.js';
import { sayEvent } from './lines.js';

/** Redrawn no oftener than this, ms: a calm picture. */
const EVERY_MS = 250;
const RECENT = 4;

/** A picture of a few lines that stays in place on a terminal. */
export function screenView(
  write: (text: string) => Promise<void>,
  look: Look,
  words: Words,
): Observer {
  let drawn = 0;
  let lastMs = 0;
  const recent: string[] = [];
  const draw = async (state: WatchState): Promise<void> => {
    lastMs = performance.now();
    const lines = picture(state, recent, look, words);
    const up = drawn > 0 ? `\x1b[${drawn}A` : '';
    drawn = lines.length;
    await write(`${up}${lines.map((line) => `\x1b[2K${line}\n`).join('')}`);
  };
  return {
    async tell(event: WatchEvent, state: WatchState) {
      const line = event.event === 'mode' ? undefined : sayEvent(event, look.paint, words);
      if (line !== undefined) {
        recent.push(`${clock(event.timeS).padStart(7)}  ${line}`);
        if (recent.length > RECENT) recent.shift();
      }
      if (event.event === 'end' || performance.now() - lastMs >= EVERY_MS) await draw(state);
    },
    tick(state) {
      if (performance.now() - lastMs >= EVERY_MS) void draw(state);
    },
  };
}

/** The picture as lines: what is now, the last minute, alarm, what happened last. */
export function picture(
  state: WatchState,
  recent: readonly string[],
  look: Look,
  words: Words,
): string[] {
  const { paint } = look;
  const { watch, numbers } = words;
  const { rows, marks } = watch.screen;
  const rate =
    state.eventRateHz === null ? '' : `   ${watch.eventRate(numbers.figure(state.eventRateHz))}`;
  const key = [
    ...MODES.map((mode) => `${MODE_LETTERS[mode]} ${words.mode(mode)}`),
    `? ${marks.unclear}`,
    `· ${marks.off}`,
    `~ ${marks.lost}`,
  ].join('  ');
  const lines = [
    `${paint.bold(state.name)}   ${clock(state.timeS)}   ${watch.screen.weld(state.weld)}${rate}`,
    `  ${rows.now}  ${sayNow(state, look, words)}`,
    `  ${rows.minute}  ${state.strip.map((cell) => paintCell(cell, look)).join('')}`,
    paint.dim(`${' '.repeat(rows.now.length + 4)}${key}`),
    `  ${rows.watch}  ${sayWatch(state, look, words)}`,
    `  ${rows.line}  ${sayLosses(state, words)}`,
    '',
    ...recent,
  ];
  while (lines.length < 7 + RECENT) lines.push('');
  return lines;
}

function sayNow(state: WatchState, { paint }: Look, words: Words): string {
  const { screen, noClearMode, stages } = words.watch;
  if (state.signal === 'lost') return paint.warn(`~ ${screen.lost}`);
  if (state.signal === 'waiting') return screen.waiting;
  if (!state.arcOn) return `· ${screen.noArc}`;
  if (!state.modes) return screen.listening;
  const { provisional, confirmed } = state.modes;
  const name = provisional.mode === null ? noClearMode : words.mode(provisional.mode);
  const stage = confirmed?.mode === provisional.mode ? 'confirmed' : 'provisional';
  const sure = words.numbers.percent(provisional.probability);
  return `${paint.mode(provisional.mode ?? '', name)}   ${sure}   ${stages[stage]}`;
}

function sayWatch(state: WatchState, { paint }: Look, words: Words): string {
  const { screen } = words.watch;
  if (state.expected === null) return screen.nothingExpected;
  const wanted = screen.expected(words.mode(state.expected));
  if (state.alarm) return paint.bad(`${screen.alarm}   ${wanted}`);
  return `${wanted}   ${screen.noAlarm(state.alarms)}`;
}

function sayLosses({ losses }: WatchState, { watch }: Words): string {
  const { lostSamples, gaps, reconnects, badRows } = losses;
  return watch.screen.losses(lostSamples, gaps, reconnects, badRows);
}

function paintCell(cell: StripCell, { paint }: Look): string {
  if (cell === 'off') return '·';
  if (cell === 'lost') return '~';
  if (cell === 'unnamed') return '?';
  return paint.mode(cell, MODE_LETTERS[cell]);
}
