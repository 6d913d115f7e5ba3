import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { build } from 'esbuild';

/** Bundles a program of the tests, packages left outside, and runs it; its exit status. */
export async function runBundled(entry, outfile, args) {
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
    readFileSync('package.json', 'utf8'),
  );
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    external: Object.keys({ ...dependencies, ...devDependencies, ...optionalDependencies }),
    logLevel: 'warning',
  });
  return spawnSync(process.execPath, [outfile, ...args], { stdio: 'inherit' }).status ?? 1;
}
