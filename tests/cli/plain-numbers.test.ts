import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const trace = join(import.meta.dirname, '../../fixtures/recordings/spray.csv');
/** 0.045 in are 1.1429999999999998 mm as computers add; so are most of these. */
const SETUP =
  '--wire 0.045in --gas 90/10 --wire-feed 400ipm --set-voltage 26.1 --travel-speed 12in/min --plate 0.3in --stick-out 0.7in --expect globular'.split(
    ' ',
  );
/** More digits than anybody reads off a machine; small shares keep their own. */
const LONG = /\d*[1-9]\d*[.,]\d{4,}/g;

describe('numbers stand as people write them', () => {
  it.each([
    ['classify', ['classify', trace, ...SETUP]],
    ['classify in inches', ['classify', trace, ...SETUP, '--units', 'inch']],
    ['classify in German', ['classify', trace, ...SETUP, '--language', 'de']],
    ['expect', ['expect', ...SETUP]],
    ['expect in inches', ['expect', ...SETUP, '--units', 'inch']],
    ['compare', ['compare', trace.replace('spray', 'globular'), trace]],
  ])('in %s', async (_, words) => {
    const { stdout, status } = await runCli(words);
    expect(status).toBe(0);
    expect(stdout.match(LONG)).toBeNull();
  });

  it('in a report', async () => {
    const page = join(scratch(), 'page.html');
    // Where the boundary stands in the words: it was written with all its digits.
    const hot =
      '--set-voltage 24 --volts-at feeder --wire 0.9mm --gas 75/25 --wire-feed 8m/min --expect short-circuit'.split(
        ' ',
      );
    const sound = trace.replace('spray.csv', 'globular.wav');
    expect((await runCli(['report', sound, '--out', page, ...hot])).status).toBe(0);
    const text = readFileSync(page, 'utf8')
      .replace(/<(script|style|svg)[\s\S]*?<\/\1>/g, '')
      .replace(/<section id="how"[\s\S]*?<\/section>/, '')
      .replace(/<[^>]+>/g, ' ');
    expect(text).toContain('How far to trust it');
    expect(text.match(LONG)).toBeNull();
  });
});
