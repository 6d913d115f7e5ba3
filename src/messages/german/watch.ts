import type { WatchParams } from '../rooms/watch.js';
import type { CatalogueOf } from '../writer.js';

export const WATCH: CatalogueOf<WatchParams> = {
  'watch-nothing-comes': ({ quietS }, write) => `seit ${write.fixed(quietS, 1)} s kommt nichts`,
  'watch-clock-anew': () => 'die Uhr des Datenloggers begann von vorn',
  'watch-samples-missing': ({ samples }, write) => `${write.plain(samples)} Werte fehlen`,
  'watch-source-ended': () => 'die Signalquelle hat geendet',
  'watch-told-by': ({ by }) => (by === 'stream' ? 'sagt das Signal selbst' : 'sagt der Broker'),
  'watch-program': ({ program }) => `Programm ${program}`,
  'watch-program-unknown': ({ program }) =>
    `Programm ${program} gehört nicht zu denen von --programs; die Erwartung bleibt`,
  'watch-expect-unknown': ({ stated }) =>
    `„#expect ${stated}“ nennt keine Lichtbogenart; nichts geändert`,
};
