// Bundles and runs the measurements in tests/bench: `npm run bench` for all, `npm run bench -- csv` for one.
import { readdirSync } from 'node:fs';
import { runBundled } from './run-bundled.js';

const [chosen, ...rest] = process.argv.slice(2);
const names = readdirSync('tests/bench')
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3))
  .filter((name) => chosen === undefined || name === chosen);
if (names.length === 0) {
  process.stderr.write(`There is no measurement "${chosen}" in tests/bench.\n`);
  process.exitCode = 2;
}
for (const name of names) {
  process.stdout.write(`== ${name}\n`);
  const status = await runBundled(`tests/bench/${name}.ts`, `dist/bench-${name}.mjs`, rest);
  if (status !== 0) process.exitCode = 1;
}
