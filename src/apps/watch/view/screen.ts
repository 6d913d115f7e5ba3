import { figure, type Look, MODE_WORDS, percent, visible } from '../../view/index.js';
import type { Observer, StripCell, WatchEvent, WatchState } from '../events.js';
import { clock } from '../words.js';
import { sayEvent } from './lines.js';

/** Redrawn no oftener than this, ms: a calm picture. */
const EVERY_MS = 250;
const RECENT = 4;

/** A picture of a few lines that stays in place on a terminal. */
export function screenView(write: (text: string) => Promise<void>, look: Look): Observer {
  let drawn = 0;
  let lastMs = 0;
  const recent: string[] = [];
  const draw = async (state: WatchState): Promise<void> => {
    lastMs = performance.now();
    const lines = picture(state, recent, look);
    const up = drawn > 0 ? `\x1b[${drawn}A` : '';
    drawn = lines.length;
    await write(`${up}${lines.map((line) => `\x1b[2K${line}\n`).join('')}`);
  };
  return {
    async tell(event: WatchEvent, state: WatchState) {
      const line = event.event === 'mode' ? undefined : sayEvent(event, look.paint);
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
export function picture(state: WatchState, recent: readonly string[], look: Look): string[] {
  const { paint } = look;
  const rate = state.eventRateHz === null ? '' : `   ${figure(state.eventRateHz)} events/s`;
  const lines = [
    `${paint.bold(visible(state.name))}   ${clock(state.timeS)}   weld ${state.weld}${rate}`,
    `  now    ${sayNow(state, look)}`,
    `  60 s   ${state.strip.map((cell) => paintCell(cell, look)).join('')}`,
    paint.dim(
      '         D short-circuit  G globular  S spray  P pulsed spray  ? unclear  · off  ~ lost',
    ),
    `  watch  ${sayWatch(state, look)}`,
    `  line   ${sayLosses(state)}`,
    '',
    ...recent,
  ];
  while (lines.length < 7 + RECENT) lines.push('');
  return lines;
}

function sayNow(state: WatchState, { paint }: Look): string {
  if (state.signal === 'lost') return paint.warn('~ SIGNAL LOST (the mode is unknown, not wrong)');
  if (state.signal === 'waiting') return 'waiting for the first samples';
  if (!state.arcOn) return '· no arc';
  if (!state.modes) return 'arc on, listening';
  const { provisional, confirmed } = state.modes;
  const name = provisional.mode === null ? 'no clear mode' : MODE_WORDS[provisional.mode].name;
  const stage = confirmed?.mode === provisional.mode ? 'confirmed' : 'provisional';
  return `${paint.mode(provisional.mode ?? '', name)}   ${percent(provisional.probability)}   ${stage}`;
}

function sayWatch(state: WatchState, { paint }: Look): string {
  if (state.expected === null) return 'nothing is expected (--expect <mode>)';
  const wanted = `expected: ${MODE_WORDS[state.expected].name}`;
  if (state.alarm) return paint.bad(`!!! ALARM !!!   ${wanted}`);
  return `${wanted}   no alarm now, ${state.alarms} so far`;
}

function sayLosses({ losses }: WatchState): string {
  const { lostSamples, gaps, reconnects, badRows } = losses;
  return `${lostSamples} samples lost, ${gaps} gaps, ${reconnects} reconnects, ${badRows} bad rows`;
}

function paintCell(cell: StripCell, { paint }: Look): string {
  if (cell === 'off') return '·';
  if (cell === 'lost') return '~';
  if (cell === 'unnamed') return '?';
  return paint.mode(cell, MODE_WORDS[cell].letter);
}
