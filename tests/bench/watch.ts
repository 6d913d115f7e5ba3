/**
 * What watching live costs and how late it is, on simulated arcs: delay from a change of mode to the
 * provisional and the confirmed answer and to the alarm, false alarms an hour, departures missed, CPU share of
 * one core, and memory over simulated hours. Arguments: runs a mode (default 6), hours of memory (default 24).
 */

import {
  DepartureWatch,
  defaultSettings,
  extractorFor,
  type LiveEvent,
  type LiveFormat,
  LiveStream,
} from '../../src/analysis/index.js';
import { createRandom, MODES, type Mode } from '../../src/core/index.js';
import { concat } from '../../src/dsp/index.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import {
  type ArcRun,
  drawAcoustics,
  drawScenario,
  POWER_FAMILIES,
  simulateArc,
  simulateSound,
} from '../../src/lab/simulate/index.js';
import { parseModel } from '../../src/model/parse/index.js';
import { parseSetup } from '../../src/setup/index.js';

const RUNS = Number(process.argv[2] ?? 6);
const HOURS = Number(process.argv[3] ?? 24);
const TRACE_HZ = 10_000;
const SOUND_HZ = 44_100;
/** Of each arc, this much is spliced or watched, s; the start is left out. */
const PART_S = 5;
const FAMILIES = ['capillary', 'necking', 'empirical', 'dynamic'];
const settings = defaultSettings();
const TOLERATE_S = 0.5;
const ALARM_S = 1;
/** A name that is taken back sooner is none. */
const HELD_S = 0.5;

interface Part {
  mode: Mode;
  /** Where it was heard: arcs of one booth turn into each other. */
  booth: number;
  channels: Float64Array[];
}

const format = (kind: 'sound' | 'electrical', sampleRateHz: number): LiveFormat => ({
  kind,
  format: 'bench',
  sampleRateHz,
  channels:
    kind === 'sound'
      ? [{ name: '1', quantity: 'sound', unit: 'full-scale' }]
      : [
          { name: 'u', quantity: 'voltage', unit: 'V' },
          { name: 'i', quantity: 'current', unit: 'A' },
        ],
  notes: [],
});

async function stream(of: LiveFormat): Promise<LiveStream> {
  const extractor = extractorFor(of, true);
  const model = parseModel(await loadShippedModel(extractor.featureSet.id), extractor.featureSet);
  const rest = { settings, setup: parseSetup({}), path: 'bench', host: 'node', offsetS: 0 };
  return new LiveStream({ extractor, format: of, model, ...rest });
}

function cut(samples: Float64Array, rateHz: number, fromS: number): Float64Array {
  return samples.slice(Math.round(fromS * rateHz), Math.round((fromS + PART_S) * rateHz));
}

/** Steady arc of one unambiguous mode: traces, and the same arc as heard in a booth with noise 25 dB below. */
function draw(
  mode: Mode,
  index: number,
  booth: number,
): { electrical: Part; sound: Part } | undefined {
  const random = createRandom(`watch bench ${mode} ${index}`);
  const family = FAMILIES[index % FAMILIES.length]!;
  const scenario = { ...drawScenario(random, { mode, family, arcS: PART_S + 2 }) };
  const run: ArcRun = simulateArc({ ...scenario, electricalRateHz: TRACE_HZ });
  if (run.truth.mode !== mode || !run.truth.unambiguous) return undefined;
  const fromS = run.truth.arcOn[0]!.startS + 1;
  const acoustic = drawAcoustics(createRandom(`booth ${booth}`), {
    family: POWER_FAMILIES[booth % POWER_FAMILIES.length]!,
    rateHz: SOUND_HZ,
  });
  const heard = cut(simulateSound(run, acoustic), SOUND_HZ, fromS);
  const rms = Math.sqrt(heard.reduce((sum, x) => sum + x * x, 0) / heard.length);
  const noise = random.fork('noise');
  // One gain for all, so that a change of mode is heard as loud as it is.
  const sound = heard.map((x) => x * 0.02 + rms * 0.02 * 0.056 * noise.normal());
  const electrical = [cut(run.voltageV, TRACE_HZ, fromS), cut(run.currentA, TRACE_HZ, fromS)];
  return {
    electrical: { mode, booth, channels: electrical },
    sound: { mode, booth, channels: [sound] },
  };
}

