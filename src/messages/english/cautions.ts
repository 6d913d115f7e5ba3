import type { CautionParams } from '../rooms/cautions.js';
import type { CatalogueOf } from '../writer.js';

export const CAUTIONS: CatalogueOf<CautionParams> = {
  'caution-arc-welding': () =>
    'Arc welding injures eyes and skin (arc rays, burns) and harms by fume, electric shock and noise: wear the protection, ventilate, and change nothing on a live machine that you are not qualified to change.',
  'caution-rules-first': () =>
    'Local codes, the qualified welding procedure and the people responsible for it come first; this answer changes none of them.',
  'caution-estimate': () =>
    'This is an estimate from a recording. It is not an inspection and says nothing about the soundness of the weld.',
  'caution-procedure-first': () =>
    'Follow the qualified welding procedure: no setting outside its limits.',
  'caution-measuring': () =>
    'Wear protection, ventilate; mind rays, shock and noise. Local codes first.',
  'caution-no-inspection': () =>
    'This tool is not an inspection and does not qualify or reject a weld.',
};
