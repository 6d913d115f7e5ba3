import { unitOf } from '../../../core/index.js';
import { forecast, forecastPicture, type processMaps, type Setup } from '../../../setup/index.js';
import { type Look, mapInLetters, type Words } from '../../view/index.js';

/** The map over volts and amperes with the stated point and the wanted region. Empty without a diameter. */
export function mapLines(
  setup: Setup,
  look: Look,
  words: Words,
  material: processMaps.MapMaterial | null,
): string[] {
  const columns = Math.max(8, Math.min(26, Math.floor((look.width - 12) / 3)));
  const picture = forecastPicture(setup, forecast(setup, material), { columns, rows: 15 });
  if (picture === null) return [];
  return [...mapInLetters(picture, look, unitOf('feed', words.units), words.map), ''];
}
