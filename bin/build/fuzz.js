// Bundles and runs the long fuzz over every reader: `npm run fuzz -- --runs 2000 --seed 7 --only m4a`.
import { runBundled } from './run-bundled.js';

// Two folders deep, as the source is: it finds fixtures by its own place.
process.exitCode = await runBundled(
  'tests/recordings/fuzz/long.ts',
  'dist/fuzz/long.mjs',
  process.argv.slice(2),
);
