import { type Made, type Message, said } from '../messages/index.js';

/** One number of a feature vector: what it is, in which unit, and what it means to a reader. */
export interface FeatureDefinition {
  id: string;
  /** `1` for a pure number. */
  unit: string;
  meaning: string;
  /** The sentence of `meaning`; absent in sets whose words the catalogues do not hold. */
  said?: Message;
}

/** A feature whose meaning is a sentence of the catalogues. */
export function define(id: string, unit: string, meaning: Made): FeatureDefinition {
  return { id, unit, meaning: meaning.text, said: said(meaning) };
}

/** An ordered, versioned list of features. A model names the set it was fitted on. */
export interface FeatureSet {
  id: string;
  version: number;
  features: readonly FeatureDefinition[];
}

/** Features of one analysis window. NaN means absent (not measurable here), never zero. */
export interface FeatureWindow {
  startS: number;
  endS: number;
  values: Float64Array;
  /** Only for sound: what later stages need beside the features. */
  sound?: SoundDetail;
  /** Only for sound that a network listens to: the blocks that lie in the window, in order. */
  heard?: readonly HeardBlock[];
}

/** What a network heard in one short block of sound: mean, mean square and largest of each of its figures. */
export interface HeardBlock {
  /** Place in the recording, counted from 0; whole blocks follow each other without a gap. */
  index: number;
  mean: Float32Array;
  square: Float32Array;
  top: Float32Array;
  /** Mean belief that an arc burns, 0 to 1. */
  arc: number;
  /** What it counts in an interval. */
  weight: number;
}

/** What later stages need of a window of sound. */
export interface SoundDetail {
  /**
   * Mean square of the analysis band per 16 ms (full scale 1) since the last window: its newest hop, and
   * for the first window all of it.
   */
  levels: Float64Array;
  /** Event line of the window; NaN where there is none. */
  lineHz: number;
  /** Its height over the local floor, as a ratio. */
  lineProminence: number;
  /** Rate of sudden rises of loudness, Hz: a second estimate of the event rate. */
  onsetHz: number;
  /** How sudden the most sudden rises are, octaves of amplitude. */
  onsetStrength: number;
  /** Share of the newest hop's samples at the rails. */
  clippedShare: number;
}

/** What a feature extractor reports while samples go through it, in order of time. */
export type ExtractorEvent =
  | { type: 'window'; window: FeatureWindow }
  /** The same features of the newest half second of sound; comes before the window that ends with it. */
  | {
      type: 'short-window';
      startS: number;
      endS: number;
      values: Float64Array;
      heard?: readonly HeardBlock[];
    }
  /** `open`: the arc was already burning at the first sample. */
  | { type: 'arc-start'; timeS: number; open: boolean }
  /** `open`: still burning at the last sample. */
  | { type: 'arc-stop'; timeS: number; open: boolean };
