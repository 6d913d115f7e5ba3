import type { Note } from '../../../core/index.js';
import { type BrowserStep, note } from '../../../messages/index.js';

/** What a person can be told when the microphone can't be had. */
export type MicrophoneTrouble = 'not-secure' | 'refused' | 'none-found' | 'in-use' | 'unknown';

export class MicrophoneError extends Error {
  readonly trouble: MicrophoneTrouble;

  constructor(trouble: MicrophoneTrouble, cause?: unknown) {
    super(trouble, { cause });
    this.trouble = trouble;
  }
}

/** The sound as the device takes it: everything that a call would want is off. */
const RAW = { autoGainControl: false, noiseSuppression: false, echoCancellation: false } as const;

/** The browser's steps that change a sound, in plain words. */
const STEPS = {
  autoGainControl: 'gain control',
  noiseSuppression: 'noise suppression',
  echoCancellation: 'echo cancellation',
} as const;

export interface Microphone {
  stream: MediaStream;
  track: MediaStreamTrack;
  /** Rate of the device, Hz, where the browser tells. */
  rateHz: number | undefined;
  notes: Note[];
  /** Steps that the browser kept on although asked not to. */
  keptOn: string[];
}

/**
 * Opens the microphone with every processing step off, and reads back what the browser really did.
 * @throws MicrophoneError
 */
export async function openMicrophone(): Promise<Microphone> {
  if (!navigator.mediaDevices?.getUserMedia) throw new MicrophoneError('not-secure');
  const stream = await navigator.mediaDevices
    .getUserMedia({ audio: { ...RAW, channelCount: 1 }, video: false })
    .catch((error: unknown) => {
      throw new MicrophoneError(troubleOf(error), error);
    });
  const [track] = stream.getAudioTracks();
  if (!track) throw new MicrophoneError('none-found');
  const settings = track.getSettings();
  const { keptOn, note } = readBack(settings);
  return { stream, track, rateHz: settings.sampleRate, notes: [note], keptOn };
}

/** What the browser says it applied, as a note of the recording. A step it is silent about is called so. */
export function readBack(settings: MediaTrackSettings): { keptOn: string[]; note: Note } {
  const steps = Object.keys(STEPS) as BrowserStep[];
  const stillOn = steps.filter((step) => settings[step]);
  const off = steps.filter((step) => settings[step] === false);
  const notTold = steps.filter((step) => settings[step] === undefined);
  const code = stillOn.length > 0 ? 'microphone-processed' : 'microphone-as-asked';
  return {
    keptOn: stillOn.map((step) => STEPS[step]),
    note: note(code, { off, stillOn, notTold }),
  };
}

function troubleOf(error: unknown): MicrophoneTrouble {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'none-found';
  if (name === 'NotReadableError' || name === 'AbortError') return 'in-use';
  return 'unknown';
}
