import type { AlarmChange, LiveModes } from '../../analysis/index.js';
import type { Result } from '../../analysis/result/index.js';
import type { Mode } from '../../core/index.js';
import type { Message } from '../../messages/index.js';
import type { GoodWelds } from './reference-welds.js';
import type { Losses } from './sources/types.js';

/** The reason in English, and by its code, so that it can be said in another language. */
export interface Why {
  why: string;
  whyMessage?: Message;
}

/** Something that happened, as screen, lines, NDJSON and brokers get it. Times are s of the stream. */
export type WatchEvent =
  | {
      event: 'source';
      timeS: number;
      name: string;
      kind: string;
      format: string;
      rateHz: number;
      channels: string[];
      /** What the alarm learned from good welds, where some were given. */
      good?: GoodWelds;
    }
  | { event: 'arc-start' | 'arc-stop'; timeS: number; weld: number; open: boolean }
  | {
      event: 'mode';
      timeS: number;
      weld: number;
      stage: 'provisional' | 'confirmed';
      mode: Mode | null;
      confidence: number;
      eventRateHz: number | null;
      /** Time that ten events take, s, where it is longer than half a second: the answer is slow by nature. */
      slowS: number | null;
    }
  | (Omit<AlarmChange, 'type'> & { event: AlarmChange['type']; weld: number })
  | {
      event: 'weld';
      timeS: number;
      weld: number;
      startS: number;
      status: Result['status'];
      mode: Result['mode'];
      confidence: number | null;
      result: Result;
    }
  | { event: 'not-a-weld'; timeS: number; startS: number }
  | ({ event: 'signal-lost'; timeS: number } & Why)
  | { event: 'signal-back'; timeS: number }
  | ({ event: 'gap'; timeS: number; lostS: number | null } & Why)
  | ({ event: 'expect'; timeS: number; mode: Mode | null } & Why)
  | { event: 'note'; timeS: number; text: string; textMessage?: Message }
  | ({ event: 'end'; timeS: number; welds: number; alarms: number; cpuShare: number } & Losses);

/** What is so now, for views that show a state. */
export interface WatchState {
  name: string;
  timeS: number;
  arcOn: boolean;
  signal: 'waiting' | 'ok' | 'lost';
  /** The weld that burns, else the last one. */
  weld: number;
  modes: LiveModes | null;
  eventRateHz: number | null;
  expected: Mode | null;
  alarm: boolean;
  alarms: number;
  losses: Losses;
  /** What was seen in each of the last 60 s, the newest last: a mode, `unnamed`, or `off`, or `lost`. */
  strip: StripCell[];
}

export type StripCell = Mode | 'unnamed' | 'off' | 'lost';

/** One who is told. What it returns is waited for, so that nothing piles up before a slow one. */
export interface Observer {
  tell(event: WatchEvent, state: WatchState): void | Promise<void>;
  /** Called often, whether or not anything happened. */
  tick?(state: WatchState): void;
  close?(): Promise<void>;
}
