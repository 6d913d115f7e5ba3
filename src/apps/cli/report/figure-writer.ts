import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ArcError, didYouMean } from '../../../core/index.js';
import { FIGURES, figureFile, type RunView, runPage } from '../../report/index.js';
import { fileSink, type Sink } from '../../terminal/sink.js';
import type { Words } from '../../view/index.js';
import type { Writer } from '../classify/writer.js';
import { findBrowser, printPage } from './browser.js';
import type { EvidenceEngine } from './with-evidence.js';

export const FIGURE_FORMATS = ['svg', 'png', 'pdf'] as const;
export type FigureFormat = (typeof FIGURE_FORMATS)[number];

export interface FigureWriterOptions {
  out: string;
  overwrite: boolean;
  format: FigureFormat;
  /** Name of the figure; null for the whole page as PDF. */
  figure: string | null;
  browser: string | undefined;
  script: string;
  words: Words;
}

/**
 * Writes one figure of one run, or its whole page as PDF.
 * @throws ArcError `bad-figure`, `no-browser` before anything is read; later `figure-not-shown`, `browser-failed`
 */
export async function createFigureWriter(
  engine: EvidenceEngine,
  options: FigureWriterOptions,
): Promise<{ writer: Writer; sink: Sink }> {
  const { format, figure, script, words } = options;
  if (figure !== null) checkName(figure);
  const browser = format === 'svg' ? '' : await findBrowser(options.browser);
  const sink = await fileSink(options.out, options.overwrite);
  const nothing = async (): Promise<void> => {};
  return {
    sink,
    writer: {
      begin: nothing,
      end: nothing,
      result: async (result) => {
        const view = engine.take(result);
        if (figure === null) {
          await sink.write(
            await printed(browser, runPage(view, script, undefined, words), { kind: 'pdf' }),
          );
          return;
        }
        const svg = figureFile(drawn(view, figure, words));
        if (format === 'svg') await sink.write(svg);
        else await sink.write(await printed(browser, ...framed(svg, format)));
      },
    },
  };
}

function checkName(figure: string): void {
  const names: string[] = FIGURES.map((one) => one.name);
  if (names.includes(figure)) return;
  throw new ArcError({
    code: 'bad-figure',
    what: `There is no figure "${figure}".${didYouMean(figure, names)}`,
    expected: `one of ${names.join(', ')}`,
    todo: 'Name one of these with --figure.',
  });
}

function drawn(view: RunView, figure: string, words: Words): string {
  const svg = FIGURES.find((one) => one.name === figure)?.draw(view, 'figure', words);
  if (svg) return svg;
  const shown = FIGURES.filter((one) => one.draw(view, 'figure', words)).map((one) => one.name);
  throw new ArcError({
    code: 'figure-not-shown',
    what: `${view.result.source.path} does not show "${figure}".`,
    expected: shown.length > 0 ? `one that it shows: ${shown.join(', ')}` : 'a run with an arc',
    todo: 'A sound recording has no pictures of voltage; the place needs a stated set-up.',
  });
}

/** A bare page around a picture, as large as the picture. */
function framed(
  svg: string,
  format: 'png' | 'pdf',
): [html: string, print: Parameters<typeof printPage>[3]] {
  const size = /width="([\d.]+)" height="([\d.]+)"/.exec(svg);
  const [width, height] = [Number(size?.[1] ?? 900), Number(size?.[2] ?? 400)];
  const bare = svg.replace(/^<\?xml[^>]*>\s*/, '');
  const style = `@page{size:${Math.ceil(width)}px ${Math.ceil(height + 2)}px;margin:0}body{margin:0}svg{display:block}`;
  const html = `<!doctype html><meta charset="utf-8"><title>figure</title><style>${style}</style>${bare}`;
  return [html, format === 'png' ? { kind: 'png', width, height } : { kind: 'pdf' }];
}

async function printed(
  browser: string,
  html: string,
  print: Parameters<typeof printPage>[3],
): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'arc-transfer-'));
  try {
    const file = join(folder, `drawn.${print.kind}`);
    await printPage(browser, html, file, print);
    return await readFile(file);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
