import { choose } from './choose.js';

/** Where the seam lies. `vertical` leaves the direction open; `all-around`: a fixed pipe, which has every position. */
export const POSITIONS = [
  'flat',
  'horizontal',
  'vertical',
  'vertical-up',
  'vertical-down',
  'overhead',
  'all-around',
] as const;
export type Position = (typeof POSITIONS)[number];

/** Numbers of AWS A3.0 and letters of ISO 6947, both from memory of the standards, and plain words. */
const WORDS: Readonly<Record<string, Position>> = {
  flat: 'flat',
  '1g': 'flat',
  '1f': 'flat',
  pa: 'flat',
  wannenlage: 'flat',
  horizontal: 'horizontal',
  '2g': 'horizontal',
  '2f': 'horizontal',
  pb: 'horizontal',
  pc: 'horizontal',
  querposition: 'horizontal',
  horizontalposition: 'horizontal',
  vertical: 'vertical',
  '3g': 'vertical',
  '3f': 'vertical',
  'vertical-up': 'vertical-up',
  uphill: 'vertical-up',
  pf: 'vertical-up',
  steigposition: 'vertical-up',
  'vertical-down': 'vertical-down',
  downhill: 'vertical-down',
  pg: 'vertical-down',
  fallposition: 'vertical-down',
  overhead: 'overhead',
  '4g': 'overhead',
  '4f': 'overhead',
  pd: 'overhead',
  pe: 'overhead',
  überkopfposition: 'overhead',
  'all-around': 'all-around',
  '5g': 'all-around',
  '5f': 'all-around',
  '6g': 'all-around',
  ph: 'all-around',
  pj: 'all-around',
  pk: 'all-around',
  'h-l045': 'all-around',
  'j-l045': 'all-around',
};

/** A welding position from its AWS number, its ISO 6947 letters or its name. @throws ArcError `bad-choice` */
export function parsePosition(raw: string): Position {
  const text = raw.trim().toLowerCase().replaceAll(/[ _]/gu, '-');
  return choose('position', raw, text.replace(/-position$/u, ''), WORDS);
}

/** True where the pool has to hold against its own weight. */
export const isOutOfPosition = (position: Position): boolean =>
  position !== 'flat' && position !== 'horizontal';
