import { extractorFor } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import { loadShippedModel } from '../../../files/shipped-models.js';
import type { RunView } from '../../report/index.js';
import type { Engine } from '../../terminal/judge/engine.js';
import { EvidenceCollector, placeRun, watched } from '../../view/evidence/index.js';

/** An engine that also gathers evidence, and the view of each of its results. */
export interface EvidenceEngine extends Engine {
  /** The view of a result; of one that failed before analysis, words only. Can be asked once. */
  take(result: Result): RunView;
}

/** Lets an engine's samples pass by a collector, so that a report needs no second reading. */
export function withEvidence(engine: Engine): EvidenceEngine {
  const views = new WeakMap<Result, RunView>();
  return {
    ...engine,
    async analyse(recording, options) {
      // Says what is wrong with the recording before anything is gathered.
      extractorFor(recording);
      const collector = new EvidenceCollector(recording);
      const result = await engine.analyse(watched(recording, collector), {
        ...options,
        onEvent: (event) => {
          collector.event(event);
          options.onEvent?.(event);
        },
      });
      const evidence = collector.finish(result);
      const placement = placeRun(options.setup, result);
      views.set(result, { result, evidence, placement, modelCard: await cardOf(result) });
      return result;
    },
    take(result) {
      const view = views.get(result);
      views.delete(result);
      return view ?? { result, evidence: null, placement: null, modelCard: {} };
    },
  };
}

/** What the shipped model says of its own making; empty where another model was used. */
async function cardOf({ model }: Result): Promise<Record<string, unknown>> {
  if (!model) return {};
  const name = model.featureSet.split('/')[0] ?? '';
  const document = await loadShippedModel(name).catch(() => undefined);
  const { id, training } = (document ?? {}) as { id?: string; training?: Record<string, unknown> };
  return id === model.id && training ? training : {};
}
