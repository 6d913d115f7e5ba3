import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');
const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const { packages } = JSON.parse(read('package-lock.json')) as {
  packages: Record<
    string,
    { dev?: boolean; optional?: boolean; devOptional?: boolean; license?: string }
  >;
};
const named = (places: string[]): string[] => [
  ...new Set(places.map((place) => place.replace(/^.*node_modules\//, ''))),
];
const licences = (places: string[]): Record<string, string[]> => {
  const found: Record<string, string[]> = {};
  for (const place of places) {
    const { license = 'none stated' } = packages[place]!;
    found[license] = [...(found[license] ?? []), ...named([place])];
  }
  return found;
};

/** Licences that ask for no more than their notice. */
const PERMISSIVE = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0'];
/** Packages under any other licence, each looked at: none asks anything of a program beside it. */
const LOOKED_AT: Record<string, string[]> = {
  'LGPL-3.0-or-later': ['codec-parser'],
  'MPL-2.0': ['mediabunny'],
  // HDF5's own terms (BSD-like) and those of NIST, public domain.
  'SEE LICENSE IN LICENSE.txt': ['h5wasm'],
};

const shipped = Object.keys(packages).filter((place) => place !== '' && !packages[place]!.dev);
const required = shipped.filter(
  (place) => !packages[place]!.optional && !packages[place]!.devOptional,
);

describe('what is installed with the package', () => {
  it('is under licences that were looked at', () => {
    const found = licences(shipped);
    for (const license of PERMISSIVE) delete found[license];
    expect(found).toEqual(LOOKED_AT);
  });

  it('holds no program under the GPL', () => {
    expect(Object.keys(licences(shipped)).filter((one) => /(^|[^L])GPL/.test(one))).toEqual([]);
    expect(named(shipped)).not.toContain('@audio/decode-aac');
  });

  it('is at most 90 packages, but for the optional ones', () => {
    expect(required.length).toBeLessThanOrEqual(90);
  });
});

describe('what lies within the built files', () => {
  const bundled = (name: string): string[] => named(JSON.parse(read(`dist/bundled/${name}.json`)));
  const notices = (path: string): string[] =>
    [...read(path).matchAll(/^={78}\n(\S+) \S+ \(/gm)].map((one) => one[1]!);

  it('is named with its notice in the package and in the page', () => {
    const all = ['cli', 'library', 'report', 'site'].flatMap(bundled);
    expect(notices('dist/NOTICES.txt')).toEqual([...new Set(all)].sort());
    expect(notices('dist/site/notices.txt')).toEqual(bundled('site'));
    expect(bundled('site')).toContain('codec-parser');
  });

  it('stands there with the text of its licence', () => {
    const parts = read('dist/NOTICES.txt')
      .split(/^={78}\n/m)
      .slice(1);
    for (const part of parts)
      expect([part.slice(0, 40), part.length > 600]).toEqual([part.slice(0, 40), true]);
    expect(read('dist/NOTICES.txt')).toContain('GNU LESSER GENERAL PUBLIC LICENSE');
    expect(read('dist/NOTICES.txt')).toContain('Mozilla Public License');
  });

  it('ships: the folder is in the package', () => {
    expect(JSON.parse(read('package.json')).files).toContain('dist');
    expect(read('dist/site/index.html')).toContain('notices.txt');
  });
});
