import { describe, expect, it } from 'vitest';
import { readoutAt } from '../../../../src/apps/report/client/readout.js';
import { type RunView, runPictures } from '../../../../src/apps/report/index.js';
import { placeRun } from '../../../../src/apps/view/evidence/index.js';
import { ENGLISH, GERMAN, LANGUAGES, type Words } from '../../../../src/apps/view/index.js';
import { message, type TraceFeature } from '../../../../src/messages/index.js';
import { parseSetup } from '../../../../src/setup/index.js';
import { englishIn, textsOf } from '../../../support/english-words.js';
import { MADE, madeRun, madeSound } from '../../../support/report-run.js';

const OTHERS = LANGUAGES.filter((one) => one.lang !== 'en');

/** Reasons of features that exist; the texts are invented, with the form that the reasons have. */
const REASONS = [
  { feature: 'shortRateHz', unit: 'Hz', value: 50 },
  { feature: 'arcSdV', unit: 'V', value: 0.14 },
].map(({ feature, ...one }, k) => ({
  ...one,
  ...message('sign', {
    ...one,
    feature: message('trace-feature', { feature: feature as TraceFeature }),
  }),
  feature,
  speaksFor: k === 0 ? ('short-circuit' as const) : null,
  weight: k === 0 ? 2 : -0.5,
}));

function placed(run: RunView, setup: Record<string, string>): RunView {
  const features = { ...run.result.features, meanCurrentA: 120 };
  return { ...run, placement: placeRun(parseSetup(setup), { features }) };
}

/** Runs that between them show every picture. All are invented. */
function runs(): RunView[] {
  const trace = madeRun({ reasons: REASONS });
  const sound = madeSound();
  sound.result.reasons = REASONS;
  const unclear = madeRun({
    reasons: REASONS,
    mode: 'mixed',
    segments: Array.from({ length: 20 }, (_, k) => ({
      startS: 1 + k / 2,
      endS: 1.5 + k / 2,
      mode: k % 2 ? ('pulsed-spray' as const) : null,
      confidence: 0.55,
    })),
  });
  const stainless = { wireDiameter: '0.9mm', wireMaterial: 'stainless-steel', wireFeed: '8m/min' };
  return [
    placed(trace, { gas: 'Ar+18CO2', wireDiameter: '1.2mm', setVoltage: '18.5 V' }),
    placed(sound, { gas: 'M21', ...stainless, setVoltage: '25' }),
    placed(unclear, {}),
    placed(madeRun({ reasons: [] }), { gas: 'CO2', feederVolts: '24' }),
    placed(madeRun({ reasons: [], segments: [], arcStretches: [] }), {
      wireMaterial: 'aluminium',
      gas: 'Ar',
    }),
  ];
}

/** Every text of the words, with the path to it. */
function texts({ titles, notClear, time, shape, place, reasons }: Words): Map<string, string> {
  const found = new Map<string, string>();
  // Reads as "2" where a text or number is wanted, and as a list where a list is.
  const two = ['2'];
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'string') found.set(path, value);
    else if (typeof value === 'function')
      found.set(path, String(value(...Array.from({ length: value.length }, () => two))));
    else for (const [key, one] of Object.entries(value as object)) walk(one, `${path}.${key}`);
  };
  walk({ titles, notClear, time, shape, place, reasons }, '');
  return found;
}

describe.each(OTHERS)('the pictures in $lang', (words) => {
  // Rejects a word that was added in English and copied into the other language.
  it('have a text of their own for every English one', () => {
    const own = texts(words);
    const same = [...texts(ENGLISH)].filter(([path, text]) => own.get(path) === text);
    expect(same).toEqual([]);
    expect(own.size).toBeGreaterThan(90);
  });

  // Rejects a picture, caption, table or label that takes its words from anywhere but the words.
  it('show no English word', () => {
    for (const run of runs()) {
      const english = textsOf(runPictures(run, ENGLISH));
      expect(english.length).toBeGreaterThan(20);
      expect(textsOf(runPictures(run, words)).flatMap(englishIn)).toEqual([]);
    }
  });

  it('read out no English word', () => {
    for (const { result, evidence } of runs()) {
      const run = {
        arcStretches: result.arcStretches,
        segments: result.segments,
        evidence: evidence!,
      };
      for (const timeS of [0.5, MADE.firstShortS + 0.002, 5, 9.5, 11.5]) {
        expect(englishIn(readoutAt(run, timeS, 1, words))).toEqual([]);
      }
    }
  });

  it('mark nothing as being in another language', () => {
    for (const run of runs())
      expect(runPictures(run, words).match(/<[^>]* lang=[^>]*>/g)).toBeNull();
  });
});

describe('the German pictures', () => {
  it('write numbers with a comma and draw the same as the English ones', () => {
    const [run] = runs();
    const english = runPictures(run!, ENGLISH);
    const german = runPictures(run!, GERMAN);
    const shapes = (markup: string) => markup.match(/ d="[^"]+"/g);
    // The places of the key go by the length of its words.
    const paths = (markup: string) => shapes(markup)!.filter((one) => one.length > 60);
    expect(paths(german)).toEqual(paths(english));
    expect(textsOf(german).filter((one) => /\d\.\d/.test(one))).toEqual([]);
    expect(textsOf(english).filter((one) => /\d,\d/.test(one))).toEqual([]);
  });

  // A sentence of a later version, an unknown source: shown as it is, and marked for screen readers.
  it('keep what they do not know as it is, marked as English', () => {
    const [run] = runs();
    const [reason] = run!.result.reasons;
    run!.result.reasons[0] = { ...reason!, code: 'of-a-later-version', text: 'something: 50 Hz' };
    const markup = runPictures(run!, GERMAN);
    expect(markup).toContain('<span lang="en">something: 50 Hz</span>');
  });
});
