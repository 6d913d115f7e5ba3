import { MODES } from '../../../core/index.js';
import type { Expectation, Setup } from '../../../setup/index.js';
import { type Look, tell, tellAll, type Words, wrap } from '../../view/index.js';
import { mapLines } from './map.js';

/** The answer of `arc-transfer expect` for a terminal: the modes, the map, the notes, the cautions. */
export function expectationText(
  expectation: Expectation,
  setup: Setup,
  look: Look,
  words: Words,
): string {
  const { point, notes, noteMessages, cautions, cautionMessages } = expectation;
  const { bold } = look.paint;
  const { expect } = words;
  const voltage = point.voltageFrom && tell(point.voltageFrom, point.voltageFromMessage, words);
  const current = point.currentFrom && tell(point.currentFrom, point.currentFromMessage, words);
  const hang = expect.voltage('').length;
  return `${[
    bold(expect.title),
    ...wrap(expect.voltage(voltage ? voltage.text : null), look.width, 2, hang),
    ...wrap(expect.current(current ? current.text : null), look.width, 2, hang),
    '',
    ...expectation.modes.flatMap((one) => modeLines(one, look, words)),
    ...extras(expectation, words),
    ...mapLines(expectation, setup, look, words),
    '',
    ...tellAll(notes, noteMessages, words).flatMap(({ text }) => wrap(text, look.width, 2)),
    '',
    bold(expect.beforeYouAct),
    ...tellAll(cautions, cautionMessages, words).flatMap(({ text }) => wrap(text, look.width, 2)),
  ].join('\n')}\n`;
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

function extras({ heatInputKjPerMm, depositionKgPerH }: Expectation, words: Words): string[] {
  const { expect, sentences } = words;
  const { span } = sentences.write;
  const lines: string[] = [];
  if (heatInputKjPerMm !== null) lines.push(`  ${expect.heatInput(span(heatInputKjPerMm, 2))}`);
  if (depositionKgPerH !== null) lines.push(`  ${expect.deposited(span(depositionKgPerH))}`);
  return lines.length === 0 ? [] : ['', ...lines];
}

/** So wide that the words of all modes begin at one place. */
function longest({ sentences }: Words): number {
  return Math.max(14, ...MODES.map((mode) => sentences.write.mode(mode).length + 1));
}
