/** Parts of a sketch; twice as many are kept while the length is still unknown. */
const SKETCH_PARTS = 60;
const FIRST_VALUES = 5;

/** What is seen of one series in passing. */
export interface SeriesFigures {
  count: number;
  /** Values that are missing or not finite. */
  missing: number;
  first: number[];
  /** NaN when no value is finite. */
  min: number;
  mean: number;
  max: number;
  /** One character for each part of the series, low to high; a blank where there is no value. */
  sketch: string;
}

/** Gathers figures of a series of unknown length in bounded memory. */
export interface FiguresGatherer {
  push(values: Float64Array): void;
  /** `peaks` draws the largest size of each part (sound), otherwise its mean. */
  finish(draw: 'means' | 'peaks'): SeriesFigures;
}

interface Part {
  sum: number;
  peak: number;
  finite: number;
}

export function createFigures(): FiguresGatherer {
  let parts: Part[] = [];
  let perPart = 1;
  let inPart = 0;
  const seen = { count: 0, finite: 0, sum: 0, min: Infinity, max: -Infinity };
  const first: number[] = [];

  const startPart = (): Part => {
    if (parts.length >= 2 * SKETCH_PARTS) {
      parts = mergePairs(parts);
      perPart *= 2;
    }
    const part = { sum: 0, peak: 0, finite: 0 };
    parts.push(part);
    inPart = 0;
    return part;
  };

  return {
    push(values) {
      let part = parts.at(-1) ?? startPart();
      for (const value of values) {
        if (first.length < FIRST_VALUES) first.push(value);
        if (inPart === perPart) part = startPart();
        inPart++;
        seen.count++;
        if (!Number.isFinite(value)) continue;
        seen.finite++;
        seen.sum += value;
        if (value < seen.min) seen.min = value;
        if (value > seen.max) seen.max = value;
        part.sum += value;
        part.finite++;
        const size = Math.abs(value);
        if (size > part.peak) part.peak = size;
      }
    },
    finish(draw) {
      const any = seen.finite > 0;
      const drawn = parts.length > SKETCH_PARTS ? mergePairs(parts) : parts;
      return {
        count: seen.count,
        missing: seen.count - seen.finite,
        first,
        min: any ? seen.min : Number.NaN,
        mean: any ? seen.sum / seen.finite : Number.NaN,
        max: any ? seen.max : Number.NaN,
        sketch: sketch(drawn, draw),
      };
    },
  };
}

function mergePairs(parts: readonly Part[]): Part[] {
  const merged: Part[] = [];
  for (let i = 0; i < parts.length; i += 2) {
    const a = parts[i] as Part;
    const b = parts[i + 1] ?? { sum: 0, peak: 0, finite: 0 };
    merged.push({
      sum: a.sum + b.sum,
      peak: Math.max(a.peak, b.peak),
      finite: a.finite + b.finite,
    });
  }
  return merged;
}

const LEVELS = '▁▂▃▄▅▆▇█';

/** The lowest part gets the lowest bar, the highest the highest; a constant series a middle line. */
function sketch(parts: readonly Part[], draw: 'means' | 'peaks'): string {
  const heights = parts.map((part) => {
    if (part.finite === 0) return Number.NaN;
    return draw === 'peaks' ? part.peak : part.sum / part.finite;
  });
  const finite = heights.filter(Number.isFinite);
  const low = draw === 'peaks' ? 0 : Math.min(...finite);
  const span = Math.max(...finite) - low;
  return heights
    .map((height) => {
      if (!Number.isFinite(height)) return ' ';
      if (!(span > 0)) return draw === 'peaks' ? LEVELS[0] : LEVELS[3];
      return LEVELS[Math.min(7, Math.floor((8 * (height - low)) / span))];
    })
    .join('');
}
