import type { QualityParams } from '../rooms/quality.js';
import type { CatalogueOf } from '../writer.js';

const missing = (samples: string, of: string): string =>
  `${samples} Werte ${of} waren keine Zahlen und wurden durch den Wert davor ersetzt.`;
const clipped = (of: string): string =>
  `${of} steht am Ende des Messbereichs: Spitzen sind abgeschnitten.`;
const held = (of: string): string =>
  `${of} steht jeweils millisekundenlang still: eine langsame oder hängende Messung.`;

export const QUALITY: CatalogueOf<QualityParams> = {
  clipping: ({ shareOfSamples }, write) =>
    `${write.fixed(100 * shareOfSamples, 1)} % der Werte stehen am Anschlag: das Mikrofon weiter weg stellen oder die Aussteuerung verringern.`,
  'sample-rate-low': (params, write) =>
    params.of === 'sound'
      ? `Bei ${write.plain(params.sampleRateHz)} Werten je Sekunde fehlt der Frequenzbereich über ${write.plain(Math.round(params.sampleRateHz / 2))} Hz; mit 44 100 oder 48 000 ist der ganze Lichtbogen zu hören.`
      : `Bei ${write.plain(params.sampleRateHz)} Hz hat ein Kurzschluss von 1 ms weniger als fünf Werte; Zahlen zu Kurzschlüssen und Tropfen sind unter ${write.plain(params.enoughHz)} Hz grob.`,
  'short-recording': ({ durationS }, write) =>
    `${write.fixed(durationS, 2)} s sind wenig für ein Urteil; 5 s ruhigen Lichtbogen oder mehr aufnehmen.`,
  silent: () =>
    'Die Aufnahme ist von Anfang bis Ende still: Mikrofon aus, verdeckt oder nicht freigegeben.',
  'voltage-missing-samples': ({ samples }, write) => missing(write.plain(samples), 'der Spannung'),
  'current-missing-samples': ({ samples }, write) => missing(write.plain(samples), 'des Stroms'),
  'voltage-clipped': () => clipped('Die Spannung'),
  'current-clipped': () => clipped('Der Strom'),
  'voltage-held': () => held('Die Spannung'),
  'current-held': () => held('Der Strom'),
  'voltage-negative': () =>
    'Die Spannung liegt einen großen Teil der Zeit unter −9 V: So sieht ein Lichtbogen bei vertauschten Messleitungen aus. Wenn das zutrifft, einen negativen Maßstab angeben.',
};
