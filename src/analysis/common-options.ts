import { parseSetup, type Setup, type SetupInput } from '../setup/index.js';
import type { LoadModel } from './model-for.js';
import { parseSettings } from './parse-settings.js';
import type { Settings } from './settings.js';

/** What every way of judging takes; all of it may be left out. */
export interface CommonOptions {
  /** The set-up as stated, raw or parsed; it is compared with the answer and cannot reach it. */
  setup?: SetupInput | Setup;
  /** Settings that differ from their defaults, see `SETTINGS`. */
  settings?: Partial<Settings>;
  /** Models to judge by, by feature set; those that come with the package unless told. */
  loadModel?: LoadModel;
}

/** The same with everything checked. @throws ArcError what the set-up or a setting says wrong */
export function settled({ setup = {}, settings = {}, loadModel }: CommonOptions): {
  setup: Setup;
  settings: Settings;
  loadModel: LoadModel | undefined;
} {
  return {
    setup: isParsed(setup) ? setup : parseSetup(setup),
    settings: parseSettings(settings),
    loadModel,
  };
}

function isParsed(setup: SetupInput | Setup): setup is Setup {
  return 'notes' in setup;
}
