import type { Nothing } from '../terms.js';

/** Why something happened to a live signal, or to what is expected of it. */
export interface WatchParams {
  'watch-nothing-comes': { quietS: number };
  'watch-clock-anew': Nothing;
  'watch-samples-missing': { samples: number };
  'watch-source-ended': Nothing;
  'watch-told-by': { by: 'stream' | 'broker' };
  'watch-program': { program: string };
  'watch-program-unknown': { program: string };
  'watch-expect-unknown': { stated: string };
}
