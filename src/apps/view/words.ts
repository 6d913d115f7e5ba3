import type { Mode } from '../../core/index.js';

/** Names as said to a person, and the open short names of ISO 4063:2023, Annex A (secondary source). */
export const MODE_WORDS: Record<Mode, { name: string; letter: string }> = {
  'short-circuit': { name: 'short-circuit', letter: 'D' },
  globular: { name: 'globular', letter: 'G' },
  spray: { name: 'spray', letter: 'S' },
  'pulsed-spray': { name: 'pulsed spray', letter: 'P' },
};

/** Lowest confidence of each wording, highest first. README prints this table. */
export const CONFIDENCE_WORDS: readonly { from: number; words: string }[] = [
  { from: 0.99, words: 'almost certain' },
  { from: 0.9, words: 'very likely' },
  { from: 0.75, words: 'likely' },
  { from: 0.5, words: 'more likely than not' },
  { from: 0, words: 'doubtful' },
];

/** `very likely, 94 %`: words always with their number. */
export function sayConfidence(confidence: number): string {
  const row = CONFIDENCE_WORDS.find((one) => confidence >= one.from);
  return `${row?.words ?? 'doubtful'}, ${percent(confidence)}`;
}

/** Whole per cent; a share that is neither none nor all is never shown as 0 or 100. */
export function percent(share: number): string {
  if (share > 0 && share < 0.005) return 'under 1 %';
  if (share < 1 && share >= 0.995) return 'over 99 %';
  return `${Math.round(share * 100)} %`;
}

/** Three significant digits, thousands kept whole; `–` for what was not measured. */
export function figure(value: number | null): string {
  if (value === null || !Number.isFinite(value)) return '–';
  if (Math.abs(value) >= 1000) return value.toFixed(0);
  return String(Number(value.toPrecision(3)));
}

/** A time or duration: `0.42 s`, `12.4 s`, `3 min 05 s`, `2 h 10 min`. */
export function sayTime(seconds: number): string {
  if (seconds < 10) return `${Number(seconds.toFixed(2))} s`;
  const tenths = Math.round(seconds * 10) / 10;
  if (tenths < 120) return `${tenths} s`;
  const whole = Math.round(seconds);
  const minutes = Math.floor(whole / 60);
  if (minutes < 120) return `${minutes} min ${String(whole % 60).padStart(2, '0')} s`;
  const allMinutes = Math.round(seconds / 60);
  return `${Math.floor(allMinutes / 60)} h ${String(allMinutes % 60).padStart(2, '0')} min`;
}

/** A rate in Hz with a unit that suits it: `44.1 kHz`, `124 Hz`. */
export function sayRate(hz: number): string {
  return hz >= 1000 ? `${figure(hz / 1000)} kHz` : `${figure(hz)} Hz`;
}

/** Text from outside made safe for a terminal: control characters (escape codes, line ends) shown as `\x1b`. */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Bidi_Control}]/gu, (character) => {
    const code = character.charCodeAt(0);
    return code < 256 ? `\\x${code.toString(16).padStart(2, '0')}` : `\\u${code.toString(16)}`;
  });
}
