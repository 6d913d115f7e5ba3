import { type Paint, tell, type Words } from '../../view/index.js';
import type { Observer, WatchEvent, Why } from '../events.js';
import { clock } from '../words.js';

/** One plain line a happening; provisional modes only where nothing surer is known yet. */
export function lineView(
  write: (text: string) => Promise<void>,
  paint: Paint,
  words: Words,
): Observer {
  return {
    async tell(event) {
      const line = sayEvent(event, paint, words);
      if (line !== undefined) await write(`${clock(event.timeS).padStart(7)}  ${line}\n`);
    },
  };
}

/** An event in words; undefined for what a line need not say. The mark before it is a shape, not only a colour. */
export function sayEvent(event: WatchEvent, paint: Paint, words: Words): string | undefined {
  const { watch, numbers } = words;
  const why = (one: Why): string => tell(one.why, one.whyMessage, words).text;
  switch (event.event) {
    case 'source':
      return watch.source(event.name, event.channels, event.rateHz);
    case 'arc-start':
      return `[ ${watch.arcOn(event.weld, event.open)}`;
    case 'arc-stop':
      return `] ${watch.arcOff(event.weld, event.open)}`;
    case 'mode':
      return sayMode(event, paint, words);
    case 'weld':
      return paint.bold(`= ${sayWeld(event, words)}`);
    case 'not-a-weld':
      return paint.dim(`  ${watch.notAWeld(clock(event.startS))}`);
    case 'signal-lost':
      return paint.warn(`~ ${watch.signalLost(why(event))}`);
    case 'signal-back':
      return `~ ${watch.signalBack}`;
    case 'gap': {
      const lostS = event.lostS === null ? '' : numbers.decimal(event.lostS.toFixed(3));
      return paint.warn(`~ ${watch.gap(why(event), lostS)}`);
    }
    case 'expect':
      return `  ${watch.expect(event.mode && words.sentences.write.mode(event.mode), why(event))}`;
    case 'note':
      return `  ${tell(event.text, event.textMessage, words).text}`;
    case 'end':
      return sayEnd(event, words);
    default:
      return sayAlarm(event, paint, words);
  }
}

/** Modes stand here in English by their ids, as they do in the events. */
function sayWeld(event: WatchEvent & { event: 'weld' }, words: Words): string {
  const { weld, mode, status, confidence, timeS, startS } = event;
  const sure = confidence === null ? '' : ` (${words.numbers.percent(confidence)})`;
  return words.watch.weld(
    weld,
    words.watch.answer(mode && mode !== 'mixed' ? words.sentences.write.mode(mode) : mode, status),
    sure,
    words.numbers.decimal((timeS - startS).toFixed(1)),
  );
}

function sayMode(event: WatchEvent & { event: 'mode' }, paint: Paint, words: Words): string {
  const { stage, mode, confidence, eventRateHz, slowS } = event;
  const { watch, numbers } = words;
  const rate = eventRateHz === null ? '' : `, ${watch.eventRate(numbers.figure(eventRateHz))}`;
  const slow = slowS === null ? '' : ` (${watch.slow(numbers.decimal(slowS.toFixed(1)))})`;
  const sure = stage === 'confirmed' ? '' : '?';
  const name = paint.mode(mode ?? '', `${mode ? words.mode(mode) : watch.noClearMode}${sure}`);
  return `${sure === '' ? '*' : '.'} ${name} ${numbers.percent(confidence)} ${watch.stages[stage]}${rate}${slow}`;
}

function sayAlarm(
  event: Extract<WatchEvent, { sinceS: number; expected: unknown }>,
  paint: Paint,
  words: Words,
): string {
  const { event: kind, waitedS, sinceS, why } = event;
  const { watch, numbers } = words;
  const name = (mode: typeof event.mode): string => (mode ? words.mode(mode) : watch.noClearMode);
  const [mode, expected] = [name(event.mode), name(event.expected)];
  const seconds = numbers.decimal(waitedS.toFixed(1));
  if (kind === 'alarm')
    return paint.bad(`! ${watch.alarm(mode, expected, seconds, clock(sinceS))}`);
  if (kind === 'departed') return paint.warn(`^ ${watch.departed(mode, expected, seconds)}`);
  if (kind === 'unclear') return paint.warn(`? ${watch.unclear(waitedS.toFixed(0))}`);
  const alarm = kind === 'alarm-end';
  return `${alarm ? '!' : '^'} ${watch.ends(alarm, why, expected)}`;
}

function sayEnd(event: WatchEvent & { event: 'end' }, { watch, numbers }: Words): string {
  const { welds, alarms, lostSamples, bridgedSamples, gaps, reconnects, badRows, looseBytes } =
    event;
  const { counts } = watch;
  const parts = [counts.welds(welds), counts.alarms(alarms)];
  if (lostSamples > 0) parts.push(counts.lost(lostSamples, bridgedSamples));
  if (gaps > 0) parts.push(counts.gaps(gaps));
  if (reconnects > 0) parts.push(counts.reconnects(reconnects));
  if (badRows > 0) parts.push(counts.badRows(badRows));
  if (looseBytes > 0) parts.push(counts.looseBytes(looseBytes));
  if (event.worstJitterS > 1e-9)
    parts.push(counts.jitter(numbers.decimal((event.worstJitterS * 1e3).toFixed(3))));
  if (event.driftPpm !== null) parts.push(counts.clock(event.driftPpm.toFixed(0)));
  return watch.end(parts);
}