function pushAll(live: LiveStream, channels: readonly Float64Array[], piece: number): LiveEvent[] {
  const events: LiveEvent[] = [];
  for (let at = 0; at < channels[0]!.length; at += piece)
    events.push(...live.push(channels.map((samples) => samples.subarray(at, at + piece))));
  return events;
}

/** When, after a change, the new mode was named and then stayed so for half a second; NaN for never. */
async function changeDelays(of: LiveFormat, from: Part, to: Part) {
  const live = await stream(of);
  const watch = new DepartureWatch(
    { mode: from.mode, tolerateS: TOLERATE_S, alarmAfterS: ALARM_S },
    settings.craterMaskS,
  );
  const channels = from.channels.map((samples, c) => concat([samples, to.channels[c]!]));
  const piece = Math.round(of.sampleRateHz / 50);
  const found = { provisional: Number.NaN, confirmed: Number.NaN, alarm: Number.NaN, early: 0 };
  const since = { provisional: Number.NaN, confirmed: Number.NaN };
  for (const event of pushAll(live, channels, piece)) {
    if (event.type !== 'now' && event.type !== 'window') continue;
    const lateS = event.timeS - PART_S;
    const alarm =
      event.type === 'window' && event.steady
        ? watch.push(event.timeS, event.hopS, event.belief, event.rateHz)
        : [];
    if (alarm.some((one) => one.type === 'alarm')) {
      if (lateS < 0) found.early++;
      else if (Number.isNaN(found.alarm)) found.alarm = lateS - ALARM_S;
    }
    if (lateS < 0 || event.type !== 'now') continue;
    for (const stage of ['provisional', 'confirmed'] as const) {
      if (event.modes[stage]?.mode !== to.mode) since[stage] = Number.NaN;
      else if (Number.isNaN(since[stage])) since[stage] = lateS;
      const held = lateS - since[stage] >= HELD_S - 1e-9;
      if (Number.isNaN(found[stage]) && held) found[stage] = since[stage];
    }
  }
  return found;
}

/** Alarms and wrong names in steady arc that is in the expected mode throughout. */
async function falseAlarms(of: LiveFormat, part: Part) {
  const live = await stream(of);
  const expectation = { mode: part.mode, tolerateS: TOLERATE_S, alarmAfterS: ALARM_S };
  const watch = new DepartureWatch(expectation, settings.craterMaskS);
  let alarms = 0;
  const names: (Mode | null)[] = [];
  for (const event of pushAll(live, part.channels, 1000)) {
    if (event.type === 'now') names.push(event.modes.provisional.mode);
    if (event.type === 'window' && event.steady)
      for (const one of watch.push(event.timeS, event.hopS, event.belief, event.rateHz))
        if (one.type === 'alarm') alarms++;
  }
  const weld = live.flush().find((event) => event.type === 'weld');
  const wrong = names.filter((mode) => mode !== null && mode !== part.mode).length;
  const changes = names.filter((mode, i) => i > 0 && mode !== names[i - 1]).length;
  return { alarms, judged: weld?.result.mode === part.mode, wrong: wrong / names.length, changes };
}

function quantile(values: readonly number[], share: number): number | null {
  const sorted = values.map((one) => (Number.isNaN(one) ? Infinity : one)).sort((a, b) => a - b);
  const value = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return value === undefined || value === Infinity ? null : Number(value.toFixed(2));
}

