import type { CautionParams } from '../rooms/cautions.js';
import type { CatalogueOf } from '../writer.js';
import { PROCEDURE } from './glossary.js';

export const CAUTIONS: CatalogueOf<CautionParams> = {
  'caution-arc-welding': () =>
    'Lichtbogenschweißen verletzt Augen und Haut (Lichtbogenstrahlung, Verbrennungen) und schadet durch Schweißrauch, elektrischen Schlag und Lärm: Schutzausrüstung tragen, lüften und an einer Maschine unter Spannung nichts ändern, wozu man nicht befähigt ist.',
  'caution-rules-first': () =>
    `Örtliche Vorschriften, ${PROCEDURE.nominative} und die dafür Verantwortlichen gehen vor; diese Antwort ändert nichts daran.`,
  'caution-estimate': () =>
    'Dies ist eine Schätzung aus einer Aufnahme. Sie ist keine Prüfung und sagt nichts über die Güte der Schweißnaht aus.',
  'caution-procedure-first': () =>
    `Nach ${PROCEDURE.dative} arbeiten: keine Einstellung außerhalb ihrer Grenzen.`,
  'caution-measuring': () =>
    'Augen und Haut vor Strahlung und Verbrennung schützen, gegen Schweißrauch lüften; es drohen elektrischer Schlag und Lärm. Örtliche Vorschriften gehen vor.',
  'caution-no-inspection': () =>
    'Dieses Werkzeug ist keine Prüfung; es lässt keine Schweißnaht zu und weist keine zurück.',
};
