import type { RecordingParams } from '../rooms/recording.js';
import type { CatalogueOf, Writer } from '../writer.js';

export const RECORDING: CatalogueOf<RecordingParams> = {
  'damaged-packets': ({ damaged, packets, damagedS }, write) =>
    `${write.plain(damaged)} von ${write.plain(packets)} Datenpaketen des Tons (${write.fixed(damagedS, 2)} s) ließen sich nicht dekodieren und sind Stille.`,
  truncated,
  'encoder-delay-unknown': ({ codec }) =>
    codec === 'mp3'
      ? 'Die MP3-Datei nennt die Verzögerung ihres Kodierers nicht; Zeiten können bis zu 0,05 s zu spät liegen.'
      : 'Die Datei nennt die Verzögerung ihres Kodierers nicht; Zeiten können etwa 0,02 bis 0,05 s zu spät liegen.',
  'host-decoder': ({ decoder }) => `Der Ton wurde dekodiert von: ${decoder}.`,
  'lossy-codec': ({ codec, frameSamples, sampleRateHz }, write) => {
    const span =
      frameSamples === null
        ? ''
        : ` Zeitliche Einzelheiten verwischen über ${write.fixed((1000 * frameSamples) / sampleRateHz, 0)} ms.`;
    return `Der Ton ging durch ${codec.toUpperCase()}; das lässt weg oder ersetzt durch Rauschen, was das Ohr überhören würde, und oft alles über einer bestimmten Frequenz.${span} Die Sicherheit ist geringer als bei einer WAV-Datei.`;
  },
  'track-assumed': ({ tracks }, write) =>
    `Von ${write.plain(tracks)} Tonspuren wurde die erste genommen.`,
  'sound-starts-late': ({ startS }, write) =>
    `Der Ton beginnt ${write.fixed(startS, 3)} s nach dem Anfang der Datei; Zeiten zählen ab dem Beginn des Tons.`,
  'wav-wide-samples': () => '24-Bit-Werte stehen in je 4 Byte; sie wurden linksbündig gelesen.',
  'wav-frame-size': ({ blockBytes, channels, bits, usedBytes }, write) =>
    `Die Datei nennt ${write.plain(blockBytes)} Byte je Abtastschritt, was nicht zu ${write.plain(channels)} × ${write.plain(bits)} Bit passt; ${write.plain(usedBytes)} wurden verwendet.`,
  'wav-unpadded-chunk': () =>
    'Einem Abschnitt mit ungerader Länge fehlt das Füllbyte; er wurde ohne gelesen.',
  'wav-size-missing': () =>
    'Die Datei nennt die Länge ihres Tons nicht (abgebrochen oder in eine Pipe geschrieben); sie wurde bis zum Ende gelesen.',
  'chosen-channel-silent': () =>
    'Der erste Kanal ist von Anfang bis Ende still, ein anderer aber nicht; angeben, welcher Kanal gilt.',
  'above-full-scale': ({ peakOverFullScale }, write) =>
    `Werte reichen bis zum ${write.precise(peakOverFullScale, 4)}-Fachen des digitalen Vollausschlags; sie sind unverändert geblieben.`,
  'not-finite': ({ samples, firstTimesS, replacedBy }, write) => {
    const shown = firstTimesS.map((time) => `${write.fixed(time, 4)} s`).join('; ');
    const more = samples > firstTimesS.length ? '; …' : '';
    const by = replacedBy === 'last-good' ? 'den letzten gültigen Wert' : '0';
    return `${write.plain(samples)} ${samples === 1 ? 'Wert ist' : 'Werte sind'} keine Zahl (bei ${shown}${more}); ersetzt durch ${by}.`;
  },
  'channel-assumed': ({ channels }, write) =>
    `Von ${write.plain(channels)} Kanälen wurde der erste als Ton genommen, die anderen blieben weg; einen Kanal angeben, wenn ein anderer gelten soll, oder welche Kanäle Spannung und Strom enthalten.`,
  'sample-rate-stated': ({ sampleRateHz }, write) =>
    `Die Datei nennt eine Abtastrate von 0; es gilt die angegebene von ${write.plain(sampleRateHz)} Hz.`,
  'file-growing': ({ openedBytes, nowBytes }, write) =>
    `Die Datei wuchs beim Lesen von ${write.plain(openedBytes)} auf ${write.plain(nowBytes)} Byte; das Ergebnis gilt für das, was am Anfang da war.`,
  'raw-stated': ({ encoding, bigEndian, channels, sampleRateHz, skippedBytes }, write) => {
    const order = bigEndian ? ', hohes Byte zuerst' : '';
    const skipped = skippedBytes > 0 ? `, ${write.plain(skippedBytes)} Byte übersprungen` : '';
    return `Wie angegeben als reine Werte gelesen: ${encoding}${order}, ${write.plain(channels)} ${channels === 1 ? 'Kanal' : 'Kanäle'}, ${write.plain(sampleRateHz)} Hz${skipped}.`;
  },
  'partial-frame': ({ restBytes }, write) =>
    `Die letzten ${write.plain(restBytes)} Byte sind kein ganzer Abtastschritt und blieben weg.`,
  'bytes-after-sound': ({ bytes }, write) =>
    `${write.plain(bytes)} Byte hinter dem genannten Ende des Tons blieben weg; wenn der Rekorder abgebrochen hat, können sie Ton sein.`,
};

function truncated(params: RecordingParams['truncated'], write: Writer): string {
  switch (params.how) {
    case 'breaks-off':
      return `Die Datei bricht nach ${write.fixed(params.readS, 2)} s Ton ab (Meldung: „${params.cause}“).`;
    case 'decoded-less':
      return `Die Datei nennt ${write.fixed(params.declaredS, 2)} s Ton, es ließen sich aber nur ${write.fixed(params.readS, 2)} s dekodieren.`;
    case 'damaged-frame':
      return `Der AMR-Ton endet nach ${write.fixed(params.readS, 2)} s in einem beschädigten oder abgeschnittenen Datenpaket.`;
    case 'rest-no-block':
      return `Die Datei ist abgeschnitten; ihre letzten ${write.plain(params.restBytes)} Byte sind kein ganzer Block Ton.`;
    case 'damaged-packet':
      return `Nur die ersten ${write.plain(Math.round((100 * params.readBytes) / params.fileBytes))} % der Datei ließen sich lesen; ein Datenpaket dahinter ist beschädigt.`;
    case 'holds-less':
      return `Die Datei nennt ${write.precise(params.declaredS, 4)} s Ton, enthält aber nur ${write.precise(params.heldS, 4)} s; sie ist abgeschnitten.`;
  }
}
