import { describe, expect, it } from 'vitest';
import { bufferSource, openRecording } from '../../src/recording/index.js';

const LONG = 40_000;
/** Cells that made patterns go back and forth: over a minute for one of them. */
const CELLS = {
  digits: '7'.repeat(LONG),
  'digits and an e': `${'7'.repeat(LONG)}e`,
  spaces: `a${' '.repeat(LONG)}b`,
  brackets: '('.repeat(LONG),
  'brackets and spaces': 'a ['.repeat(LONG / 3),
  letters: 'a'.repeat(LONG),
  colons: '1:'.repeat(LONG / 2),
};
const PLACES: Record<string, (cell: string) => string> = {
  'a name': (cell) => `time_s,voltage,${cell}\n`,
  'a value': (cell) => `time_s,voltage\n0,${cell}\n`,
  'a line above': (cell) => `${cell}\ntime_s,voltage\n`,
  'a line of the table': (cell) => `time_s,voltage\n${cell}\n`,
};
const cases = Object.keys(PLACES).flatMap((place) =>
  Object.keys(CELLS).map((cell) => [place, cell] as [string, keyof typeof CELLS]),
);

describe('a cell of 40,000 characters', () => {
  it.each(cases)('as %s, %s, takes no longer than it is long', async (place, cell) => {
    const three = place === 'a name' ? ',1' : '';
    const row = (_: unknown, i: number) => `${i / 1000},${20 + (i % 7)}${three}\n`;
    const text = PLACES[place]!(CELLS[cell]) + Array.from({ length: 300 }, row).join('');
    const before = process.cpuUsage();
    let said = '';
    try {
      const source = bufferSource(new TextEncoder().encode(text), 'x.csv');
      const recording = await openRecording(source);
      for await (const _ of recording.blocks());
      said = JSON.stringify([recording.notes, recording.channels]);
    } catch (error) {
      said = String(error);
      expect(error).toHaveProperty('code');
    }
    const { user } = process.cpuUsage(before);
    expect(user / 1e6).toBeLessThan(2);
    expect(said.length).toBeLessThan(3000);
  });
});
