import { message, refuse } from '../messages/index.js';
import { readWireClass } from './wire-classification.js';
import { WIRE_MATERIALS, type WireMaterial } from './wire-materials.js';

export { WIRE_MATERIALS, type WireMaterial };

const CORED =
  /cored|flux|fcaw|metal.?core|f(ü|ue)lldraht|\be?\d{2,3}t-?\d|\be\d{2}c-?\d|\bt\d\d ?\d|self.?shield/iu;

const PATTERNS: readonly [RegExp, WireMaterial][] = [
  [/^(carbon|mild|low.?alloy|plain|unalloyed)?[ -]?steel$|^(carbon|mild)$/iu, 'carbon-steel'],
  [/^er ?(70|80|90|100|110) ?s|^g ?[2346]si\d?|^sg ?[123]$|^baustahl$/iu, 'carbon-steel'],
  [/stainless|^inox|^edelstahl|^(er)? ?(3\d\d|4[01]\d|430|2209)[a-z]*$/iu, 'stainless-steel'],
  [
    /^alumin(i)?um|^alu?$|^almg|^alsi|^er ?(1100|4\d{3}|5\d{3})$|^(4043|4047|5356|5183|5554)$/iu,
    'aluminium',
  ],
];

/**
 * The wire material from a word or a wire classification (`stainless`, `ER70S-6`, `G3Si1`, `5356`).
 * Cored wires are refused in words: their arc sounds and drops differently and nothing here holds.
 */
export function parseWireMaterial(raw: string): WireMaterial {
  const text = raw.trim();
  if (CORED.test(text)) {
    throw refuse('cored-wire', {
      what: message('wire-cored', { stated: text }),
      expected: message('expected-solid-wire'),
      todo: message('solid-wire-only'),
    });
  }
  const found = PATTERNS.find(([pattern]) => pattern.test(text));
  if (found !== undefined) return found[1];
  const classed = WIRE_MATERIALS.find((one) => one === readWireClass(text)?.material);
  if (classed !== undefined) return classed;
  throw refuse('bad-wire-material', {
    what: message('wire-not-known', { stated: text }),
    expected: message('expected-wire', { materials: [...WIRE_MATERIALS] }),
    todo: message('other-wire-unknown'),
  });
}
