import { readStatedSetup } from '../../terminal/flags/setup-flags.js';
import { readRecordOptions } from '../../terminal/records/record-flags.js';
import type { OutputRules } from '../../terminal/sink.js';
import { visible } from '../../view/index.js';
import type { Writer } from './writer.js';

/**
 * With `--records`, what writes a record of each result; undefined without.
 * @throws ArcError for wrong use, and where the folder holds records already
 */
export async function recordWriter(
  options: Readonly<Record<string, unknown>>,
  rules: OutputRules,
): Promise<Writer | undefined> {
  const asked = await readRecordOptions(options);
  if (!asked) return undefined;
  const stated = await readStatedSetup(options);
  const { RecordFolder } = await import('../../terminal/records/record-folder.js');
  const folder = await RecordFolder.open(asked, rules);
  return {
    begin: async () => {},
    result: async (one) => {
      await folder.add(one, stated);
    },
    end: async () => {
      await folder.close();
      process.stderr.write(`${visible(folder.summary)}\n`);
    },
  };
}
