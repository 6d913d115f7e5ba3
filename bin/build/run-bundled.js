import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { build } from 'esbuild';

/**
 * Bundles a program of the tests, packages left outside, and runs it; its exit status. `onLine` gets each line of its
 * output instead of the terminal.
 */
export async function runBundled(entry, outfile, args, onLine) {
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
  if (!onLine)
    return spawnSync(process.execPath, [outfile, ...args], { stdio: 'inherit' }).status ?? 1;
  const child = spawn(process.execPath, [outfile, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  for await (const line of createInterface({ input: child.stdout })) onLine(line);
  return child.exitCode ?? (await once(child, 'exit'))[0] ?? 1;
}
