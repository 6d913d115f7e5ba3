import { ArcError } from '../../core/index.js';

export function unfinished(name: string): ArcError {
  return new ArcError({
    code: 'unfinished-recording',
    what: `${name} has no index: the recording was cut off before it was finalised, or the copy is incomplete.`,
    expected: 'a complete MP4, M4A or MOV file',
    todo: 'Copy it again from the recorder, or let the recorder repair it.',
  });
}

const VIDEO = ['mp4', 'mov', 'webm', 'mkv', '3gp'];

export function noSound(name: string, container: string): ArcError {
  return new ArcError({
    code: 'no-sound-track',
    what: `${name} is a file of the kind ${container.toUpperCase()} without a sound track that can be read.`,
    expected: 'a recording with sound',
    todo: VIDEO.includes(container)
      ? 'Check that the microphone was on while filming.'
      : 'Copy it again from the recorder; its start may be damaged.',
  });
}

export function encrypted(name: string): ArcError {
  return new ArcError({
    code: 'encrypted',
    what: `The sound of ${name} is encrypted (copy protection).`,
    expected: 'a recording without copy protection',
    todo: 'Use the original recording.',
  });
}

export function unknownCodec(container: string, codec: string): ArcError {
  return new ArcError({
    code: 'unknown-codec',
    what: `The file (${container.toUpperCase()}) holds sound of the type “${codec}”.`,
    expected: 'AAC, ALAC, MP3, Opus, Vorbis, FLAC, AMR or PCM',
    todo: 'Convert it to WAV or M4A.',
  });
}

export function noDecoder(codec: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'no-decoder',
    what: `No decoder for ${codec.toUpperCase()} is at hand.`,
    expected:
      'ffmpeg on this machine, the package @audio/decode-aac beside this one, or a browser that plays it',
    todo: 'Install ffmpeg, or run npm install @audio/decode-aac (its licence is the GPL), or convert the file to WAV.',
    cause,
  });
}

export function damaged(name: string, container: string, cause: unknown): ArcError {
  const why = cause instanceof Error ? cause.message : String(cause);
  return new ArcError({
    code: 'damaged-container',
    what: `${name} starts as a file of the kind ${container.toUpperCase()} but cannot be read further (${why}).`,
    expected: 'a whole file',
    todo: 'Copy it again from the recorder.',
    cause,
  });
}

export function undecodable(name: string, codec: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'undecodable',
    what: `Not one packet of the ${codec.toUpperCase()} sound of ${name} can be decoded.`,
    expected: 'an undamaged recording',
    todo: 'Copy it again from the recorder.',
    cause,
  });
}
