import { figure, MODE_WORDS, type Paint, percent, visibleWithin } from '../../view/index.js';
import type { Observer, WatchEvent } from '../events.js';
import { clock } from '../words.js';

/** One plain line a happening; provisional modes only where nothing surer is known yet. */
export function lineView(write: (text: string) => Promise<void>, paint: Paint): Observer {
  return {
    async tell(event) {
      const line = sayEvent(event, paint);
      if (line !== undefined) await write(`${clock(event.timeS).padStart(7)}  ${line}\n`);
    },
  };
}

const NAMES = (mode: keyof typeof MODE_WORDS | null): string =>
  mode === null ? 'no clear mode' : MODE_WORDS[mode].name;

/** An event in words; undefined for what a line need not say. The mark before it is a shape, not only a colour. */
export function sayEvent(given: WatchEvent, paint: Paint): string | undefined {
  // The result of a weld is large and not said here.
  const event = given.event === 'weld' ? given : visibleWithin(given);
  switch (event.event) {
    case 'source':
      return `listening to ${event.name}: ${event.channels.join(' and ')} at ${event.rateHz} Hz`;
    case 'arc-start':
      return `[ arc on: weld ${event.weld}${event.open ? ' (was burning already)' : ''}`;
    case 'arc-stop':
      return `] arc off: weld ${event.weld}${event.open ? ' (still burning when the signal ended)' : ''}`;
    case 'mode':
      return sayMode(event, paint);
    case 'weld':
      return paint.bold(
        `= weld ${event.weld}: ${event.mode ?? event.status}${event.confidence === null ? '' : ` (${percent(event.confidence)})`}, ${(event.timeS - event.startS).toFixed(1)} s`,
      );
    case 'not-a-weld':
      return paint.dim(`  what sounded like an arc from ${clock(event.startS)} was none`);
    case 'signal-lost':
      return paint.warn(`~ SIGNAL LOST: ${event.why}; the mode is unknown, not wrong`);
    case 'signal-back':
      return '~ signal is back';
    case 'unreadable':
      return paint.warn(`~ NOTHING READABLE: ${event.why}`);
    case 'no-arc':
      return paint.warn(`~ NO ARC seen for ${clock(event.timeS - event.sinceS)}`);
    case 'gap':
      return paint.warn(
        `~ GAP: ${event.why}${event.lostS === null ? '' : ` (${event.lostS.toFixed(3)} s)`}`,
      );
    case 'expect':
      return `  expected from here on: ${event.mode ?? 'nothing'} (${event.why})`;
    case 'note':
      return `  ${event.text}`;
    case 'end':
      return sayEnd(event);
    default:
      return sayAlarm(event, paint);
  }
}

function sayMode(event: WatchEvent & { event: 'mode' }, paint: Paint): string {
  const { stage, mode, confidence, eventRateHz, slowS } = event;
  const rate = eventRateHz === null ? '' : `, ${figure(eventRateHz)} events/s`;
  const slow = slowS === null ? '' : ` (ten events take ${slowS.toFixed(1)} s: the answer is slow)`;
  const sure = stage === 'confirmed' ? '' : '?';
  const name = paint.mode(mode ?? '', `${NAMES(mode)}${sure}`);
  return `${sure === '' ? '*' : '.'} ${name} ${percent(confidence)} ${stage}${rate}${slow}`;
}

function sayAlarm(
  event: Extract<WatchEvent, { sinceS: number; expected: unknown }>,
  paint: Paint,
): string {
  const { event: kind, expected, mode, waitedS, sinceS, why } = event;
  if (kind === 'alarm')
    return paint.bad(
      `! ALARM: ${NAMES(mode)} instead of ${NAMES(expected)} for ${waitedS.toFixed(1)} s, since ${clock(sinceS)}`,
    );
  if (kind === 'departed')
    return paint.warn(`^ left ${NAMES(expected)}: ${NAMES(mode)} for ${waitedS.toFixed(1)} s`);
  if (kind === 'unclear') return paint.warn(`? no mode has been clear for ${waitedS.toFixed(0)} s`);
  const how = {
    mode: `back in ${NAMES(expected)}`,
    'arc-end': 'the arc ended',
    'new-expectation': 'something else is expected',
  };
  return `${kind === 'alarm-end' ? '! alarm ends' : '^ departure ends'}: ${how[why]}`;
}

function sayEnd(event: WatchEvent & { event: 'end' }): string {
  const { welds, alarms, lostSamples, bridgedSamples, gaps, reconnects, badRows, looseBytes } =
    event;
  const parts = [`${welds} weld(s)`, `${alarms} alarm(s)`];
  if (lostSamples > 0) parts.push(`${lostSamples} samples lost (${bridgedSamples} bridged)`);
  if (gaps > 0) parts.push(`${gaps} gap(s)`);
  if (reconnects > 0) parts.push(`${reconnects} reconnect(s)`);
  if (badRows > 0) parts.push(`${badRows} unreadable row(s)`);
  if (looseBytes > 0) parts.push(`${looseBytes} loose byte(s) at the end`);
  if (event.worstJitterS > 1e-9)
    parts.push(`jitter up to ${(event.worstJitterS * 1e3).toFixed(3)} ms`);
  if (event.driftPpm !== null) parts.push(`clock ${event.driftPpm.toFixed(0)} ppm off`);
  return `end: ${parts.join(', ')}`;
}
