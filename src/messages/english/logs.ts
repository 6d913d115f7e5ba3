import { capital } from '../../core/index.js';
import type { ColumnTaken, LogParams } from '../rooms/logs.js';
import type { ColumnName, Quantity } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const SYMBOL = { voltage: 'V', current: 'A' } as const;
const UNITS: Readonly<Record<number, string>> = {
  1: 'seconds',
  1e-3: 'milliseconds',
  1e-6: 'microseconds',
  1e-9: 'nanoseconds',
};

const rows = (count: number, write: Writer): string =>
  count === 1 ? '1 row' : `${write.plain(count)} rows`;

function column({ name, number, unit }: ColumnName, write: Writer): string {
  const symbol = unit === null ? '' : ` [${unit}]`;
  return name === null ? `column ${write.plain(number)}${symbol}` : `“${name}”${symbol}`;
}

const taken =
  (quantity: Quantity) =>
  ({ column: one, by }: ColumnTaken, write: Writer): string =>
    by === 'place'
      ? `The file names no columns; column ${write.plain(one.number)} is taken as ${quantity} by its place.`
      : `${capital(quantity)} is read from ${column(one, write)} (by its ${by}).`;

export const LOGS: CatalogueOf<LogParams> = {
  'scale-stated': (params, write) => {
    const symbol = SYMBOL[params.quantity];
    return params.of === 'channel'
      ? `Channel ${write.plain(params.channel)} is read as ${params.quantity} with ${write.plain(params.atFullScale)} ${symbol} at digital full scale, as stated.`
      : `“${params.column}” is read with ${write.plain(params.perUnit)} ${symbol} a unit, as stated.`;
  },
  'unit-scaled': ({ column: name, unit, quantity }) =>
    `“${name}” is in ${unit} and was turned into ${SYMBOL[quantity]}.`,
  'unit-assumed': ({ column: name, statedUnit, quantity }) => {
    const given = statedUnit === null ? 'gives no unit' : `gives the unit “${statedUnit}”`;
    return `“${name}” ${given}; its values are taken as ${quantity === 'voltage' ? 'volts' : 'amperes'}.`;
  },
  'time-column': taken('time'),
  'voltage-column': taken('voltage'),
  'current-column': taken('current'),
  'other-column': ({ columns, quantity }, write) =>
    `${columns.map((one) => column(one, write)).join(', ')} could hold ${quantity} too and ${columns.length === 1 ? 'was' : 'were'} left out; state which column to use if that is wrong.`,
  filled: ({ bridged, zeroed, values }, write) =>
    `${write.plain(bridged + zeroed)} values (${write.precise((100 * (bridged + zeroed)) / values, 2)} %) were missing or not finite: ${write.plain(bridged)} bridged by straight lines, ${write.plain(zeroed)} set to 0 because nothing is known there.`,
  'rate-stated': ({ rateHz }, write) => `The rate of ${write.plain(rateHz)} Hz is used as stated.`,
  'rate-from-file': ({ rateHz, line }, write) =>
    `There is no time column; the rate of ${write.figures(rateHz, 7)} Hz comes from “${line}” in the file.`,
  'rate-from-time': ({ rateHz }, write) =>
    `The rate of ${write.figures(rateHz, 7)} Hz comes from the time stamps.`,
  'coarse-time': ({ rateHz }, write) =>
    `The time stamps are rounded to more than a sampling step; ${write.figures(rateHz, 7)} Hz is the mean rate, and the rows are taken as evenly spaced.`,
  'uneven-time': ({ shortStepS, longStepS, rateHz }, write) =>
    `The rows are unevenly spaced (${write.precise(shortStepS * 1000, 3)} ms to ${write.precise(longStepS * 1000, 3)} ms); they were resampled on straight lines to ${write.figures(rateHz, 7)} Hz, the median step. Detail shorter than the longest steps is lost.`,
  'column-not-read': ({ columns, why }, write) => {
    const names = write.and(columns.map((one) => `“${one}”`));
    const what = why === 'complex' ? 'complex numbers' : 'no flat numbers';
    return `${names} ${columns.length === 1 ? `holds ${what} and was` : `hold ${what} and were`} left out.`;
  },
  'time-unit-assumed': ({ column: name, unitS, by }, write) => {
    const unit = UNITS[unitS] ?? `units of ${write.plain(unitS)} s`;
    const why = by === 'size' ? 'from its size and steps' : 'from the stated rate';
    return `“${name}” gives no unit; it is taken as ${unit}, ${why}.`;
  },
  'rate-too-low': ({ rateHz }, write) =>
    `At ${write.figures(rateHz, 4)} Hz the trace is sampled too slowly for the mode: single short circuits, drops and pulses cannot be followed (short circuits come up to some 200 a second). Means, arc times and the comparison with the set-up hold; power from means may be up to 30 % off on sources that shape their waveform (Sperko 2010).`,
  'rate-low': ({ rateHz, samplesPerMs, neededSamples, shortestMs }, write) =>
    `At ${write.figures(rateHz, 4)} Hz a short circuit of 1 ms is shown by ${write.figures(samplesPerMs, 4)} ${samplesPerMs === 1 ? 'sample' : 'samples'} (${write.plain(neededSamples)} are needed): shorts under ${write.figures(shortestMs, 4)} ms are measured badly or missed, and drop steps and current rise cannot be measured.`,
  aliasing: ({ rateHz }, write) =>
    `Ripple of an inverter source (some 15 to 100 kHz) folds into a trace sampled at ${write.figures(rateHz, 4)} Hz unless it was filtered before sampling, and can look like slow lines.`,
  'rows-reordered': ({ rows: count, largestStepBackS }, write) =>
    `${rows(count, write)} stood out of order (up to ${write.precise(largestStepBackS * 1000, 3)} ms back); they were put in order of time.`,
  gaps: ({ gaps, missingSamples, longestS, bridgedS }, write) =>
    `${gaps === 1 ? 'One gap' : `${write.plain(gaps)} gaps`} in the time stamps (${write.plain(missingSamples)} samples missing, the longest ${write.precise(longestS * 1000, 4)} ms): up to ${write.plain(bridgedS * 1000)} ms bridged by straight lines, longer ones set to 0.`,
  'crowded-rows': ({ rows: count }, write) =>
    `${rows(count, write)} with a time that was already taken left out.`,
  'rows-without-time': ({ rows: count }, write) => `${rows(count, write)} without a time left out.`,
  midnight: () => 'The clock passes midnight; the time was counted on.',
  'decimal-comma': () => 'Numbers are read with a decimal comma.',
  'text-encoding': ({ encoding }) => `The text is read as ${encoding}.`,
  'cut-off-line': ({ line, text }, write) =>
    `The last line (${write.plain(line)}: “${text}”) breaks off; it was left out.`,
  'text-lines': ({ lines, firstLine, firstText }, write) =>
    `${write.plain(lines)} ${lines === 1 ? 'line' : 'lines'} of text between the rows left out (line ${write.plain(firstLine)}: “${firstText}”).`,
  'thousands-separators': ({ values }, write) =>
    `${write.plain(values)} ${values === 1 ? 'value was' : 'values were'} read with thousands separators.`,
  'many-series': ({ series, used }, write) =>
    `Of ${write.plain(series)} series in the file only the first ${write.plain(used)} are looked at.`,
};
