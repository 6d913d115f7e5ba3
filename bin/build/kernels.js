// Compiles the SIMD kernels of the network (text form) into the module that holds their bytes; needs the registry.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const FOLDER = 'src/model/network';
const out = join(mkdtempSync(join(tmpdir(), 'kernels-')), 'kernels.wasm');
execFileSync(
  'npx',
  ['--yes', '--package=wabt@1.0.39', 'wat2wasm', `${FOLDER}/kernels.wat`, '-o', out],
  { stdio: 'inherit' },
);
const base64 = readFileSync(out).toString('base64');
writeFileSync(
  `${FOLDER}/kernels-wasm.ts`,
  `/** \`kernels.wat\` compiled by bin/build/kernels.js, base64. */\nexport const KERNELS_WASM =\n  '${base64}';\n`,
);
