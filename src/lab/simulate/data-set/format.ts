import type { Mode, RunMode } from '../../../core/index.js';
import type { SoundChain } from '../devices/degrade.js';
import type { ArcScenario } from '../scenario.js';
import type { AcousticScenario } from '../sound/acoustic.js';
import type { HeardMode } from '../sound/audibility/heard.js';
import type { EventKind } from '../sound/event-kinds.js';

/**
 * The form of a data set: drawn arcs, and drawn sounds without an arc, for programs that learn from them.
 *
 * ```
 * <folder>/
 *   data-set.json       what was asked for ({@link DataSetHead})
 *   recipe.json         how a recording spoils a sound: room, noise, microphone, gain control, clipping,
 *                       suppression, lossy coding; each parameter with the range it is drawn from
 *   arcs-00000/         a shard of at most 32 arcs, some 32 MB: `perShard` in data-set.json
 *     truth.jsonl       one line of JSON an arc ({@link ArcLine}), in the order of their numbers
 *     sound.npy         float16, one dimension: the dry sounds, one after the other
 *     parts.npy         float16, one dimension: the sound of each kind of event by itself
 *     traces.npy        int16, one dimension: voltage and current in steps of the logger
 *     events.npy        float32, n × 4: kind (0 short, 1 re-ignition, 2 drop, 3 pulse), time in s, size, strength
 *   others-00000/       a shard of as many sounds without an arc
 *     truth.jsonl       one line a sound ({@link OtherLine})
 *     sound.npy         float16, one dimension
 * ```
 *
 * All `.npy` files are version 1.0, little-endian, C order; NumPy reads them with `numpy.load(path,
 * mmap_mode="r")`. A line of `truth.jsonl` says where its samples lie as `{ "offset", "length" }`, counted in
 * samples (in rows for `events.npy`), from 0. A shard whose folder stands under its own name is whole: it is
 * written under `<name>.part` and renamed at the end. The same seed gives the same bytes for any number of
 * workers, and an arc does not depend on how many others are drawn.
 *
 * **Dry sound** is the pressure in free air at the microphone, before room, noise and device, at `soundRateHz`
 * (16,000), band-limited to some 7 kHz, scaled so that its rms is 1 while the arc burns (the whole sound where it
 * never burns): level carries nothing. `paPerUnit` brings back pascals. Several sounds of one arc (`sounds`)
 * differ in all that is not the arc's own doing: hiss, spatter, resonances, distance, how its events sound.
 *
 * **Parts.** `parts` holds, for each kind of event that makes any sound, its sound by itself: same length, same
 * unit, same start as the sound it is part of. What is left, `sound − sum of parts`, is hiss, spatter, gas,
 * feeder and the arc's own unrest. Room, microphone tilt and background noise are linear: putting a part and
 * what is left through the same filters, and adding the noise to what is left, gives what `audibility` asks for.
 *
 * **Times** are seconds from the first sample, of sound, traces and events alike, half-open. The sound is late
 * by `distanceM / 343` s. Size in `events.npy`: metal handed over in mm³ for a re-ignition, diameter in mm for
 * a drop, rise of the current in A for a pulse, 0 for a contact. Strength is the steepest rise of arc power about
 * the event, 1 for 5 kW within 0.1 ms. The time of a pulse is where its current has risen half way.
 *
 * **Traces** are voltage and current as a logger stored them, at `traces.rateHz`: `volts = code · voltsPerUnit`,
 * `amperes = code · amperesPerUnit`.
 *
 * Simulated and invented: not evidence about real arcs.
 */
export const DATA_SET_FORMAT = 'arc-transfer data set 1';

/** Samples of one series in a file of the shard: the first, and how many. */
export interface Span {
  offset: number;
  length: number;
}

