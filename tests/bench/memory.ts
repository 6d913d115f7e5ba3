/**
 * Memory of `watch` over simulated hours, on every source it has: bytes to samples alone, and the whole way with
 * welds judged. Heap and array buffers are taken after a collection at tenths of the time. The least of the last three
 * may be no more than 2 MB above the least of the third to fifth, plus 1 MB an hour. Exit status 1 where it grows.
 *
 * Arguments: hours of the whole way (default 0.1), hours of the sources alone (default 1), one source by name.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { Observer } from '../../src/apps/watch/events.js';
import { Session } from '../../src/apps/watch/session.js';
import type { LiveItem } from '../../src/apps/watch/sources/types.js';
import { ndjsonView } from '../../src/apps/watch/view/ndjson.js';
import { type Open, SOURCES } from './memory/sources.js';
import { sayFigure } from './support/figure.js';

const [wholeHours = 0.1, aloneHours = 1] = process.argv.slice(2, 4).map(Number);
const only = process.argv[4];

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** Allowed growth over four tenths of the time, MB. */
const allowedMb = (hours: number): number => 2 + 0.4 * hours;

class Gauge {
  readonly #stepS: number;
  readonly heldMb: number[] = [];
  constructor(hours: number) {
    this.#stepS = (hours * 3600) / 10;
  }

  at(timeS: number): void {
    if (timeS < this.heldMb.length * this.#stepS) return;
    // Buffers are given back some time after the collection that finds them free.
    let least = Number.POSITIVE_INFINITY;
    for (let again = 0; again < 4; again++) {
      collect();
      const { heapUsed, arrayBuffers } = process.memoryUsage();
      least = Math.min(least, heapUsed + arrayBuffers);
    }
    this.heldMb.push(Number((least / 1e6).toFixed(1)));
  }

  /** MB over four tenths of the time; blocks that are at hand at one moment and not at another do not count. */
  get grownMb(): number {
    const least = (from: number): number => Math.min(...this.heldMb.slice(from, from + 3));
    return Number((least(7) - least(3)).toFixed(1));
  }
}

/** Ends the source once `hours` have come: those that reconnect would go on. */
async function alone(open: Open, hours: number, gauge: Gauge, folder: string): Promise<number> {
  const { source, close } = await open(hours, folder);
  const abort = new AbortController();
  let [rateHz, samples, gaps] = [1, 0, 0];
  for await (const item of source.items(abort.signal) as AsyncIterable<LiveItem>) {
    if (item.type === 'format') rateHz = item.format.sampleRateHz;
    if (item.type === 'gap') gaps++;
    if (item.type === 'samples') samples += item.channels[0]!.length;
    gauge.at(samples / rateHz);
    if (samples / rateHz >= 0.9999 * hours * 3600 || gaps > 0) abort.abort();
  }
  await close();
  return samples / rateHz;
}

async function whole(open: Open, hours: number, gauge: Gauge, folder: string) {
  const { source, options, close } = await open(hours, folder);
  const abort = new AbortController();
  const look: Observer = {
    tell({ event, timeS }) {
      gauge.at(timeS);
      if (timeS >= 0.9999 * hours * 3600 || event === 'gap') abort.abort();
    },
  };
  const session = new Session(source, options, [ndjsonView(async () => {}), look], 1);
  await session.run(abort.signal);
  await close();
  return session.state.timeS;
}

let mostMb = 0;
const ways = [
  ['alone', alone, aloneHours],
  ['whole', whole, wholeHours],
] as const;
for (const [name, open] of Object.entries(SOURCES)) {
  if (only !== undefined && only !== name) continue;
  for (const [way, run, hours] of ways) {
    if (!(hours > 0)) continue;
    const folder = mkdtempSync(join(tmpdir(), 'arc-memory-'));
    const gauge = new Gauge(hours);
    const startMs = performance.now();
    const cameS = await run(open, hours, gauge, folder);
    rmSync(folder, { recursive: true, force: true });
    const tookS = Math.round((performance.now() - startMs) / 1000);
    mostMb = Math.max(mostMb, ...gauge.heldMb);
    const few = gauge.heldMb.length < 10 || cameS < 0.97 * hours * 3600;
    const grows = gauge.grownMb > allowedMb(hours);
    if (few || grows) process.exitCode = 1;
    const said = few ? `ONLY ${Math.round(cameS)} s CAME` : grows ? 'GROWS' : 'flat';
    console.log(
      `${name.padEnd(11)} ${way} ${hours} h in ${tookS} s: ${gauge.heldMb.join(' ')} MB, ` +
        `${gauge.grownMb} MB grown: ${said}`,
    );
  }
}
sayFigure({ name: 'watch, memory at most', value: mostMb, unit: 'MB', better: 'less' });
// A source whose other end waits for ever is no reason to stay.
process.exit();
