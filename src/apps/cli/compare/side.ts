import { readFile } from 'node:fs/promises';
import type { RateTrack } from '../../../analysis/compare/index.js';
import { type Result, resultSchema } from '../../../analysis/result/index.js';
import { ArcError } from '../../../core/index.js';
import { openFileSource } from '../../../files/file-source.js';
import type { RunView } from '../../report/index.js';
import { classifyOne, type Job } from '../../terminal/judge/classify-one.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { type EvidenceEngine, withEvidence } from '../report/with-evidence.js';
import { RateCollector } from './rate-collector.js';

/** One of the two things compared. */
export interface Side {
  result: Result;
  /** Null for a result document: it holds no rates by window. */
  track: RateTrack | null;
  /** What a page can show of it: words alone of a result document. */
  view: RunView;
}

/** Where nothing is drawn: the engine as it is, and a view of words alone. */
const undrawn = (engine: Engine): EvidenceEngine => ({ ...engine, take: wordsOf });

const wordsOf = (result: Result): RunView => ({
  result,
  evidence: null,
  placement: null,
  modelCard: {},
});

/** A recording is analysed; a file that begins with a brace is taken for a result document. `drawn`: pictures are wanted. */
export async function readSide(path: string, job: Job, drawn = false): Promise<Side> {
  if (await beginsWithBrace(path)) {
    const result = await readDocument(path);
    return { result, track: null, view: wordsOf(result) };
  }
  let collector: RateCollector | undefined;
  const engine = drawn ? withEvidence(job.engine) : undrawn(job.engine);
  const result = await classifyOne(
    { path, origin: 'named' },
    {
      ...job,
      engine: {
        ...engine,
        analyse: (recording, options) => {
          collector = new RateCollector(recording);
          return engine.analyse(recording, { ...options, onEvent: (one) => collector?.take(one) });
        },
      },
    },
  );
  if (result === undefined) throw notComparable(path, 'it is no recording');
  return { result, track: collector?.track ?? null, view: engine.take(result) };
}

/** False for what cannot be opened: the reading then says why. */
async function beginsWithBrace(path: string): Promise<boolean> {
  const source = await openFileSource(path).catch(() => undefined);
  if (source === undefined) return false;
  try {
    const bytes = await source.read(0, 64);
    return new TextDecoder().decode(bytes).trimStart().startsWith('{');
  } finally {
    await source.close();
  }
}

async function readDocument(path: string): Promise<Result> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(await readFile(path, 'utf8'));
  } catch (cause) {
    throw notComparable(path, 'it is not one JSON document', cause);
  }
  const checked = resultSchema.safeParse(parsed);
  if (checked.success) return checked.data;
  throw notComparable(path, 'it is JSON, but not a result of this tool');
}

function notComparable(path: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'not-comparable',
    what: `${path} cannot be compared: ${why}.`,
    expected: 'a recording, or one result document written by classify --json',
    todo: 'Name two recordings, or two results of one recording each.',
    cause,
  });
}
