import type { PairParams } from '../rooms/pair.js';
import type { CatalogueOf } from '../writer.js';
import { runMode } from './names.js';

export const PAIR: CatalogueOf<PairParams> = {
  'too-little-in-both': () => 'In beiden Aufnahmen zugleich ist zu wenig vom Lichtbogen.',
  'trace-unlike-model': () =>
    'Die Messreihe gleicht nichts von dem, woran das Modell angepasst wurde; es wird keine Lichtbogenart genannt.',
  'sound-against-trace': ({ sound, trace }, write) =>
    `Ton und Messreihe widersprechen sich: ${write.mode(sound)} nach dem Ton, ${write.mode(trace)} nach der Messreihe.`,
  'not-of-one-run': ({ sound, trace }, write) =>
    `Ton und Messreihe scheinen nicht vom selben Versuch zu sein: ${runMode(sound, write)} nach dem Ton, ${runMode(trace, write)} nach der Messreihe.`,
  'not-fused': () =>
    'Ton und Messreihe scheinen nicht vom selben Versuch zu sein oder haben zu wenige deutliche Ereignisse gemeinsam, um es zu zeigen; sie wurden nicht gemeinsam beurteilt. Die Antwort beruht auf dem Ton; was die Messreihe allein sagt, steht daneben.',
  'alignment-not-shown': () =>
    'Es treten keine gemeinsamen Ereignisse hervor; dass beide vom selben Versuch und von derselben Uhr sind, wurde den Angaben entnommen.',
  'pooling-of-other-models': () =>
    'Die Gewichte von Ton und Messreihe wurden mit anderen Modellen angepasst als den hier verwendeten.',
};
