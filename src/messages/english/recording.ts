import type { RecordingParams } from '../rooms/recording.js';
import type { CatalogueOf, Writer } from '../writer.js';

export const RECORDING: CatalogueOf<RecordingParams> = {
  'damaged-packets': ({ damaged, packets, damagedS }, write) =>
    `${write.plain(damaged)} of ${write.plain(packets)} codec packets (${write.fixed(damagedS, 2)} s) could not be decoded and are silence.`,
  truncated,
  'encoder-delay-unknown': ({ codec }) =>
    codec === 'mp3'
      ? 'The MP3 file does not state its encoder delay; times may be late by up to 0.05 s.'
      : 'The file does not state its encoder delay; times may be late by some 0.02 to 0.05 s.',
  'host-decoder': ({ decoder }) => `The sound was decoded by ${decoder}.`,
  'lossy-codec': ({ codec, frameSamples, sampleRateHz }, write) => {
    const span =
      frameSamples === null
        ? ''
        : ` Detail in time smears within ${write.fixed((1000 * frameSamples) / sampleRateHz, 0)} ms.`;
    return `The sound went through ${codec.toUpperCase()}, which leaves out or replaces by noise what the ear would miss, and often everything above some frequency.${span} Confidence is lower than for a WAV.`;
  },
  'track-assumed': ({ tracks }, write) =>
    `Of ${write.plain(tracks)} sound tracks the first was taken.`,
  'sound-starts-late': ({ startS }, write) =>
    `The sound starts ${write.fixed(startS, 3)} s into the file; times count from the start of the sound.`,
  'wav-wide-samples': () => '24-bit samples stand in 4 bytes each; read as left-justified.',
  'wav-frame-size': ({ blockBytes, channels, bits, usedBytes }, write) =>
    `The file states ${write.plain(blockBytes)} bytes a frame, which does not fit ${write.plain(channels)} × ${write.plain(bits)} bits; ${write.plain(usedBytes)} were used.`,
  'wav-unpadded-chunk': () => 'A chunk of odd length lacks its padding byte; read without it.',
  'wav-size-missing': () =>
    'The file does not state how long its sound is (interrupted, or written to a pipe); read to its end.',
  'chosen-channel-silent': () =>
    'The first channel is silent from end to end, but another channel is not; state which channel to use.',
  'above-full-scale': ({ peakOverFullScale }, write) =>
    `Samples reach ${write.precise(peakOverFullScale, 4)} times digital full scale; they are kept as they are.`,
  'not-finite': ({ samples, firstTimesS, replacedBy }, write) => {
    const shown = firstTimesS.map((time) => `${write.fixed(time, 4)} s`).join(', ');
    const more = samples > firstTimesS.length ? ', …' : '';
    const by = replacedBy === 'last-good' ? 'the last good value' : '0';
    return `${write.plain(samples)} ${samples === 1 ? 'sample is' : 'samples are'} not a number (at ${shown}${more}); replaced by ${by}.`;
  },
  'one-sided-sound': () =>
    'The samples lie on one side of zero, as the volts or amperes of an arc do and a sound does not. State what the channels hold with --channel and --scale; also where it is sound after all.',
  'channel-assumed': ({ channels }, write) =>
    `Of ${write.plain(channels)} channels the first was taken as sound and the others were left out; state a channel to use another, or which ones hold voltage and current.`,
  'sample-rate-stated': ({ sampleRateHz }, write) =>
    `The file states a sample rate of 0; ${write.plain(sampleRateHz)} Hz is used, as stated.`,
  'file-growing': ({ openedBytes, nowBytes }, write) =>
    `The file grew from ${write.plain(openedBytes)} to ${write.plain(nowBytes)} bytes while it was read; the result covers what was there at the start.`,
  'raw-stated': ({ encoding, bigEndian, channels, sampleRateHz, skippedBytes }, write) => {
    const order = bigEndian ? ', high byte first' : '';
    const skipped = skippedBytes > 0 ? `, ${write.plain(skippedBytes)} bytes passed over` : '';
    return `Read as bare samples as stated: ${encoding}${order}, ${write.plain(channels)} ${channels === 1 ? 'channel' : 'channels'}, ${write.plain(sampleRateHz)} Hz${skipped}.`;
  },
  'partial-frame': ({ restBytes }, write) =>
    `The last ${write.plain(restBytes)} bytes are not a whole frame and were left out.`,
  'bytes-after-sound': ({ bytes }, write) =>
    `${write.plain(bytes)} bytes after the declared end of the sound were left out; if the recorder was interrupted, they may be sound.`,
};

function truncated(params: RecordingParams['truncated'], write: Writer): string {
  switch (params.how) {
    case 'breaks-off':
      return `The file breaks off after ${write.fixed(params.readS, 2)} s of sound (${params.cause}).`;
    case 'decoded-less':
      return `The file declares ${write.fixed(params.declaredS, 2)} s of sound, but ${write.fixed(params.readS, 2)} s could be decoded.`;
    case 'damaged-frame':
      return `The AMR sound ends after ${write.fixed(params.readS, 2)} s in a damaged or cut frame.`;
    case 'rest-no-block':
      return `The file was cut off; its last ${write.plain(params.restBytes)} bytes are not a whole block of sound.`;
    case 'damaged-packet':
      return `Only the first ${write.plain(Math.round((100 * params.readBytes) / params.fileBytes))} % of the file could be read; a packet behind that is damaged.`;
    case 'holds-less':
      return `The file declares ${write.precise(params.declaredS, 4)} s of sound but holds ${write.precise(params.heldS, 4)} s; it was cut off.`;
  }
}
