import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyse, defaultSettings } from '../../src/analysis/index.js';
import type { RunView } from '../../src/apps/report/index.js';
import { EvidenceCollector, placeRun, watched } from '../../src/apps/view/evidence/index.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import { bufferSource, openRecording } from '../../src/recording/index.js';
import { parseSetup } from '../../src/setup/index.js';

/** A shipped demonstration recording as its report and the page see it. */
export async function shippedView(name: string, stated: Record<string, string>): Promise<RunView> {
  const file = join(import.meta.dirname, '../../fixtures/recordings', name);
  const recording = await openRecording(bufferSource(new Uint8Array(readFileSync(file)), name));
  const collector = new EvidenceCollector(recording);
  const setup = parseSetup(stated);
  const result = await analyse(watched(recording, collector), {
    setup,
    settings: defaultSettings(),
    loadModel: loadShippedModel,
    path: name,
    sha256: null,
    host: 'node',
    onEvent: (event) => collector.event(event),
  });
  const evidence = collector.finish(result);
  return { result, evidence, placement: placeRun(setup, result), modelCard: {} };
}
