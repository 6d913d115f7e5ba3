import { inUnitsIn, type Message, retell } from '../../../messages/index.js';
import type { Expectation, processMaps, Setup } from '../../../setup/index.js';
import type { Said } from '../../terminal/flags/language-flags.js';
import { type Look, wrap } from '../../view/index.js';
import { mapLines } from './map.js';

const PERMIT_WORDS = { yes: 'expected', possible: 'possible', no: 'not expected' } as const;

/** A sentence of the answer in the language asked for. */
type Tell = (text: string, message: Message | null | undefined) => string;

/** The answer of `arc-transfer expect` for a terminal: what to expect, how to get there, the map, the sources. */
export function expectationText(
  expectation: Expectation,
  setup: Setup,
  look: Look,
  said: Said,
  material: processMaps.MapMaterial | null = null,
): string {
  const tell: Tell = (text, message) =>
    (message == null ? null : retell(message, said.language)) ?? text;
  const { point, notes, noteMessages, cautions } = expectation;
  const { bold } = look.paint;
  const from = (text: string | null, message: Message | null, none: string): string =>
    text === null ? none : tell(text, message);
  return `${[
    ...likely(expectation, look, tell),
    ...wanted(expectation, setup, look, tell),
    ...mapLines(setup, look, said, material),
    bold('What it rests on'),
    ...wrap(
      `Voltage: ${from(point.voltageFrom, point.voltageFromMessage, 'not stated')}`,
      look.width,
      2,
      9,
    ),
    ...wrap(
      `Current: ${from(point.currentFrom, point.currentFromMessage, 'not stated, and no wire feed')}`,
      look.width,
      2,
      9,
    ),
    '',
    ...expectation.modes.flatMap((one) => modeLines(one, look, tell)),
    ...extras(expectation, said),
    '',
    ...notes.flatMap((note, i) => wrap(tell(note, noteMessages[i]), look.width, 2)),
    '',
    bold('Before you act on it'),
    ...cautions.flatMap((caution) => wrap(caution, look.width, 2)),
  ].join('\n')}\n`;
}

function likely(
  { likeliest, likeliestMessage, chances, chanceMessages }: Expectation,
  look: Look,
  tell: Tell,
) {
  if (likeliest === null) return [];
  return [
    look.paint.bold('What to expect'),
    ...wrap(tell(likeliest, likeliestMessage), look.width, 2, 2),
    ...chances.flatMap((one, i) => wrap(tell(one, chanceMessages[i]), look.width, 4, 2)),
    '',
  ];
}

function wanted(expectation: Expectation, setup: Setup, look: Look, tell: Tell): string[] {
  const { advice, adviceMessages, howTo, howToMessages } = expectation;
  if (setup.expectedMode === null) return [];
  const { bold, mode } = look.paint;
  const name = mode(setup.expectedMode, setup.expectedMode);
  const moves = advice.flatMap((one, i) => wrap(tell(one, adviceMessages[i]), look.width, 2, 2));
  const settings = howTo.flatMap((one, i) => wrap(tell(one, howToMessages[i]), look.width, 2, 2));
  const named = howToMessages.some(({ code }) => code === 'set-like-this');
  const heading = named ? 'Where it is to be set for' : 'What to change for';
  return [
    ...(moves.length > 0 ? [`${bold('What to change for')} ${name}`, ...moves, ''] : []),
    ...(settings.length > 0 ? [`${bold(heading)} ${name}`, ...settings, ''] : []),
  ];
}

function modeLines(one: Expectation['modes'][number], look: Look, tell: Tell): string[] {
  const { good, warn, bad, dim, mode } = look.paint;
  const paint = { yes: good, possible: warn, no: bad }[one.permit];
  const head = `  ${mode(one.mode, one.mode.padEnd(14))} ${paint(PERMIT_WORDS[one.permit].padEnd(14))} ${one.process}`;
  const sources = one.authority.flatMap((source, i) =>
    wrap(`· ${tell(source, one.authorityMessages[i])}`, look.width, 6, 2),
  );
  const lies = tell(one.boundary, one.boundaryMessage);
  return [head, ...wrap(`Lies ${lies}.`, look.width, 4), ...sources.map(dim)];
}

/** Heat input as the code named counts it, or both ways; metal deposited. */
function extras(
  { arcEnergyKjPerMm, heatInputKjPerMm, depositionKgPerH }: Expectation,
  { language, code }: Said,
): string[] {
  const lines: string[] = [];
  const shown = inUnitsIn(language);
  const american = code === 'aws' || code === 'asme';
  if (arcEnergyKjPerMm !== null && (code === null || american)) {
    const name = code === null ? 'Arc energy' : 'Heat input';
    lines.push(
      `  ${name} ${shown(arcEnergyKjPerMm, 'energy')}, without thermal efficiency (AWS, ASME).`,
    );
  }
  if (heatInputKjPerMm !== null && !american) {
    lines.push(
      `  Heat input ${shown(heatInputKjPerMm, 'energy')}, with thermal efficiency 0.8 (EN 1011-1).`,
    );
  }
  if (depositionKgPerH !== null) {
    lines.push(`  Metal deposited ${shown(depositionKgPerH, 'deposition')}.`);
  }
  return lines.length === 0 ? [] : ['', ...lines];
}
