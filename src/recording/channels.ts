import { ArcError, type Note, type RecordingKind } from '../core/index.js';
import { note } from '../messages/index.js';
import type { Channel, ReadOptions } from './types.js';

/** One channel taken from a sound file: where it lies and by what to multiply full scale. */
export interface ChannelPick {
  /** Counted from 0. */
  index: number;
  factor: number;
  channel: Channel;
  /** True where nobody said what the channel holds. */
  assumed?: true;
}

export interface ChannelChoice {
  kind: RecordingKind;
  picks: ChannelPick[];
  notes: Note[];
}

/**
 * Decides which channels of a sound file are read, and as what. Without a statement the first channel
 * is taken as sound and the others are left out: mixing could cancel the arc, and choosing by loudness
 * could differ between two takes of the same set-up.
 *
 * @throws ArcError `bad-channel`, `bad-scale`, `contradicting-channels`.
 */
export function chooseChannels(count: number, options: ReadOptions): ChannelChoice {
  const map = options.channelMap ?? {};
  refuseContradictions(options);
  if (map.voltage === undefined && map.current === undefined) return chooseSound(count, map.sound);
  const picks: ChannelPick[] = [];
  const notes: Note[] = [];
  for (const quantity of ['voltage', 'current'] as const) {
    const stated = map[quantity];
    if (stated === undefined) continue;
    const unit = quantity === 'voltage' ? 'V' : 'A';
    const index = channelIndex(stated, count, quantity);
    const factor = fullScale(options.scale?.[quantity], quantity, unit);
    picks.push({ index, factor, channel: { name: `channel ${index + 1}`, quantity, unit } });
    notes.push(
      note('scale-stated', { of: 'channel', channel: index + 1, quantity, atFullScale: factor }),
    );
  }
  if (picks.length === 2 && picks[0]?.index === picks[1]?.index) {
    throw new ArcError({
      code: 'contradicting-channels',
      what: `Voltage and current are both said to be channel ${(picks[0]?.index ?? 0) + 1}.`,
      expected: 'two different channels',
      todo: 'State one channel for each.',
    });
  }
  return { kind: 'electrical', picks, notes };
}

function chooseSound(count: number, stated: number | string | undefined): ChannelChoice {
  const index = stated === undefined ? 0 : channelIndex(stated, count, 'sound');
  const channel: Channel = {
    name: `channel ${index + 1}`,
    quantity: 'sound',
    unit: 'full-scale',
  };
  const notes: Note[] = [];
  if (count > 1 && stated === undefined) {
    notes.push(note('channel-assumed', { channels: count }));
  }
  return {
    kind: 'sound',
    picks: [{ index, factor: 1, channel, ...(stated === undefined ? { assumed: true } : {}) }],
    notes,
  };
}

function refuseContradictions({ channelMap: map = {}, scale = {} }: ReadOptions): void {
  if (map.sound !== undefined && (map.voltage ?? map.current) !== undefined) {
    throw new ArcError({
      code: 'contradicting-channels',
      what: 'Both a sound channel and an electrical channel were stated for one file.',
      expected: 'either sound, or voltage and current',
      todo: 'Run twice if the file holds both.',
    });
  }
  if (map.time !== undefined) {
    throw new ArcError({
      code: 'bad-channel',
      what: `A time channel (${map.time}) was stated for a sound file.`,
      expected: 'no time channel: the file states its sample rate',
      todo: 'Leave out the time channel.',
    });
  }
  for (const quantity of ['voltage', 'current'] as const) {
    if (scale[quantity] === undefined || map[quantity] !== undefined) continue;
    throw new ArcError({
      code: 'bad-scale',
      what: `A ${quantity} scale (${scale[quantity]}) was stated, but no ${quantity} channel.`,
      expected: `the number of the ${quantity} channel beside its scale`,
      todo: `State the ${quantity} channel, or leave out the scale.`,
    });
  }
}

function channelIndex(stated: number | string, count: number, quantity: string): number {
  const number = typeof stated === 'string' && /^\d+$/.test(stated) ? Number(stated) : stated;
  if (typeof number === 'number' && Number.isInteger(number) && number >= 1 && number <= count) {
    return number - 1;
  }
  throw new ArcError({
    code: 'bad-channel',
    what: `Channel ${stated} was stated for ${quantity}, but the file has ${count === 1 ? 'one channel' : `${count} channels`}.`,
    expected: `a channel number from 1 to ${count}`,
    todo: 'Correct the channel number.',
  });
}

function fullScale(scale: number | undefined, quantity: string, unit: string): number {
  if (scale !== undefined && Number.isFinite(scale) && scale !== 0) return scale;
  throw new ArcError({
    code: 'bad-scale',
    what:
      scale === undefined
        ? `The file is said to hold ${quantity}, but not how many ${unit} digital full scale stands for.`
        : `The ${quantity} scale is ${scale}.`,
    expected: `${unit} at digital full scale, a finite number other than 0`,
    todo: `State the ${quantity} scale, for example 100.`,
  });
}
