import { unitOf } from '../../../core/index.js';
import { forecast, forecastPicture, type processMaps, type Setup } from '../../../setup/index.js';
import type { Said } from '../../terminal/flags/language-flags.js';
import { type Look, mapInLetters } from '../../view/index.js';

/** The map over volts and amperes with the stated point and the wanted region. Empty without a diameter. */
export function mapLines(
  setup: Setup,
  look: Look,
  { units }: Said,
  material: processMaps.MapMaterial | null,
): string[] {
  const columns = Math.max(8, Math.min(26, Math.floor((look.width - 12) / 3)));
  const picture = forecastPicture(setup, forecast(setup, material), { columns, rows: 15 });
  if (picture === null) return [];
  const { unit, factor, digits } = unitOf('feed', units);
  return [...mapInLetters(picture, look, { unit, factor, digits }), ''];
}
