import { type Expectation, rangeText, type Setup } from '../../../setup/index.js';
import { type Look, wrap } from '../../view/index.js';
import { mapLines } from './map.js';

const PERMIT_WORDS = { yes: 'permitted', possible: 'possible', no: 'not permitted' } as const;

/** The answer of `arc-transfer expect` for a terminal: the modes, the map, the notes, the cautions. */
export function expectationText(expectation: Expectation, setup: Setup, look: Look): string {
  const { point, notes, cautions } = expectation;
  const { bold } = look.paint;
  return `${[
    bold('What these settings permit'),
    ...wrap(`Voltage: ${point.voltageFrom ?? 'not stated'}`, look.width, 2, 9),
    ...wrap(`Current: ${point.currentFrom ?? 'not stated, and no wire feed'}`, look.width, 2, 9),
    '',
    ...expectation.modes.flatMap((one) => modeLines(one, look)),
    ...extras(expectation),
    ...mapLines(expectation, setup, look),
    '',
    ...notes.flatMap((note) => wrap(note, look.width, 2)),
    '',
    bold('Before you act on it'),
    ...cautions.flatMap((caution) => wrap(caution, look.width, 2)),
  ].join('\n')}\n`;
}

function modeLines(one: Expectation['modes'][number], look: Look): string[] {
  const { good, warn, bad, dim, mode } = look.paint;
  const paint = { yes: good, possible: warn, no: bad }[one.permit];
  const head = `  ${mode(one.mode, one.mode.padEnd(14))} ${paint(PERMIT_WORDS[one.permit].padEnd(14))} ${one.process}`;
  const sources = one.authority.flatMap((source) => wrap(`· ${source}`, look.width, 6, 2));
  return [head, ...wrap(`Lies ${one.boundary}.`, look.width, 4), ...sources.map(dim)];
}

function extras({ heatInputKjPerMm, depositionKgPerH }: Expectation): string[] {
  const lines: string[] = [];
  if (heatInputKjPerMm !== null) {
    lines.push(`  Heat input ${rangeText(heatInputKjPerMm, 2)} kJ/mm, thermal efficiency 0.8.`);
  }
  if (depositionKgPerH !== null) {
    lines.push(`  Metal deposited ${rangeText(depositionKgPerH)} kg/h.`);
  }
  return lines.length === 0 ? [] : ['', ...lines];
}
