import { describe, expect, it } from 'vitest';
import {
  compareSection,
  indexEntry,
  indexPage,
  runPage,
  runPictures,
} from '../../../../src/apps/report/index.js';
import { GERMAN, NO_PAINT, terminalText } from '../../../../src/apps/view/index.js';
import { englishIn, textsOf } from '../../../support/english-words.js';
import { shippedView } from '../../../support/shipped-view.js';

const SETUP = {
  gas: 'Ar+18CO2',
  wireDiameter: '1.2mm',
  setVoltage: '24',
  wireFeed: '6m/min',
  expect: 'spray',
};

/** What stands in every language as it is: ids of models, feature sets and settings, and the card. */
function shownOf(page: string, ...names: readonly string[]): string[] {
  const rest = names
    .reduce((text, name) => text.replaceAll(name, ''), page)
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<script[\s\S]*?<\/script>/g, '')
    .replace(/<dl[\s\S]*?<\/dl>/g, '')
    .replace(/<li>(?:read|features|arc|classify): /g, '<li>')
    .replaceAll(/\b[a-z-]+ Fassung/g, 'Fassung')
    .replaceAll(/arc-transfer(?: (?:sound|voltage-current|voltage))?/g, '');
  return textsOf(rest);
}

// Between them they hold shorts, drops, pulses, sound, and reasons of every kind of model.
describe.each(['short-circuit.csv', 'globular.csv', 'pulsed-spray.csv', 'spray.wav'])(
  'a run of %s in German',
  (name) => {
    it('is drawn and explained without an English word', async () => {
      const markup = runPictures(await shippedView(name, SETUP), GERMAN);
      expect(textsOf(markup).flatMap(englishIn)).toEqual([]);
      expect(markup.match(/<[^>]* lang=[^>]*>/g)).toBeNull();
    });

    it('has a report page without an English word', async () => {
      const page = runPage(await shippedView(name, SETUP), '', undefined, GERMAN);
      expect(page).toContain('<html lang="de">');
      expect(shownOf(page, name).flatMap(englishIn)).toEqual([]);
      expect(page.match(/<span lang="en">/g)).toBeNull();
    });

    it('is told in the terminal without an English word', async () => {
      const { result } = await shippedView(name, SETUP);
      const text = terminalText(result, { width: 80, paint: NO_PAINT, words: GERMAN });
      // The first line names the file, and a line that is cut in two splits quotes as well.
      const lines = text.split('\n').slice(1).join(' ').replaceAll(/\s+/g, ' ');
      expect(englishIn(lines)).toEqual([]);
      expect(lines).not.toMatch(/\d\.\d+ (?:s|Hz|V|A|%)/);
    });
  },
);

describe('two runs in German', () => {
  it('stand side by side on a page without an English word', async () => {
    const names = ['short-circuit.csv', 'globular.csv'];
    const views = await Promise.all(names.map((name) => shippedView(name, SETUP)));
    const pair = compareSection(views[0]!, views[1]!, GERMAN);
    const entries = views.map((view, k) => indexEntry(view, `${k}.html`));
    const page = indexPage(entries, pair, GERMAN);
    expect(page).toContain('Nebeneinander, mit gleichen Achsen');
    expect(shownOf(page, ...names).flatMap(englishIn)).toEqual([]);
    expect(page.match(/<span lang="en">/g)).toBeNull();
  });
});
