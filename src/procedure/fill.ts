import { ArcError } from '../core/index.js';
import { type Gas, parseSetup, type Setup, type SetupKey } from '../setup/index.js';
import type { Procedure } from './types.js';

type Raw = Readonly<Record<string, string | number>>;

/**
 * The set-up of a run under a procedure: what was stated, and what the procedure fixes where nothing was stated
 * (also not `unknown`). A range is no statement about the run, so that only wire, gas, polarity, programme, a
 * single mode and a single position are taken from it. What was stated stays, also where the procedure says
 * otherwise: the record then says so.
 *
 * @throws ArcError `contradicts-procedure` where another mode is wanted than the procedure allows, and what
 * `parseSetup` refuses
 */
export function fillSetup(procedure: Procedure, stated: Raw): Raw {
  const setup = parseSetup(stated);
  const wanted = setup.expectedMode;
  if (wanted !== null && !procedure.modes.includes(wanted)) throw otherMode(procedure, wanted);
  const filled: Record<string, string | number> = { ...stated };
  for (const { key, field, text } of fixed(procedure)) {
    if (text !== null && setup[field] === null && !setup.unknown.includes(key)) filled[key] = text;
  }
  parseSetup(filled);
  return filled;
}

function fixed(procedure: Procedure): { key: SetupKey; field: keyof Setup; text: string | null }[] {
  const { modes, positions, wireDiameterMm } = procedure;
  const only = <T extends string>(all: readonly T[]): T | null =>
    all.length === 1 ? all[0]! : null;
  return [
    {
      key: 'wireDiameter',
      field: 'wireDiameterMm',
      text: wireDiameterMm === null ? null : `${wireDiameterMm}mm`,
    },
    { key: 'wireMaterial', field: 'wireMaterial', text: procedure.wireMaterial },
    { key: 'gas', field: 'gas', text: procedure.gasText },
    { key: 'polarity', field: 'polarity', text: procedure.polarity },
    { key: 'source', field: 'source', text: procedure.source },
    { key: 'expect', field: 'expectedMode', text: only(modes) },
    { key: 'position', field: 'position', text: only(positions) },
  ];
}

/** What a stated set-up says otherwise than its procedure. Wire sizes sold for each other count as the same. */
export interface Otherwise {
  what: 'wire' | 'material' | 'gas' | 'polarity' | 'source' | 'position' | 'plate';
  stated: string;
  allowed: string;
}

/** True where both are the same size as sold: 0.045 in stands for 1.2 mm (common practice, no source). */
const sameWire = (a: number, b: number): boolean => Math.abs(a - b) < 0.09;

/** Where a stated set-up says otherwise than its procedure. */
export function contradictions(procedure: Procedure, setup: Setup): Otherwise[] {
  const found: Otherwise[] = [];
  const add = (what: Otherwise['what'], stated: string, allowed: string): void => {
    found.push({ what, stated, allowed });
  };
  const { wireDiameterMm: wire, gas, positions, plateMm } = procedure;
  if (wire !== null && setup.wireDiameterMm !== null && !sameWire(wire, setup.wireDiameterMm))
    add('wire', `${setup.wireDiameterMm} mm`, `${wire} mm`);
  for (const [what, allowed, stated] of [
    ['material', procedure.wireMaterial, setup.wireMaterial],
    ['polarity', procedure.polarity, setup.polarity],
    ['source', procedure.source, setup.source],
  ] as const) {
    if (allowed !== null && stated !== null && allowed !== stated) add(what, stated, allowed);
  }
  if (gas !== null && setup.gas !== null && otherGas(gas, setup.gas))
    add('gas', setup.gas.text, gas.text);
  if (setup.position !== null && positions.length > 0 && !holds(positions, setup.position))
    add('position', setup.position, procedure.positionText ?? '');
  if (plateMm !== null && setup.plateMm !== null && !within(setup.plateMm, plateMm))
    add('plate', `${setup.plateMm} mm`, `${plateMm.min ?? '…'}–${plateMm.max ?? '…'} mm`);
  return found;
}

/** A symbol alone goes with every mix of its group. */
function otherGas(one: Gas, other: Gas): boolean {
  const mixes = one.composition !== null && other.composition !== null;
  return one.symbol !== other.symbol || (mixes && one.text !== other.text);
}

/** `vertical` leaves open whether up or down, so it goes with either. */
function holds(allowed: readonly string[], position: string): boolean {
  return allowed.some(
    (one) =>
      one === position ||
      (one === 'vertical' && position.startsWith('vertical')) ||
      (position === 'vertical' && one.startsWith('vertical')),
  );
}

/** Both ends allowed. */
export function within(value: number, { min, max }: { min: number | null; max: number | null }) {
  return (min === null || value >= min) && (max === null || value <= max);
}

function otherMode({ name, modes }: Procedure, wanted: string): ArcError {
  return new ArcError({
    code: 'contradicts-procedure',
    what: `${wanted} is wanted, but the procedure ${name} allows ${modes.join(', ')}.`,
    expected: 'a wanted mode that the procedure allows',
    todo: 'Leave --expect out, or take the procedure of this weld.',
  });
}
