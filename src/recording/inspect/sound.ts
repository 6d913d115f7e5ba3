import { isArcError } from '../../core/index.js';
import type { Recording } from '../types.js';
import { createFigures } from './figures.js';
import type { InspectedSeries } from './inspection.js';

/** Channels looked at. */
const MAX_CHANNELS = 8;

/**
 * Describes every channel of a sound file, one after the other, at digital full scale 1.
 *
 * @param open opens the file with that channel (from 1) as sound
 * @param roles what each channel number is read as with the options given
 */
export async function inspectSound(
  open: (channel: number) => Promise<Recording>,
  roles: ReadonlyMap<number, InspectedSeries['readAs']>,
): Promise<InspectedSeries[]> {
  const series: InspectedSeries[] = [];
  for (let number = 1; number <= MAX_CHANNELS; number++) {
    try {
      const recording = await open(number);
      const figures = createFigures();
      for await (const block of recording.blocks()) figures.push(block.channels[0] as Float64Array);
      series.push({
        number,
        name: recording.channels[0]?.name ?? `channel ${number}`,
        unit: 'full scale',
        readAs: roles.get(number) ?? null,
        figures: figures.finish('peaks'),
      });
    } catch (error) {
      if (!isArcError(error)) throw error;
      // `bad-channel` means that there are no more; anything else the reading itself has said.
      break;
    }
  }
  return series;
}