async function accuracy(of: LiveFormat, parts: readonly Part[]) {
  const delays: Awaited<ReturnType<typeof changeDelays>>[] = [];
  for (const from of parts) {
    // Each arc turns into that of every other mode in its booth.
    for (const mode of MODES) {
      const to = parts.find((one) => one.mode === mode && one.booth === from.booth);
      if (to && mode !== from.mode) delays.push(await changeDelays(of, from, to));
    }
  }
  let [alarms, alarmsInJudged, judgedArcs, wrong, changes] = [0, 0, 0, 0, 0];
  const alarming: string[] = [];
  for (const part of parts) {
    const found = await falseAlarms(of, part);
    alarms += found.alarms;
    wrong += found.wrong / parts.length;
    changes += found.changes;
    if (found.judged) {
      judgedArcs++;
      alarmsInJudged += found.alarms;
    }
    if (found.alarms > 0) alarming.push(part.mode);
  }
  const hours = (parts.length * PART_S) / 3600;
  const summary = (key: 'provisional' | 'confirmed' | 'alarm') => ({
    median: quantile(
      delays.map((one) => one[key]),
      0.5,
    ),
    p95: quantile(
      delays.map((one) => one[key]),
      0.95,
    ),
    never: delays.filter((one) => Number.isNaN(one[key])).length,
  });
  return {
    changes: delays.length,
    provisionalS: summary('provisional'),
    confirmedS: summary('confirmed'),
    alarmBeyondAlarmAfterS: summary('alarm'),
    missedDepartures: delays.filter((one) => Number.isNaN(one.alarm) && one.early === 0).length,
    steadyArcs: parts.length,
    steadyHours: Number(hours.toFixed(4)),
    /** Provisional names in those. */
    wrongShareOfTime: Number(wrong.toFixed(3)),
    changesAMinute: Number((changes / 60 / hours).toFixed(1)),
    falseAlarms: alarms,
    /** Of arcs whose finished weld was named rightly: what is left is flicker, not a wrong model. */
    arcsNamedRightly: judgedArcs,
    falseAlarmsInThose: alarmsInJudged,
    falseAlarmsIn: alarming,
  };
}

async function cpuShare(of: LiveFormat, part: Part): Promise<number> {
  const live = await stream(of);
  pushAll(live, part.channels, 1024);
  const before = process.cpuUsage();
  for (let i = 0; i < 6; i++) pushAll(live, part.channels, 1024);
  const used = process.cpuUsage(before);
  const seconds = (6 * part.channels[0]!.length) / of.sampleRateHz;
  return Number(((used.user + used.system) / 1e6 / seconds).toFixed(4));
}

/** Heap after a collection while welds of 5 s with pauses of 5 s go through, at speed. */
async function memory(of: LiveFormat, part: Part) {
  const live = await stream(of);
  const pause = part.channels.map((samples) => new Float64Array(samples.length));
  const rounds = Math.round((HOURS * 3600) / (2 * PART_S));
  const heaps: number[] = [];
  let welds = 0;
  const collect = (globalThis as { gc?: () => void }).gc;
  for (let i = 0; i <= rounds; i++) {
    for (const channels of [part.channels, pause])
      for (const event of pushAll(live, channels, 4096)) if (event.type === 'weld') welds++;
    if (i % Math.ceil(rounds / 8) !== 0) continue;
    collect?.();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    heaps.push(Number(((heapUsed + arrayBuffers) / 1e6).toFixed(1)));
  }
  const peakMb = Math.round(process.resourceUsage().maxRSS / 1024);
  return { hours: HOURS, welds, collected: collect !== undefined, heapMbOverTime: heaps, peakMb };
}

const electrical: Part[] = [];
const sound: Part[] = [];
for (const mode of MODES) {
  for (let index = 0, kept = 0; kept < RUNS && index < 8 * RUNS; index++) {
    const drawn = draw(mode, index, kept);
    if (!drawn) continue;
    kept++;
    electrical.push(drawn.electrical);
    sound.push(drawn.sound);
  }
}
const trace = format('electrical', TRACE_HZ);
const heard = format('sound', SOUND_HZ);
const say = (name: string, value: unknown): void => console.log(JSON.stringify({ [name]: value }));
say('voltageAndCurrent', await accuracy(trace, electrical));
say('sound', await accuracy(heard, sound));
// The same samples, stated as 50 kHz: the cost goes by their number.
const fast = format('electrical', 50_000);
const long = electrical[0]!.channels.map((samples) =>
  Float64Array.from({ length: 250_000 }, (_, i) => samples[Math.floor(i / 5)]!),
);
say('cpuShare', {
  sound44k: await cpuShare(heard, sound[0]!),
  twoChannels50k: await cpuShare(fast, { mode: 'spray', booth: 0, channels: long }),
});
say('memory', await memory(trace, electrical[0]!));
