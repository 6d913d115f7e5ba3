// Installs and builds, but only what is out of date, so that `npm start` and `npm test` begin at once
// when nothing has changed. Words go to stderr.
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const STAMP = 'dist/.ready';

const changed = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

function newest(folder) {
  let latest = changed(folder);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : changed(path));
  }
  return latest;
}

function run(script) {
  const { status, error } = spawnSync('npm', ['run', '--silent', script], {
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (error) process.stderr.write(`npm run ${script}: ${error.message}\n`);
  return status === 0;
}

const installed = changed('node_modules/.package-lock.json');
const installStale = installed < Math.max(changed('package.json'), changed('package-lock.json'));
if (installStale && !run('setup')) process.exitCode = 1;

const inputs = ['package.json', 'tsconfig.json', 'tsconfig.node.json'].map(changed);
const sources = Math.max(newest('src'), newest('bin/build'), ...inputs);
const buildStale = changed(STAMP) < Math.max(sources, installed);
if (process.exitCode !== 1 && (installStale || buildStale)) {
  if (run('build')) writeFileSync(STAMP, '');
  else process.exitCode = 1;
}
