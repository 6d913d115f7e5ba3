import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * Short name of a set of values: the first 16 hex digits of the SHA-256 of their JSON with sorted
 * keys. Equal values give equal fingerprints on every machine, whatever the order of the keys.
 * Values must be JSON; NaN and infinity become null as in JSON.
 */
export function fingerprint(values: unknown): string {
  return bytesToHex(sha256(utf8ToBytes(canonicalJson(values)))).slice(0, 16);
}

/** JSON with the keys of every object sorted by code unit. */
export function canonicalJson(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  if (Array.isArray(value)) {
    // Long lists of numbers are the bulk of a model and need no sorting.
    const plain = value.every((one) => typeof one !== 'object' || one === null);
    return plain ? JSON.stringify(value) : `[${value.map(canonicalJson).join(',')}]`;
  }
  const parts = Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, inner]) => `${JSON.stringify(key)}:${canonicalJson(inner)}`);
  return `{${parts.join(',')}}`;
}
