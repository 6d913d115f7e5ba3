import { maximumMatching } from './matching.js';

/** A stretch of time under one label. */
export interface Span {
  startS: number;
  endS: number;
  label: string;
}

/** Sums from which segment scores of any set of runs are made. */
export interface SpanCounts {
  /** Labelled time, and the part of it in which the same was found. */
  labelledS: number;
  rightS: number;
  /** Segments of the truth, of the answer, and pairs that match. */
  truths: number;
  founds: number;
  matches: number;
  /** Changes of label within labelled time, and pairs that match. */
  truthEdges: number;
  foundEdges: number;
  edgeMatches: number;
}

export interface SpanRules {
  /** Least overlap of a matching pair: time in both over time in either. */
  overlap: number;
  /** Furthest distance of matching changes, s. */
  toleranceS: number;
  /** Label that claims nothing; such found segments are not counted as answers. */
  silent: string;
}

/** Labelled parts closer than this belong together, s: people leave hair cracks between segments. */
const CRACK_S = 0.05;

/**
 * Compares found segments with the truth within the labelled time only. Segments match when they bear
 * one label and overlap enough, changes when they are near enough; both are paired by a maximum matching.
 * @param truth in order of time, without overlap
 * @param found tiling at least the labelled time, in order
 */
export function countSpans(
  truth: readonly Span[],
  found: readonly Span[],
  rules: SpanRules,
): SpanCounts {
  const blocks = blocksOf(truth);
  const truths = blocks.flat();
  const answers = blocks.map((block) => cutTo(found, block[0]!.startS, block.at(-1)!.endS));
  const founds = answers.flat().filter((one) => one.label !== rules.silent);
  const right = (one: Span): number =>
    founds.reduce((sum, other) => sum + (one.label === other.label ? shared(one, other) : 0), 0);
  const truthEdges = blocks.flatMap(edgesOf);
  const foundEdges = answers.flatMap(edgesOf);
  return {
    labelledS: truths.reduce((sum, one) => sum + one.endS - one.startS, 0),
    rightS: truths.reduce((sum, one) => sum + right(one), 0),
    truths: truths.length,
    founds: founds.length,
    matches: maximumMatching(
      truths,
      founds,
      (a, b) => a.label === b.label && overlapOf(a, b) >= rules.overlap,
    ),
    truthEdges: truthEdges.length,
    foundEdges: foundEdges.length,
    edgeMatches: maximumMatching(
      truthEdges,
      foundEdges,
      (a, b) => Math.abs(a - b) <= rules.toleranceS + 1e-9,
    ),
  };
}

/** Parts of labelled time without a gap, neighbours of one label joined. */
function blocksOf(spans: readonly Span[]): Span[][] {
  const blocks: Span[][] = [];
  for (const span of spans) {
    const block = blocks.at(-1);
    const last = block?.at(-1);
    if (!block || !last || span.startS - last.endS > CRACK_S) blocks.push([{ ...span }]);
    else if (last.label === span.label) last.endS = span.endS;
    else {
      last.endS = span.startS;
      block.push({ ...span });
    }
  }
  return blocks;
}

function cutTo(spans: readonly Span[], fromS: number, toS: number): Span[] {
  const cut = spans.flatMap((span) => {
    const startS = Math.max(fromS, span.startS);
    const endS = Math.min(toS, span.endS);
    return endS > startS ? [{ ...span, startS, endS }] : [];
  });
  return blocksOf(cut).flat();
}

const edgesOf = (block: readonly Span[]): number[] => block.slice(1).map((one) => one.startS);

function shared(a: Span, b: Span): number {
  return Math.max(0, Math.min(a.endS, b.endS) - Math.max(a.startS, b.startS));
}

function overlapOf(a: Span, b: Span): number {
  const both = shared(a, b);
  return both / (a.endS - a.startS + b.endS - b.startS - both);
}
