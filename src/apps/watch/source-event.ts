import type { LiveFormat } from '../../analysis/index.js';
import type { WatchEvent, WatchState } from './events.js';
import type { GoodWelds } from './reference-welds.js';

/** What is listened to from here on, and what the alarm learned before. */
export function sourceEvent(
  { name, timeS }: WatchState,
  { kind, format, sampleRateHz: rateHz, channels }: LiveFormat,
  good: GoodWelds | null,
): WatchEvent {
  const quantities = channels.map((channel) => channel.quantity);
  const heard = { timeS, name, kind, format, rateHz, channels: quantities };
  return { event: 'source', ...heard, ...(good && { good }) };
}
