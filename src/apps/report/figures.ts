import type { Result } from '../../analysis/result/index.js';
import { unitOf } from '../../core/index.js';
import { type FigureName, likeliest, type Words } from '../view/index.js';
import { intervalsChart } from './charts/intervals-chart.js';
import { placeChart } from './charts/place-chart.js';
import { planeChart } from './charts/plane-chart.js';
import { reasonChart } from './charts/reason-chart.js';
import { averageShortChart, levelsChart } from './charts/shape-charts.js';
import { spectrumChart } from './charts/spectrum-chart.js';
import { timeFigure } from './charts/time-figure.js';
import { mapChart } from './process-map/svg-map.js';
import type { RunView } from './run-view.js';
import { spectrogramPicture } from './spectrogram-picture.js';

export interface FigureKind {
  /** As named on the command line. */
  name: FigureName;
  /** The picture as SVG for a page; null or undefined where this run does not show it. */
  draw(run: RunView, id: string, words: Words): string | null | undefined;
}

/** Every picture of a run once; page and command line both draw from this list. */
export const FIGURES: readonly FigureKind[] = [
  {
    name: 'time',
    draw: ({ result, evidence }, id, words) => {
      if (!evidence || !(evidence.durationS > 0)) return null;
      const { spectrogram } = evidence;
      return timeFigure(
        { arcStretches: result.arcStretches, segments: result.segments, evidence },
        {
          width: 980,
          window: { fromS: 0, toS: evidence.durationS },
          id,
          words,
          ...(spectrogram ? { spectrogramHref: spectrogramPicture(spectrogram) } : {}),
        },
      );
    },
  },
  {
    name: 'map',
    draw: ({ placement }, id, words) =>
      placement?.map &&
      mapChart(placement.map, id, words.numbers, unitOf('feed', words.units), words.map),
  },
  {
    name: 'place',
    draw: ({ placement }, id, words) => placement && placeChart(placement, id, words),
  },
  {
    name: 'reasons',
    draw: ({ result }, id, words) =>
      result.reasons.length === 0
        ? null
        : reasonChart(result.reasons, likeliest(result), id, words),
  },
  {
    name: 'levels',
    draw: ({ evidence }, id, words) => evidence?.levels && levelsChart(evidence.levels, id, words),
  },
  {
    name: 'plane',
    draw: ({ evidence }, id, words) => evidence?.plane && planeChart(evidence.plane, id, words),
  },
  {
    name: 'short-voltage',
    draw: ({ evidence }, id, words) =>
      evidence?.averageShort && averageShortChart(evidence.averageShort, 0, id, words),
  },
  {
    name: 'short-current',
    draw: ({ evidence }, id, words) =>
      evidence?.averageShort?.quantities[1]
        ? averageShortChart(evidence.averageShort, 1, id, words)
        : null,
  },
  {
    name: 'rhythm',
    draw: ({ evidence, result }, id, words) =>
      evidence?.spectrum && spectrumChart(evidence.spectrum, rhythmHz(result), id, words),
  },
  {
    name: 'intervals',
    draw: ({ evidence }, id, words) =>
      evidence?.intervals && intervalsChart(evidence.intervals, id, words),
  },
];

/** Pictures of shape, in the order of the page. */
export const SHAPE_FIGURES = [
  'levels',
  'plane',
  'short-voltage',
  'short-current',
  'rhythm',
  'intervals',
] as const satisfies readonly FigureName[];

/** One picture by its name; null where this run does not show it. */
export function drawFigure(
  name: FigureName,
  run: RunView,
  id: string,
  words: Words,
): string | null {
  return FIGURES.find((one) => one.name === name)?.draw(run, id, words) ?? null;
}

/** The run's own event rate, by whichever name it goes. */
export function rhythmHz({ features }: Pick<Result, 'features'>): number | null {
  const names = ['eventRateHz', 'shortCircuitRateHz', 'pulseRateHz', 'dropRateHz'] as const;
  return names.map((name) => features[name] ?? null).find((value) => value !== null) ?? null;
}