/** `data-set.json`. */
export interface DataSetHead {
  format: typeof DATA_SET_FORMAT;
  /** Version of the program that drew it. */
  version: string;
  seed: number;
  arcs: number;
  others: number;
  /** Sounds drawn for each arc. */
  soundsPerArc: number;
  /** Seconds from trigger to release: drawn between the two. */
  arcS: readonly [number, number];
  soundRateHz: number;
  /** Arcs or sounds in a shard; the last one may hold fewer. */
  perShard: number;
  /** Whether `traces.npy` is written. */
  traces: boolean;
}

/** One arc: a line of `arcs-…/truth.jsonl`. Null stands for a figure that does not exist. */
export interface ArcLine {
  index: number;
  /** Families of assumptions, for holding one out. */
  family: string;
  /** Mode aimed at; `mode` is what the metal did. */
  aim: Mode;
  mode: RunMode | null;
  /** One mode carried the metal and its drops are not near a boundary. */
  unambiguous: boolean;
  /** Share of the metal by mode. */
  shares: Record<Mode, number>;
  durationS: number;
  /** Where the arc process runs, shorts included. */
  arcOn: { startS: number; endS: number }[];
  /** Arc intervals of constant settings and what crossed in them. */
  segments: { startS: number; endS: number; mode: Mode }[];
  events: EventSummary & { rows: Span };
  setup: SetupLine;
  sounds: SoundLine[];
  /** Null where traces were not asked for. */
  traces: {
    rateHz: number;
    voltage: Span;
    current: Span;
    voltsPerUnit: number;
    amperesPerUnit: number;
  } | null;
  /** All numbers the arc was drawn with. */
  scenario: ArcScenario;
}

/** What happened, in figures over the time the arc burnt. */
export interface EventSummary {
  shortsPerS: number;
  dropsPerS: number;
  pulsesPerS: number;
  /** Mean diameter of free drops, weighted by volume, over that of the wire; null without free drops. */
  meanDropRatio: number | null;
  /** Null where the source does not pulse. */
  dropsPerPulse: number | null;
}

export interface SetupLine {
  material: string;
  wireDiameterMm: number;
  feedMPerMin: number;
  gasGroup: string;
  co2Percent: number;
  o2Percent: number;
  contactDistanceMm: number;
  source: string;
  /** Mean of the measured voltage and current while the arc burnt. */
  meanV: number;
  meanA: number;
}

/** One dry sound of an arc. */
export interface SoundLine extends Span {
  /** Family of assumptions about the sound. */
  family: string;
  paPerUnit: number;
  /** Where the sound of each kind of event lies in `parts.npy`; kinds without any sound are absent. */
  parts: Partial<Record<EventKind, Span>>;
  /** How well each kind stands out of the dry sound (`audibility`); absent kinds have no events. */
  audible: Partial<Record<EventKind, AudibleLine>>;
  /** What an ideal listener could say of the dry sound: `free-flight` where drops are there but not heard. */
  heard: HeardMode | null;
  /** All numbers the sound was drawn with. */
  acoustics: AcousticScenario;
  /** One drawn way to a recording, in full: a draw of `recipe.json`. */
  chain: SoundChain;
}

export interface AudibleLine {
  /** Distance of the ideal listener's two distributions, in standard deviations; see `audibility`. */
  dPrime: number;
  /** Energy of the events over everything else while the arc burns, dB, by listening band; null for none. */
  overRestDb: (number | null)[];
}

/** A sound without an arc: a line of `others-…/truth.jsonl`. */
export interface OtherLine extends Span {
  index: number;
  kind: string;
  durationS: number;
  /** Switched on and off with these edges; null where it lasts from end to end. */
  switched: SwitchLine | null;
  /** Level that the samples, of rms 1, are to be given, dB of full scale. */
  levelDb: number;
  /** One drawn way to a recording, in full. */
  chain: SoundChain;
}

/** From `restDb` under its level up within `riseS` from `onS` on, and down again by `offS` within `fallS`. */
export interface SwitchLine {
  onS: number;
  offS: number;
  riseS: number;
  fallS: number;
  restDb: number;
}
