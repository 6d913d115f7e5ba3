import type { WatchParams } from '../rooms/watch.js';
import type { CatalogueOf } from '../writer.js';

export const WATCH: CatalogueOf<WatchParams> = {
  'watch-nothing-comes': ({ quietS }, write) => `nothing has come for ${write.fixed(quietS, 1)} s`,
  'watch-clock-anew': () => 'the clock of the logger began anew',
  'watch-samples-missing': ({ samples }, write) => `${write.plain(samples)} samples are missing`,
  'watch-source-ended': () => 'the source ended',
  'watch-told-by': ({ by }) => `told by the ${by}`,
  'watch-program': ({ program }) => `program ${program}`,
  'watch-program-unknown': ({ program }) =>
    `program ${program} is not among those of --programs; the expectation stays`,
  'watch-expect-unknown': ({ stated }) => `"#expect ${stated}" names no mode; nothing changed`,
};
