import { basename, dirname, extname, join } from 'node:path';
import { type PersonRun, progressRows } from '../../../analysis/compare/index.js';
import type { Result } from '../../../analysis/result/index.js';
import type { Mode } from '../../../core/index.js';
import {
  compareSection,
  type IndexEntry,
  indexEntry,
  indexPage,
  progressSection,
  type RunView,
  runPage,
} from '../../report/index.js';
import { numberedName } from '../../terminal/numbered-name.js';
import {
  fileSink,
  makeFolder,
  type OutputRules,
  type Sink,
  writeFileBy,
} from '../../terminal/sink.js';
import { progressCsv, visible, type Words } from '../../view/index.js';
import type { Writer } from '../classify/writer.js';
import type { PersonOf } from './people.js';
import type { EvidenceEngine } from './with-evidence.js';

export interface PageWriterOptions extends OutputRules {
  out: string;
  /** More than one input: an index, and a folder beside it with a page a run. */
  several: boolean;
  script: string;
  words: Words;
  /** People by day in the index, and beside it as CSV; left out unless asked for. */
  progress?: { personOf: PersonOf; wanted: Mode | null; reference: Result | null };
}

/** Writes results as pages, each as soon as it is there; nothing appears under its name half-written. */
export async function createPageWriter(
  engine: EvidenceEngine,
  options: PageWriterOptions,
): Promise<{ writer: Writer; sink: Sink }> {
  const { out, script, words } = options;
  const sink = await fileSink(out, options);
  if (!options.several) {
    const result = (one: Result): Promise<void> =>
      sink.write(runPage(engine.take(one), script, undefined, words));
    return { sink, writer: { begin: nothing, result, end: nothing } };
  }
  const folder = join(dirname(out), `${basename(out, extname(out))}-runs`);
  const entries: IndexEntry[] = [];
  const firstTwo: RunView[] = [];
  const people: PersonRun[] = [];
  const leftOut: string[] = [];
  return {
    sink,
    writer: {
      begin: async () => {
        await makeFolder(folder);
      },
      result: async (one) => {
        const view = engine.take(one);
        const name = pageName(entries.length, one.source.path);
        const page = await fileSink(join(folder, name), options);
        const up = `../${encodeURIComponent(basename(out))}`;
        await page.write(runPage(view, script, up, words));
        await page.close(true);
        const person = options.progress?.personOf(one.source.path);
        if (person) people.push({ ...person, result: one });
        else if (options.progress) leftOut.push(one.source.path);
        entries.push(indexEntry(view, `${encodeURIComponent(basename(folder))}/${name}`));
        // Two runs are set side by side; with more, their evidence need not be kept.
        if (entries.length <= 2) firstTwo.push(view);
        else firstTwo.length = 0;
      },
      end: async () => {
        const [first, second] = firstTwo;
        const { progress } = options;
        const rows = progress ? progressRows(people, progress.wanted, progress.reference) : [];
        if (progress) {
          const table = join(dirname(out), `${basename(out, extname(out))}-progress.csv`);
          await writeFileBy(table, progressCsv(rows), options);
          if (leftOut.length > 0)
            process.stderr.write(`${words.progress.leftOut(leftOut.map(visible))}\n`);
        }
        const pair = entries.length === 2 && first && second;
        await sink.write(
          indexPage(
            entries,
            progressSection(rows, words) + (pair ? compareSection(first, second, words) : ''),
            words,
          ),
        );
      },
    },
  };
}

async function nothing(): Promise<void> {}

/** `03-weld.wav.html` */
const pageName = (index: number, path: string): string =>
  `${numberedName(index + 1, 2, basename(path))}.html`;

/** One writer that hands everything to several. */
export function together(...writers: readonly Writer[]): Writer {
  const all = async (act: (writer: Writer) => Promise<void>): Promise<void> => {
    for (const writer of writers) await act(writer);
  };
  return {
    begin: () => all((writer) => writer.begin()),
    result: (one) => all((writer) => writer.result(one)),
    end: () => all((writer) => writer.end()),
  };
}
