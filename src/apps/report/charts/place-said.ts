import { MODES } from '../../../core/index.js';
import type { Placement } from '../../view/evidence/index.js';
import { type PictureWords, tell, type Words } from '../../view/index.js';

/** One published window in a line: mode, amperes, volts, for what, on whose authority. */
export function sayWindow(band: Placement['bands'][number], words: Words): string {
  const { decimal } = words.numbers;
  const span = ({ min, max }: { min: number; max: number }) =>
    `${decimal(String(min))}–${decimal(String(max))}`;
  const about = tell(band.about, band.aboutMessage, words).text;
  const authority = tell(band.authority, band.authorityMessage, words).text;
  return `${words.mode(band.mode)}: ${span(band.currentA)} A, ${span(band.voltageV)} V. ${about}. ${authority}`;
}

/** The picture in words: where the run lies, and how many windows each mode has. */
export function sayPlace(
  { run: { voltageV, currentA }, bands: rows }: Placement,
  { place, numbers: { figure, range }, mode: nameOf }: PictureWords,
): string {
  const at = [
    voltageV ? `${range(figure(voltageV.min), figure(voltageV.max))} V` : place.noVoltage,
    currentA ? `${range(figure(currentA.min), figure(currentA.max))} A` : place.noCurrent,
  ];
  const counts = MODES.map((mode) => {
    const count = rows.filter((one) => one.mode === mode).length;
    return place.windows(count, nameOf(mode));
  });
  return place.description(at, counts);
}
