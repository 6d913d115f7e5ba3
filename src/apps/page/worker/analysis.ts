import {
  analyse,
  defaultSettings,
  type PipelineEvent,
  settingsRecord,
} from '../../../analysis/index.js';
import { failedResult, type Result } from '../../../analysis/result/index.js';
import type { Note } from '../../../core/index.js';
import type { FeatureExtractor } from '../../../features/index.js';
import type { Recording } from '../../../recording/index.js';
import { parseSetup } from '../../../setup/index.js';
import { EvidenceCollector, watched } from '../../view/evidence/index.js';
import type { Judged, RawSetup } from '../messages.js';
import { HOST_NAME } from '../shell/host.js';
import { draw } from './drawing.js';
import { loadPageModel } from './models.js';

export interface Task {
  name: string;
  /** Known before, or only once all samples are there. */
  sha256: () => Promise<string | null>;
  setup: RawSetup;
  /** What the page knows of the recording beside its samples. */
  notes: readonly Note[];
  /** Language of the pictures. */
  lang: string;
  /** Prior probability of an arc, where it is known better than even. */
  arcPrior?: number | undefined;
  onEvent?: (event: PipelineEvent) => void;
  extractor?: FeatureExtractor;
  /** Told the result before the pictures are drawn. */
  onResult?: (result: Result) => void;
}

/** Opens and judges one recording with the shipped settings but for the prior. What goes wrong becomes a `failed` result. */
export async function judge(open: () => Promise<Recording>, task: Task): Promise<Judged> {
  const { arcPrior } = task;
  const settings = { ...defaultSettings(), ...(arcPrior === undefined ? {} : { arcPrior }) };
  let recording: Recording | undefined;
  try {
    recording = await open();
    const collector = new EvidenceCollector(recording);
    const setup = parseSetup(task.setup);
    const result = await analyse(watched(recording, collector), {
      setup,
      settings,
      loadModel: loadPageModel,
      path: task.name,
      sha256: null,
      host: HOST_NAME,
      ...(task.extractor ? { extractor: task.extractor } : {}),
      onEvent: (event) => {
        collector.event(event);
        task.onEvent?.(event);
      },
    });
    result.source.sha256 = await task.sha256();
    result.source.notes.push(...task.notes);
    task.onResult?.(result);
    const evidence = collector.finish(result);
    const pictures = draw({ result, evidence, setup: task.setup, lang: task.lang });
    return { result, evidence, pictures };
  } catch (error) {
    const sha256 = await task.sha256().catch(() => null);
    const failure = {
      path: task.name,
      sha256,
      host: HOST_NAME,
      settings: settingsRecord(settings),
      error,
    };
    return { result: failedResult(failure), evidence: null, pictures: null };
  } finally {
    await recording?.close?.();
  }
}
