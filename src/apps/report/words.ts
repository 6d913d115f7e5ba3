import type { Result } from '../../analysis/result/index.js';
import type { Mode } from '../../core/index.js';
import type { MapWords } from '../view/index.js';
import type { FigureName } from './figure-names.js';
import type { PlaceWords, ReasonWords, ShapeWords, TimeWords } from './words-of-parts.js';

/** A text with the language it really is in, for screen readers. */
export interface LocalizedText {
  text: string;
  lang: string;
}

/** Numbers as a language writes them. */
export interface NumberWords {
  /** Three significant digits; a dash for what was not measured. */
  figure(value: number | null): string;
  percent(share: number): string;
  time(seconds: number): string;
  /** Digits that are already chosen (`0.25`), with the decimal mark of the language. */
  decimal(digits: string): string;
  /** From one written number to another. */
  range(low: string, high: string): string;
}

/**
 * Everything that the pictures of a run and their tables say. Texts are whole sentences or labels; nothing
 * is put together elsewhere. Values come in already written by `numbers` unless they are numbers here.
 */
export interface PictureWords {
  /** Language tag of these words. */
  lang: string;
  numbers: NumberWords;
  mode(mode: Mode): string;
  /** Of a part for which no mode is named. */
  notClear: string;
  /** What the evidence names in English: quantities, units, kinds of events, phases of the arc. */
  name(english: string): string;
  /** A sentence or remark of the result or of the published windows, in this language where it is known. */
  said(text: string): LocalizedText;
  reason(reason: Result['reasons'][number]): LocalizedText;
  titles: Record<FigureName, string>;
  time: TimeWords;
  shape: ShapeWords;
  place: PlaceWords;
  /** Words of the process map. */
  map: MapWords;
  reasons: ReasonWords;
}
