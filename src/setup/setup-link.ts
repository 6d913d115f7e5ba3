import { SETUP_OPTIONS } from './setup-options.js';

/** How the part of an address behind `#` begins that carries a set-up. It never leaves the browser. */
const START = '#set-up?';

/** A set-up as the part of an address behind `#`. */
export function setupLink(raw: Readonly<Record<string, string | number>>): string {
  const pairs = Object.entries(raw).map(([key, value]): [string, string] => [key, String(value)]);
  return `${START}${new URLSearchParams(pairs)}`;
}

/** What such a part says, by the keys of a set-up; what is none of them, and long texts, are left out. */
export function linkedSetup(hash: string): Record<string, string> {
  if (!hash.startsWith(START)) return {};
  const known = SETUP_OPTIONS.map((one) => one.key);
  const pairs = [...new URLSearchParams(hash.slice(START.length))];
  return Object.fromEntries(
    pairs.filter(([key, value]) => known.includes(key) && value.length <= 80),
  );
}
