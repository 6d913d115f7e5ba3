import { mkdir } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import type { Result } from '../../../analysis/result/index.js';
import {
  compareSection,
  type IndexEntry,
  indexEntry,
  indexPage,
  type RunView,
  runPage,
} from '../../report/index.js';
import { fileSink, type Sink } from '../../terminal/sink.js';
import type { Words } from '../../view/index.js';
import type { Writer } from '../classify/writer.js';
import type { EvidenceEngine } from './with-evidence.js';

export interface PageWriterOptions {
  out: string;
  overwrite: boolean;
  /** More than one input: an index, and a folder beside it with a page a run. */
  several: boolean;
  script: string;
  words: Words;
}

/** Writes results as pages, each as soon as it is there; nothing appears under its name half-written. */
export async function createPageWriter(
  engine: EvidenceEngine,
  options: PageWriterOptions,
): Promise<{ writer: Writer; sink: Sink }> {
  const { out, overwrite, script, words } = options;
  const sink = await fileSink(out, overwrite);
  if (!options.several) {
    const result = (one: Result): Promise<void> =>
      sink.write(runPage(engine.take(one), script, undefined, words));
    return { sink, writer: { begin: nothing, result, end: nothing } };
  }
  const folder = join(dirname(out), `${basename(out, extname(out))}-runs`);
  const entries: IndexEntry[] = [];
  const firstTwo: RunView[] = [];
  return {
    sink,
    writer: {
      begin: async () => {
        await mkdir(folder, { recursive: true });
      },
      result: async (one) => {
        const view = engine.take(one);
        const name = pageName(entries.length, one.source.path);
        const page = await fileSink(join(folder, name), overwrite);
        const up = `../${encodeURIComponent(basename(out))}`;
        await page.write(runPage(view, script, up, words));
        await page.close(true);
        entries.push(indexEntry(view, `${encodeURIComponent(basename(folder))}/${name}`));
        // Two runs are set side by side; with more, their evidence need not be kept.
        if (entries.length <= 2) firstTwo.push(view);
        else firstTwo.length = 0;
      },
      end: async () => {
        const [first, second] = firstTwo;
        const pair = entries.length === 2 && first && second;
        await sink.write(
          indexPage(entries, pair ? compareSection(first, second, words) : '', words),
        );
      },
    },
  };
}

async function nothing(): Promise<void> {}

/** `03-weld.html`: the number keeps equal names apart, and only plain characters of the name stay. */
function pageName(index: number, path: string): string {
  const plain = basename(path)
    .replaceAll(/[^A-Za-z0-9._-]+/g, '-')
    .replace(/^[.-]+/, '')
    .slice(0, 60);
  return `${String(index + 1).padStart(2, '0')}-${plain || 'run'}.html`;
}

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
