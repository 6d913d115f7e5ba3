import { MODES } from '../../../core/index.js';
import type { Expectation, processMaps, Setup } from '../../../setup/index.js';
import { type Look, tell, tellAll, type Words, wrap } from '../../view/index.js';
import { mapLines } from './map.js';

/** The answer of `arc-transfer expect` for a terminal: what to expect, how to get there, the map, the sources. */
export function expectationText(
  expectation: Expectation,
  setup: Setup,
  look: Look,
  words: Words,
  material: processMaps.MapMaterial | null = null,
): string {
  const { point, notes, noteMessages, cautions, cautionMessages } = expectation;
  const { bold } = look.paint;
  const { expect } = words;
  const voltage = point.voltageFrom && tell(point.voltageFrom, point.voltageFromMessage, words);
  const current = point.currentFrom && tell(point.currentFrom, point.currentFromMessage, words);
  const hang = expect.voltage('').length;
  return `${[
    ...likely(expectation, look, words),
    ...wanted(expectation, setup, look, words),
    ...mapLines(setup, look, words, material),
    bold(expect.title),
    ...wrap(expect.voltage(voltage ? voltage.text : null), look.width, 2, hang),
    ...wrap(expect.current(current ? current.text : null), look.width, 2, hang),
    '',
    ...expectation.modes.flatMap((one) => modeLines(one, look, words)),
    ...extras(expectation, words),
    '',
    ...tellAll(notes, noteMessages, words).flatMap(({ text }) => wrap(text, look.width, 2)),
    '',
    bold(expect.beforeYouAct),
    ...tellAll(cautions, cautionMessages, words).flatMap(({ text }) => wrap(text, look.width, 2)),
  ].join('\n')}\n`;
}

function likely(
  { likeliest, likeliestMessage, chances, chanceMessages }: Expectation,
  look: Look,
  words: Words,
): string[] {
  if (likeliest === null) return [];
  return [
    look.paint.bold(words.expect.likely),
    ...wrap(tell(likeliest, likeliestMessage, words).text, look.width, 2, 2),
    ...tellAll(chances, chanceMessages, words).flatMap(({ text }) => wrap(text, look.width, 4, 2)),
    '',
  ];
}

function wanted(
  { advice, adviceMessages, howTo, howToMessages }: Expectation,
  { expectedMode }: Setup,
  look: Look,
  words: Words,
): string[] {
  if (expectedMode === null) return [];
  const { setFor, changeFor } = words.expect;
  const name = words.sentences.write.mode(expectedMode);
  const named = howToMessages.some(({ code }) => code === 'set-like-this');
  const block = (heading: string, lines: readonly { text: string }[]): string[] =>
    lines.length === 0
      ? []
      : [
          look.paint.bold(heading),
          ...lines.flatMap(({ text }) => wrap(text, look.width, 2, 2)),
          '',
        ];
  return [
    ...block(changeFor(name), tellAll(advice, adviceMessages, words)),
    ...block(named ? setFor(name) : changeFor(name), tellAll(howTo, howToMessages, words)),
  ];
}

function modeLines(one: Expectation['modes'][number], look: Look, words: Words): string[] {
  const { good, warn, bad, dim, mode } = look.paint;
  const { permits, lies } = words.expect;
  const paint = { yes: good, possible: warn, no: bad }[one.permit];
  // Modes stand here in English by the names of `--expect`.
  const name = words.sentences.write.mode(one.mode);
  const width = Math.max(14, ...Object.values(permits).map((word) => word.length + 1));
  const head = `  ${mode(one.mode, name.padEnd(longest(words)))} ${paint(permits[one.permit].padEnd(width))} ${one.process}`;
  const where = tell(one.boundary, one.boundaryMessage, words).text;
  const sources = tellAll(one.authority, one.authorityMessages, words).flatMap(({ text }) =>
    wrap(`· ${text}`, look.width, 6, 2),
  );
  const nowhere = one.boundaryMessage.code === 'not-in-this-gas';
  return [head, ...wrap(lies(where, nowhere), look.width, 4), ...sources.map(dim)];
}

/** Heat input as the code named counts it, or both ways; metal deposited. */
function extras(
  { arcEnergyKjPerMm: without, heatInputKjPerMm: within, depositionKgPerH }: Expectation,
  { expect, heat, result, sentences }: Words,
): string[] {
  const { inUnits } = sentences.write;
  const lines: string[] = [];
  if (without !== null && heat === 'both') {
    lines.push(`  ${expect.arcEnergy(inUnits(without, 'energy'))}`);
  }
  if (without !== null && heat === 'no-efficiency') {
    lines.push(`  ${result.heatInput(inUnits(without, 'energy'), null)}`);
  }
  if (within !== null && heat !== 'no-efficiency') {
    lines.push(`  ${result.heatInput(null, inUnits(within, 'energy'))}`);
  }
  if (depositionKgPerH !== null) {
    lines.push(`  ${expect.deposited(inUnits(depositionKgPerH, 'deposition'))}`);
  }
  return lines.length === 0 ? [] : ['', ...lines];
}

/** So wide that the words of all modes begin at one place. */
function longest({ sentences }: Words): number {
  return Math.max(14, ...MODES.map((mode) => sentences.write.mode(mode).length + 1));
}
