import { packageFile } from '../../files/package-file.js';
import { modelFilesFingerprint } from '../terminal/flags/model-flag.js';
import type { Engine } from '../terminal/judge/engine.js';
import type { LabelPlan } from './plan.js';

/** A module that knows how to judge recordings, and names the models it judges by. */
export interface EngineModule {
  ENGINE: Engine;
  /** Changes whenever another model could give another answer. */
  modelsFingerprint(): Promise<string>;
}

/** Loads the module at a URL; the one that comes with the package where none is given. */
export async function loadEngine(url: string | null): Promise<EngineModule> {
  return (await import(url ?? packageFile('dist/apps/label/shipped.js').href)) as EngineModule;
}

/** Names the models that a batch is judged by: those of files named by the user, else those of the engine. */
export async function modelsOf(
  plan: LabelPlan | Pick<LabelPlan, 'models'>,
  engine: EngineModule,
): Promise<string> {
  return plan.models ? modelFilesFingerprint(plan.models) : engine.modelsFingerprint();
}
