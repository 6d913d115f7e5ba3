import { ArcError } from '../core/index.js';
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
    throw new ArcError({
      code: 'cored-wire',
      what: `"${text}" is a flux-cored or metal-cored wire.`,
      expected: 'a solid wire of carbon steel, stainless steel or aluminium',
      todo: 'This tool was made for solid wire only; no verdict on a cored wire would be worth anything.',
    });
  }
  const found = PATTERNS.find(([pattern]) => pattern.test(text));
  if (found !== undefined) return found[1];
  const classed = WIRE_MATERIALS.find((one) => one === readWireClass(text)?.material);
  if (classed !== undefined) return classed;
  throw new ArcError({
    code: 'bad-wire-material',
    what: `The wire material "${text}" is not one this tool knows.`,
    expected: `${WIRE_MATERIALS.join(', ')}, a solid-wire classification such as ER70S-6, or unknown`,
    todo: 'For copper or bronze and other wires no bands are held here: say unknown.',
  });
}
