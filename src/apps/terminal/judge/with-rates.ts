import { extractorFor } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import { RateTrack } from '../../view/evidence/index.js';
import type { Engine } from './engine.js';

/** An engine that also keeps the event rate over time of each of its results. */
export interface RateEngine extends Engine {
  /** Undefined for a result that failed before analysis. */
  ratesOf(result: Result): RateTrack | undefined;
}

/** Lets the pipeline's windows pass by a track of rates, for the picture in the terminal. */
export function withRates(engine: Engine): RateEngine {
  const tracks = new WeakMap<Result, RateTrack>();
  return {
    ...engine,
    async analyse(recording, options) {
      const track = new RateTrack(extractorFor(recording).featureSet);
      const result = await engine.analyse(recording, {
        ...options,
        onEvent: (event) => {
          track.event(event);
          options.onEvent?.(event);
        },
      });
      tracks.set(result, track);
      return result;
    },
    ratesOf: (result) => tracks.get(result),
  };
}
