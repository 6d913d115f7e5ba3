import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../../../src/apps/page/words/index.js';
import { ENGLISH_PICTURES, runPictures } from '../../../../src/apps/report/index.js';
import { englishLeft, textsOf } from '../../../support/english-left.js';
import { shippedView } from '../../../support/shipped-view.js';

const german = LANGUAGES.find((one) => one.lang === 'de')!;
const SETUP = { gas: 'Ar+18CO2', wireDiameter: '1.2mm', setVoltage: '24', wireFeed: '6m/min' };

// Between them they hold shorts, drops, pulses, sound, and reasons of every kind of model.
describe.each(['short-circuit.csv', 'globular.csv', 'pulsed-spray.csv', 'spray.wav'])(
  'a run of %s on the German page',
  (name) => {
    it('shows pictures and reasons without an English word', async () => {
      const view = await shippedView(name, SETUP);
      const markup = runPictures(view, german.pictures);
      expect(englishLeft(textsOf(runPictures(view, ENGLISH_PICTURES)), textsOf(markup))).toEqual(
        [],
      );
      expect(markup.match(/<[^>]* lang=[^>]*>/g)).toBeNull();
    });

    it('says in German what was found, doubted and known of the recording', async () => {
      const { result } = await shippedView(name, SETUP);
      const english = [
        result.statusReason,
        ...result.quality.map((one) => one.message),
        ...result.source.notes.map((one) => one.message),
      ];
      const said = english.map((one) => german.result.said(one));
      expect(said.filter((one) => one.lang !== 'de')).toEqual([]);
    });
  },
);
