import type { RawSetup } from '../terminal/flags/setup-flags.js';
import type { RecordOptions } from '../terminal/records/record-flags.js';
import { RecordFolder } from '../terminal/records/record-folder.js';
import type { Observer } from './events.js';
import { sayShort } from './words.js';

/**
 * A record of each weld as soon as it is over; table and index when the watch ends, and every so many welds. What
 * cannot be written is said, and the watch goes on.
 */
export async function watchRecords(
  options: RecordOptions,
  stated: RawSetup,
  say: (text: string) => void,
): Promise<Observer> {
  const rules = { overwrite: false, inputs: [], goOn: true };
  const folder = await RecordFolder.open(options, rules);
  const trying = async (work: () => Promise<unknown>): Promise<void> => {
    await work().catch((error: unknown) => say(`${options.folder}: ${sayShort(error)}`));
  };
  let since = 0;
  return {
    async tell(event) {
      if (event.event !== 'weld') return;
      await trying(() => folder.add(event.result, stated));
      since += 1;
      if (since < WELDS_BETWEEN) return;
      since = 0;
      await trying(() => folder.close());
    },
    async close() {
      await trying(() => folder.close());
      say(folder.summary);
    },
  };
}

/** Table and index are written anew after so many welds. */
const WELDS_BETWEEN = 20;
