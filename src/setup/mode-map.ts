import { MODES } from '../core/index.js';
import type { Boundaries } from './boundaries.js';
import { MODE_LETTERS } from './iso4063.js';
import { permits } from './permits.js';
import type { Setup } from './setup-schema.js';
import { middle, range } from './sourced.js';
import { currentFromFeed } from './working-point.js';

/** Modes over feeder volts and wire feed. `cells[row][column]`, volts falling, feed rising. */
export interface ModeMap {
  voltsV: number[];
  feedsMPerMin: number[];
  /** ISO 4063 letters: capital where it is to be expected, small where it may come. */
  cells: string[][];
}

const VOLTS = [34, 32, 30, 28, 26, 25, 24, 23, 22, 21, 20, 18, 16, 14];
const FEEDS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14];

/** The map for a wire and gas; null where no diameter is known (feed then says nothing of current). */
export function modeMap(setup: Setup, bounds: Boundaries): ModeMap | null {
  if (setup.wireDiameterMm === null) return null;
  const cells = VOLTS.map((v) =>
    FEEDS.map((feed) => {
      const drawn = currentFromFeed({ ...setup, wireFeedMPerMin: feed });
      const currentA = drawn === null ? null : range(middle(drawn), middle(drawn));
      const voltageV = { min: v, max: v };
      return cellLetters(permits({ voltageV, currentA }, bounds, setup.source));
    }),
  );
  return { voltsV: VOLTS, feedsMPerMin: FEEDS, cells };
}

function cellLetters(cell: ReturnType<typeof permits>): string {
  return (
    MODES.filter((mode) => cell[mode] !== 'no')
      // Pulsing is a matter of the programme, not of the place on the map.
      .filter((mode) => mode !== 'pulsed-spray' || cell[mode] === 'yes')
      .map((mode) => (cell[mode] === 'yes' ? MODE_LETTERS[mode] : MODE_LETTERS[mode].toLowerCase()))
      .join('')
  );
}
