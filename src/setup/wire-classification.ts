import type { WireMaterial } from './wire-materials.js';

/** A wire classification read for its material. */
export interface WireClass {
  /** The standard whose form it has. */
  standard:
    | 'AWS A5.9'
    | 'AWS A5.10'
    | 'AWS A5.18'
    | 'AWS A5.28'
    | 'AWS A5.7'
    | 'ISO 14341'
    | 'ISO 14343'
    | 'ISO 16834'
    | 'ISO 18273';
  material: WireMaterial | 'silicon-bronze' | 'metal-cored';
  /** The gas of the tests, where the classification names one: never the gas in use. */
  testGas: string | null;
}

type Form = readonly [RegExp, WireClass['standard'], WireClass['material']];

/**
 * Forms of the classifications. They hold no diameter; the gas that some hold is the one the weld metal
 * was tested with. The forms are from memory of the standards; only the material is taken from them.
 */
const FORMS: readonly Form[] = [
  // Carbon steel: ER70S-6, ER48S-6 in SI units; composite metal-cored E70C-6M.
  [/^er ?(?:70|48|49)s-?(?:2|3|4|6|7|8|g)$/u, 'AWS A5.18', 'carbon-steel'],
  [/^e(?:70|48|49)c-?(?:3|6|g|gs)[cm]?(?: ?h\d+)?$/u, 'AWS A5.18', 'metal-cored'],
  // Low-alloy steel: ER80S-D2, ER90S-B3, ER100S-G.
  [
    /^er ?(?:70|80|90|100|110|120|49|55|62|69|76|83)s-?[a-z0-9]+(?:-[a-z0-9]+)?$/u,
    'AWS A5.28',
    'carbon-steel',
  ],
  [/^e(?:70|80|90|100|110|120)c-?[a-z0-9]+$/u, 'AWS A5.28', 'metal-cored'],
  // Stainless steel: ER308LSi, ER2209, ER410NiMo; composite EC308L.
  [
    /^er ?(?:[2-6]\d\d(?!\d)[a-z0-9]*|16-8-2|19-10h|22\d\d|25\d\d|26-1|33-31)$/u,
    'AWS A5.9',
    'stainless-steel',
  ],
  [/^ec(?:2|3|4)\d\d[a-z]*$/u, 'AWS A5.9', 'metal-cored'],
  // Aluminium: ER4043, ER5356, R4043, ER1100; Al 5356 (AlMg5Cr).
  [/^e?r ?(?:1\d{3}|4\d{3}|5\d{3})[a-z]?$/u, 'AWS A5.10', 'aluminium'],
  [/^ercusi-?a$|^cusi3(?:mn1)?$/u, 'AWS A5.7', 'silicon-bronze'],
  // ISO 18273: S Al 5356 (AlMg5Cr(A)).
  [
    /^(?:s )?al ?\d{4}[a-z]?(?: ?\(.*\))?$|^(?:s )?al(?:mg|si|mn|99)[\w.,()]*$/u,
    'ISO 18273',
    'aluminium',
  ],
  // ISO 14343-A: G 19 9 LSi; -B: SS308LSi.
  [/^g \d{2} \d{1,2}(?: \d{1,2})*(?: [a-z]+)*$/u, 'ISO 14343', 'stainless-steel'],
  [/^ss ?[2-4]\d\d[a-z]*$/u, 'ISO 14343', 'stainless-steel'],
];

/** ISO 14341-A: strength, impact, gas of the test, composition (G 42 4 M21 3Si1); -B: G 49A 3 M S6; ISO 16834-A for high strength. */
const ISO_STEEL =
  /^g (\d{2})a? ?(?:[zaby]|\d{1,2}[ay]?)? ?((?:[mci]\d{0,2})|a)? ?((?:\d?si\d?|z|2mo|4mo|2ti|\d?ni\d.*|mn.*|s\d.*))$/u;

const PREFIX =
  /^(?:(?:aws|asme|sfa|en|din|bs|nf|iso|ansi|csa|w48)[ /-]*)+a?[ ]?(?:5\.\d{1,2}m?(?: ?\/ ?a?5\.\d{1,2}m?)?|\d{5}(?:-[ab])?)?(?::\d{4})?[ :-]*/u;

/**
 * Reads a classification of AWS A5.9, A5.10, A5.18, A5.28 or ISO 14341, 14343, 16834, 18273 for its material
 * alone, with or without the number of the standard before it. Null where it has none of these forms.
 */
export function readWireClass(raw: string): WireClass | null {
  const text = raw.trim().toLowerCase().replaceAll(/\s+/gu, ' ').replace(PREFIX, '').trim();
  if (text === '') return null;
  const steel = ISO_STEEL.exec(text);
  if (steel !== null) return isoSteel(steel);
  const form = FORMS.find(([pattern]) => pattern.test(text));
  if (form === undefined) return null;
  return { standard: form[1], material: form[2], testGas: null };
}

function isoSteel([, strength, gas]: RegExpExecArray): WireClass {
  const standard = Number(strength) >= 55 ? 'ISO 16834' : 'ISO 14341';
  return { standard, material: 'carbon-steel', testGas: gas?.toUpperCase() ?? null };
}
