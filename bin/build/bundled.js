// Remembers which packages lie within what is built, and gathers their notices.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';

const FOLDER = 'dist/bundled';
/** Names of files in which packages keep their licence and the notices it asks for. */
const LICENCE_FILE = /^(licen[cs]e|copying|notice|unlicense)([-._].*)?$/i;
/** https://opensource.org/license/mit */
const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and
associated documentation files (the "Software"), to deal in the Software without restriction, including without
limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the
Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of
the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;
const RULE = '='.repeat(78);

/** Writes down the packages whose code esbuild put into a bundle. */
export function rememberBundled(name, { outputs }) {
  const found = new Set();
  for (const { inputs } of Object.values(outputs))
    for (const path of Object.keys(inputs)) {
      const place = /^(?:\(disabled\):)?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1];
      if (place !== undefined) found.add(place);
    }
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(`${FOLDER}/${name}.json`, JSON.stringify([...found].sort()));
}

/** Places of the packages in the bundles of these names; of all bundles where none is given. */
export function bundledPackages(names) {
  const files = readdirSync(FOLDER).filter((one) => !names || names.includes(one.slice(0, -5)));
  const places = files.flatMap((one) => JSON.parse(readFileSync(`${FOLDER}/${one}`, 'utf8')));
  return [...new Set(places)].sort();
}

/** Name, version, licence and the text of the licence of each package in the bundles of these names. */
export function noticesOf(names) {
  const parts = bundledPackages(names).map(noticeOf);
  return `This holds code of the following packages, each under its own licence.\n\n${parts.join('\n')}`;
}

/** WebAssembly within packages that was made from the sources of others. */
const WITHIN = {
  'mpg123-decoder': 'Holds mpg123 by its authors (LGPL 2.1, https://www.mpg123.de).',
  'opus-decoder':
    'Holds libopus by Xiph.Org, Skype, Octasic, Broadcom and others (BSD 3-clause, https://opus-codec.org/license).',
  '@wasm-audio-decoders/flac': 'Holds libFLAC by Xiph.Org and Josh Coalson (BSD 3-clause).',
  '@wasm-audio-decoders/ogg-vorbis': 'Holds libogg and libvorbis by Xiph.Org (BSD 3-clause).',
  '@audio/decode-amr': 'Holds opencore-amr by PacketVideo (Apache 2.0).',
};

/** The terms of a package that names its licence and brings no text of it. */
function plainText(license, by) {
  if (license !== 'MIT') throw new Error(`There is no text of the licence ${license}.`);
  return `Copyright (c) ${by ?? 'the authors'}\n\n${MIT}`;
}

function noticeOf(place) {
  const { name, version, license, homepage, repository, author } = JSON.parse(
    readFileSync(`${place}/package.json`, 'utf8'),
  );
  const home = homepage ?? (typeof repository === 'string' ? repository : repository?.url) ?? '';
  const texts = readdirSync(place)
    .filter((one) => LICENCE_FILE.test(one))
    .map((one) => readFileSync(`${place}/${one}`, 'utf8').trim());
  const by = typeof author === 'string' ? author : author?.name;
  const text = texts.length > 0 ? texts.join('\n\n') : plainText(license, by);
  const within = WITHIN[name] ? `\n${WITHIN[name]}\n` : '';
  return `${RULE}\n${name} ${version} (${license})\n${home}\n${within}\n${text}\n`;
}
