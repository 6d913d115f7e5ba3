import { EVENT_KINDS, type EventKind } from '../event-kinds.js';
import { type BandEnergies, bandEnergies } from './band-energies.js';
import { type Range, type StandOut, standOut } from './stand-out.js';

/** A sound taken apart: all arrays of one length and rate. Level carries no meaning. */
export interface HeardParts {
  rateHz: number;
  /** Each kind of event by itself; absent or all zero where it makes no sound. */
  events: Partial<Record<EventKind, ArrayLike<number>>>;
  /** Everything else: hiss, spatter, background. */
  rest: ArrayLike<number>;
  /** When the events happen, s from the first sample. The way to the microphone, up to 30 ms, is found here. */
  eventsS: Partial<Record<EventKind, readonly number[]>>;
  /** Where the arc burns; from the first to the last event when left out. */
  startS?: number;
  endS?: number;
}

/** How well the events of one kind stand out, and whether that is enough. */
export interface Audibility extends StandOut {
  /** `dPrime` reaches {@link AUDIBLE_D_PRIME}. */
  isAudible: boolean;
}

/**
 * The margin: an ideal listener who decides half-way between "with" and "without" is wrong in
 * `Φ(−d′/2)` of the cases, 1 % at 4.65 (the normal quantile of 0.99 is 2.326).
 */
export const AUDIBLE_D_PRIME = 4.65;

/**
 * For each kind of event that happens: could anybody tell from this sound that it does?
 *
 * The ideal listener knows when the events happen, how they sound on average, and how loud everything else is
 * in each band, but not the waveforms: a detector of matched energy. In steady noise nobody who has to find the
 * events first does better, so what lies under the margin there is not audible to anyone or anything; what
 * lies over it may still be missed. Where everything else cracks by itself, a listener who knows those cracks one by
 * one could do somewhat better than this one, who knows only how much they vary. Far above the margin the
 * number saturates and says no more than "audible".
 *
 * Let `o(b, f)` be the energy of everything else in band `b` and frame `f`, over its median in that band, and
 * `e(b, f)` that of the events. A single crack must not count without bound, so energies are held to 10 medians:
 * an event brings `s = min(o + e, 10) − min(o, 10)`. With `m(b, l)` the mean of `s` over the `M` events at `l`
 * frames from the event, and `v(b)` the variance of `o`, the weights `w(b, l) = (m(b, l) − mean over l) / v(b)` are
 * those of the best linear test in noise that is independent from frame to frame. Taking the mean away
 * leaves contrast only: events that run together to a steady sound cannot be told from hiss, and a
 * listener to whom no one said how loud the hiss would be cannot use their level. `l` runs over half the median
 * time between events on either side, at most 20 ms. Weights from every other event are tried on the events
 * between and the other way round: what only by chance falls on the events is not the sound of them. The listener's number for one event is `y = Σ w·energy`; events add
 * `A = Σ w·m` to it, and without them its variance is that of `Σ w(b, l)·o(b, f + l)` over all frames `f`
 * in which the arc burns, flutter and the other kinds of event included. The mean over `M` events is normal
 * enough, hence
 *
 *     d′ = A · √M / deviation of y
 *
 * In white noise and for events that fill one frame each this is the energy detector's
 * `d′² = M · s² · (1 − 1/L) · Σ 1/v(b)` with `L` frames in the window. Energies of different sounds are
 * added as those of uncorrelated sounds.
 */
export function audibility(parts: HeardParts): Partial<Record<EventKind, Audibility>> {
  const kinds = EVENT_KINDS.filter((kind) => (parts.eventsS[kind]?.length ?? 0) > 0);
  const out: Partial<Record<EventKind, Audibility>> = {};
  if (kinds.length === 0) return out;
  const sounding = EVENT_KINDS.filter((kind) => parts.events[kind] !== undefined);
  const span = spanOf(parts, kinds);
  const reach = Math.ceil(MARGIN_S * parts.rateHz);
  const hop = Math.max(1, Math.round(0.001 * parts.rateHz));
  const sounds = [parts.rest, ...sounding.map((kind) => parts.events[kind]!)];
  const energies = bandEnergies(
    sounds,
    parts.rateHz,
    Math.floor((span.from - reach) / hop),
    Math.ceil((span.to + reach) / hop),
  );
  for (const kind of kinds) {
    const place = sounding.indexOf(kind);
    const own = place < 0 ? undefined : energies.series[1 + place];
    const others = energies.series.filter((series, i) => i === 0 || series !== own);
    const frames = framesOf(parts.eventsS[kind]!, energies, parts.rateHz);
    if (frames.length === 0) continue;
    const found = standOut(own, summed(others), frames, range(span, energies));
    out[kind] = { ...found, isAudible: found.dPrime >= AUDIBLE_D_PRIME };
  }
  return out;
}

/** Energies count for this long before the first and after the last frame in question, s. */
const MARGIN_S = 0.06;

/** First and last sample in question. */
function spanOf(parts: HeardParts, kinds: readonly EventKind[]): { from: number; to: number } {
  let startS = Number.POSITIVE_INFINITY;
  let endS = 0;
  for (const kind of kinds)
    for (const timeS of parts.eventsS[kind]!) {
      startS = Math.min(startS, timeS);
      endS = Math.max(endS, timeS);
    }
  const { rateHz, rest } = parts;
  return {
    from: Math.max(0, Math.floor((parts.startS ?? startS - 0.02) * rateHz)),
    to: Math.min(rest.length, Math.ceil((parts.endS ?? endS + 0.02) * rateHz)),
  };
}

/** Frames that lie within the samples. */
function range(span: Range, { hop, frame, frames }: BandEnergies): Range {
  const to = Math.min(frames, Math.floor((span.to - frame) / hop) + 1);
  const from = Math.min(Math.ceil(span.from / hop), Math.max(0, to - 1));
  return { from, to: Math.max(to, Math.min(frames, from + 1)) };
}

/** The frame whose middle is nearest to each event, for events within the sound. */
function framesOf(
  timesS: readonly number[],
  { hop, frame, frames }: BandEnergies,
  rateHz: number,
): number[] {
  return timesS
    .map((timeS) => Math.round((timeS * rateHz - frame / 2) / hop))
    .filter((f) => f >= 0 && f < frames);
}

function summed(series: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(series[0]!);
  for (const more of series.slice(1)) for (let i = 0; i < out.length; i++) out[i]! += more[i]!;
  return out;
}
