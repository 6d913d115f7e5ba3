/**
 * What a foreign world gives: arcs whose truth is known, drawn by a simulator that shares no code and no
 * formula with the one of the product. Times in seconds from the first sample, half-open; sounds in any
 * unit (level carries no meaning); voltage in volts, current in amperes.
 */
export type ForeignMode = 'short-circuit' | 'globular' | 'spray' | 'pulsed-spray';

/** Kinds of events that can be heard: a bridge that forms or breaks, a drop that leaves freely, a pulse of current. */
export type EventKind = 'short' | 'reignition' | 'drop' | 'pulse';

export interface ForeignTruth {
  mode: ForeignMode;
  /** Short circuits a second, averaged over the arc. */
  shortsPerS: number;
  /** Drops that cross without touching, a second. */
  dropsPerS: number;
  /** Typical diameter of a drop in mm; null where metal crosses by bridges only. */
  dropDiameterMm: number | null;
  /** Frequency of the current pulses; null where there are none. */
  pulseHz: number | null;
  /** Times of single events, from the first sample of the arc's own sound and trace (which start together). */
  eventsS: Record<EventKind, number[]>;
}

export interface ForeignSetup {
  material: 'steel' | 'stainless' | 'aluminium';
  wireDiameterMm: number;
  /** As a shop would write it: "CO2", "Ar+18CO2", "Ar+2O2", "Ar". */
  gas: string;
  /** Volts set at the source. */
  setVoltageV: number;
  wireFeedMPerMin: number;
  stickOutMm: number;
}

export interface ForeignArc {
  seed: number;
  truth: ForeignTruth;
  setup: ForeignSetup;
  /** What the arc itself gives, from ignition to its end: no background, no room, no microphone. */
  durationS: number;
  trace: { sampleRateHz: number; voltageV: Float32Array; currentA: Float32Array };
  /** The dry sound is the sum of all parts: one array a kind of event, and everything that is not an event. */
  dry: { sampleRateHz: number; events: Record<EventKind, Float32Array>; hiss: Float32Array };
}

/** How a recorder got hold of the sound. */
export type Condition =
  /** good microphone, quiet room, background before and after the arc */
  | 'quiet'
  /** workshop noise (tools, fans, traffic, talk), arc about 10 dB over it */
  | 'shop'
  /** the same, arc and noise alike in level */
  | 'loud-shop'
  /** a phone: fast or slow gain control, then hard clipping well inside the signal (0.5 to 3 sigma) */
  | 'clipped'
  /** a phone call or a lossy file: 8 kHz or a narrow band, coarse coding */
  | 'lossy'
  /** the arc fills the recording from its first sample to its last: no edge to see */
  | 'open-ended'
  /** digital silence or another scene before and after, cut hard to the arc and back */
  | 'switched';

export interface ForeignRecording {
  sampleRateHz: number;
  /** Full scale is ±1. */
  samples: Float32Array;
  /** Where the arc burns in this recording. */
  arcStartS: number;
  arcEndS: number;
  /**
   * The same recording before anything that is not linear (gain control, clipping, coding): each kind of
   * event by itself and everything else (hiss, background), aligned with `samples`, after room and microphone.
   */
  linear: { events: Record<EventKind, Float32Array>; rest: Float32Array };
}

/** A sound in which no arc burns. */
export interface ForeignOther {
  seed: number;
  /** "rain", "grinder", "speech", "silence", "hum", … */
  kind: string;
  sampleRateHz: number;
  samples: Float32Array;
}

/** A logger between arc and file. */
export interface ForeignLog {
  sampleRateHz: number;
  voltageV: Float32Array;
  /** null where only the voltage was logged */
  currentA: Float32Array | null;
  arcStartS: number;
  arcEndS: number;
}
export type Logger =
  /** voltage alone at 5 kHz, 12 bit, some mains */
  | 'voltage-5k'
  /** voltage and current at 20 kHz, 16 bit, with sensor noise */
  | 'both-20k'
  /** what a real cell gives: isolation amplifier of limited bandwidth, cable drop, ripple, dropped samples */
  | 'both-rough';

export interface ForeignWorld {
  name: string;
  /** An arc of about `durationS` seconds. The same seed gives the same arc. Modes come in turn: seed % 4. */
  drawArc(seed: number, durationS?: number): ForeignArc;
  record(arc: ForeignArc, condition: Condition, seed: number): ForeignRecording;
  drawOther(seed: number, durationS?: number): ForeignOther;
  log(arc: ForeignArc, logger: Logger, seed: number): ForeignLog;
}
