import type { FluctuationSpectrum } from '../view/evidence/index.js';
import { ENGLISH, type Words } from '../view/index.js';
import { intervalsChart, intervalsMost } from './charts/intervals-chart.js';
import { averageShortChart, levelsChart, levelsMost, levelsSpan } from './charts/shape-charts.js';
import { spectrumChart, spectrumSpan } from './charts/spectrum-chart.js';
import { timeFigure } from './charts/time-figure.js';
import { rateLimit, type SharedLimits, traceLimits } from './charts/time-rows.js';
import { escapeHtml } from './escape.js';
import { rhythmHz } from './figures.js';
import type { RunView, TimeRun } from './run-view.js';
import { spectrogramPicture } from './spectrogram-picture.js';

type Shown = RunView & { evidence: NonNullable<RunView['evidence']> };

/** Two runs side by side, every pair of pictures on equal axes. Pictures that only one run shows are left out. */
export function compareSection(first: RunView, second: RunView, words: Words = ENGLISH): string {
  if (!first.evidence || !second.evidence) return '';
  const pair = [first, second] as [Shown, Shown];
  const rows = [
    times(pair, words),
    levels(pair, words),
    shorts(pair, words),
    rhythms(pair, words),
    intervals(pair, words),
  ];
  return `<section id="compare" class="long"><h2>${words.report.compare.heading}</h2>${rows.join('\n')}</section>`;
}

function row(title: string, pair: [Shown, Shown], pictures: string[]): string {
  const figures = pictures.map(
    (svg, k) =>
      `<figure class="card"><figcaption class="file">${escapeHtml(pair[k]!.result.source.path)}</figcaption>${svg}</figure>`,
  );
  return `<h3>${title}</h3><div class="pair">${figures.join('')}</div>`;
}

const timeRun = ({ result, evidence }: Shown): TimeRun => ({
  arcStretches: result.arcStretches,
  segments: result.segments,
  evidence,
});

function times(pair: [Shown, Shown], words: Words): string {
  const durationS = Math.max(...pair.map((one) => one.evidence.durationS));
  const limits: SharedLimits = { durationS, traces: {} };
  for (const quantity of ['sound', 'voltage', 'current'] as const) {
    const both = pair.flatMap(({ evidence }) =>
      evidence.traces.filter((one) => one.quantity === quantity).map(traceLimits),
    );
    if (both.length > 0)
      limits.traces![quantity] = [
        Math.min(...both.map((one) => one[0])),
        Math.max(...both.map((one) => one[1])),
      ];
  }
  limits.rateHz = Math.max(...pair.map((one) => rateLimit(timeRun(one))));
  const pictures = pair.map((one, k) => {
    const { spectrogram } = one.evidence;
    return timeFigure(timeRun(one), {
      width: 360,
      window: { fromS: 0, toS: durationS },
      limits,
      id: `time-${k}`,
      words: words,
      ...(spectrogram ? { spectrogramHref: spectrogramPicture(spectrogram) } : {}),
    });
  });
  return row(words.report.compare.time, pair, pictures);
}

function levels(pair: [Shown, Shown], words: Words): string {
  const both = pair.flatMap(({ evidence }) => evidence.levels ?? []);
  if (both.length < 2) return '';
  const spans = both.map(levelsSpan);
  const shared = {
    most: Math.max(...both.map(levelsMost)),
    span: [Math.min(...spans.map((one) => one[0])), Math.max(...spans.map((one) => one[1]))] as [
      number,
      number,
    ],
  };
  return row(
    words.report.compare.levels,
    pair,
    both.map((one, k) => levelsChart(one, `levels-${k}`, words, shared)),
  );
}

function shorts(pair: [Shown, Shown], words: Words): string {
  const both = pair.flatMap(({ evidence }) => evidence.averageShort ?? []);
  if (both.length < 2) return '';
  const curves = both.map((one) => one.quantities[0]!.curves);
  const shared: [number, number] = [
    Math.min(0, ...curves.map((one) => Math.min(...one.low))),
    1.05 * Math.max(...curves.map((one) => Math.max(...one.high))),
  ];
  return row(
    words.report.compare.short,
    pair,
    both.map((one, k) => averageShortChart(one, 0, `short-${k}`, words, shared)),
  );
}

function rhythms(pair: [Shown, Shown], words: Words): string {
  const both = pair.flatMap(({ evidence }) => evidence.spectrum ?? []);
  if (both.length < 2 || both[0]!.unit !== both[1]!.unit) return '';
  const spans = both.map((one: FluctuationSpectrum) => spectrumSpan(one));
  const shared: [number, number] = [
    Math.min(...spans.map((one) => one[0])),
    Math.max(...spans.map((one) => one[1])),
  ];
  return row(
    words.report.compare.rhythm,
    pair,
    both.map((one, k) =>
      spectrumChart(one, rhythmHz(pair[k]!.result), `rhythm-${k}`, words, shared),
    ),
  );
}

function intervals(pair: [Shown, Shown], words: Words): string {
  const both = pair.flatMap(({ evidence }) => evidence.intervals ?? []);
  if (both.length < 2) return '';
  const most = Math.max(...both.map(intervalsMost));
  return row(
    words.report.compare.intervals,
    pair,
    both.map((one, k) => intervalsChart(one, `intervals-${k}`, words, { most })),
  );
}
