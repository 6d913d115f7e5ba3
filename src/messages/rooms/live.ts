import type { Mode } from '../../core/index.js';
import type { Nothing } from '../terms.js';

/** Steps of a browser that change a sound. */
export type BrowserStep = 'autoGainControl' | 'noiseSuppression' | 'echoCancellation';

/** What the browser says that it did: steps off, still on though asked not to be, and not told. */
interface MicrophoneSteps {
  off: BrowserStep[];
  stillOn: BrowserStep[];
  notTold: BrowserStep[];
}

/** Notes on a signal that was recorded or heard by this program itself. */
export interface LiveParams {
  'microphone-as-asked': MicrophoneSteps;
  'microphone-processed': MicrophoneSteps;
  'browser-resampled': { deviceHz: number; usedHz: number };
  'tone-in-recording': { toneHz: number; atS: number };
  'recording-interrupted':
    | { by: 'device-gone' }
    | { by: 'call' }
    | { by: 'too-long'; longestS: number };
  /** `startedAt`: time of the first sample, ISO 8601. */
  'live-weld': { weld: number; startedAt: string };
  'live-lost-samples': { samples: number };
  'live-rows': { rateHz: number; by: 'stated' | 'times' };
}

/** Why a person should listen to a part of a recording. */
export interface DoubtParams {
  'no-mode-stands-out': Nothing;
  'mode-in-doubt': { mode: Mode; confidence: number };
}
