import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { analyse, defaultSettings, type LiveEvent } from '../../../src/analysis/index.js';
import { normalised } from '../../../src/lab/simulate/noise/noise-tools.js';
import { parseSetup } from '../../../src/setup/index.js';
import {
  demoTrace,
  liveStream,
  shippedModel,
  type Trace,
  withPauses,
} from '../../support/live-trace.js';

const CASES = [
  { name: 'voltage and current', suffix: 'csv' },
  { name: 'sound', suffix: 'wav' },
];

/** The file's own answer: everything in one push. */
async function wholeFile({ format, channels }: Trace) {
  const blocks = async function* () {
    yield { startSample: 0, channels };
  };
  return analyse(
    { ...format, blocks },
    {
      setup: parseSetup({}),
      settings: defaultSettings(),
      loadModel: shippedModel,
      path: 'test',
      sha256: null,
      host: 'node',
    },
  );
}

async function live({ format, channels }: Trace, chunks: readonly number[]) {
  const stream = await liveStream(format, 0, defaultSettings().arcPrior);
  const events: LiveEvent[] = [];
  const length = channels[0]!.length;
  for (let at = 0, i = 0; at < length; i++) {
    const end = Math.min(length, at + chunks[i % chunks.length]!);
    events.push(...stream.push(channels.map((samples) => samples.slice(at, end))));
    at = end;
  }
  return [...events, ...stream.flush()];
}

/** To 12 digits: sums over blocks of another length round differently in the last ones. */
const rounded = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, one) => (typeof one === 'number' ? one.toPrecision(12) : one)),
  );

const welds = (events: LiveEvent[]) => events.filter((event) => event.type === 'weld');

describe.each(CASES)('$name in any pieces', ({ suffix }) => {
  let trace: Trace;
  let whole: Awaited<ReturnType<typeof wholeFile>>;

  beforeAll(async () => {
    const [one, two] = await Promise.all([
      demoTrace(`short-circuit.${suffix}`),
      // Two modes that are named.
      demoTrace(suffix === 'wav' ? 'globular.wav' : `spray.${suffix}`),
    ]);
    // Sounds of one shop: each recording has a gain of its own.
    const level = (samples: Float64Array) => normalised(samples).map((x) => 0.05 * x);
    const alike = (t: Trace): Trace =>
      suffix === 'wav' ? { ...t, channels: t.channels.map(level) } : t;
    trace = withPauses([alike(one), alike(two)], 1.5);
    whole = await wholeFile(trace);
  });

  // Rejects a live path with windows, masks or edges of its own, one that forgets what spans two
  // pieces, and one that drops the weld still burning at the end.
  it('gives the welds and segments of the whole file', async () => {
    expect(whole.arcStretches.length).toBeGreaterThanOrEqual(2);
    const sizes = fc.array(
      fc.oneof(fc.integer({ min: 64, max: 3000 }), fc.integer({ min: 3000, max: 90_000 })),
      {
        minLength: 1,
        maxLength: 12,
      },
    );
    await fc.assert(
      fc.asyncProperty(sizes, async (chunks) => {
        const found = welds(await live(trace, chunks));
        expect(found.map((one) => one.arcInterval)).toEqual(whole.arcStretches);
        expect(found.flatMap((one) => one.segments)).toEqual(whole.segments);
      }),
      { numRuns: 6, seed: 8 },
    );
  });

  // Rejects figures or verdicts of a weld that depend on the pieces or on the weld before it.
  it('gives each weld the same document for any pieces', async () => {
    const [small, large] = [await live(trace, [777]), await live(trace, [65_536])];
    const documents = (events: LiveEvent[]) =>
      welds(events).map(({ result: { source, quality, ...rest } }) => rounded(rest));
    expect(documents(small)).toEqual(documents(large));
  });

  // Rejects beliefs that depend on the pieces, that outlive their arc, or that begin before it.
  it('believes the same at the same moments for any pieces, and nothing between two arcs', async () => {
    const [small, large] = [await live(trace, [777]), await live(trace, [65_536])];
    const said = (events: LiveEvent[]) =>
      events.filter(({ type }) => !['weld', 'not-a-weld'].includes(type));
    expect(rounded(said(small))).toEqual(rounded(said(large)));
    let burns = false;
    for (const event of said(large)) {
      if (event.type === 'now' || event.type === 'window') expect(burns).toBe(true);
      else burns = event.type === 'arc-start';
    }
    expect(large.filter(({ type }) => type === 'arc-start').length).toBeGreaterThanOrEqual(2);
  });

  // Rejects times that start again at 0 after a gap.
  it('moves all times of a stream that goes on after a gap', async () => {
    const stream = await liveStream(trace.format, 100, defaultSettings().arcPrior);
    const events = [...stream.push(trace.channels), ...stream.flush()];
    const starts = welds(events).map((one) => one.arcInterval.startS);
    expect(starts).toEqual(whole.arcStretches.map((one) => 100 + one.startS));
    expect(stream.timeS).toBeCloseTo(100 + (whole.source.durationS ?? 0), 9);
  });
});
