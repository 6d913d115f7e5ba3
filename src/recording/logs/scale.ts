import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { ReadOptions } from '../types.js';
import type { ChosenColumn } from './choose-columns.js';

/**
 * What the values of a column are multiplied by to become volts or amperes: the stated scale, else the
 * written unit, else 1. Whatever was not written is noted.
 *
 * @throws ArcError `bad-scale`.
 */
export function factorOf(
  pick: ChosenColumn,
  quantity: 'voltage' | 'current',
  options: ReadOptions,
  notes: Note[],
): number {
  const stated = options.scale?.[quantity];
  const column = pick.column.name;
  if (stated !== undefined) {
    if (!Number.isFinite(stated) || stated === 0) throw badScale(quantity, stated);
    notes.push(note('scale-stated', { of: 'column', column, quantity, perUnit: stated }));
    return stated;
  }
  if (pick.unit?.quantity === quantity) {
    if (pick.unit.factor !== 1) {
      notes.push(note('unit-scaled', { column, unit: pick.unit.symbol, quantity }));
    }
    return pick.unit.factor;
  }
  notes.push(note('unit-assumed', { column, statedUnit: pick.column.unit ?? null, quantity }));
  return 1;
}

/**
 * A scale for a quantity that is not read must not go by unnoticed.
 *
 * @throws ArcError `bad-scale`.
 */
export function refuseIdleScale(options: ReadOptions, read: readonly string[]): void {
  for (const quantity of ['voltage', 'current'] as const) {
    const stated = options.scale?.[quantity];
    if (stated === undefined || read.includes(quantity)) continue;
    throw new ArcError({
      code: 'bad-scale',
      what: `A ${quantity} scale (${stated}) was stated, but no column is read as ${quantity}.`,
      expected: `a ${quantity} column beside its scale`,
      todo: `State the ${quantity} column, or leave out the scale.`,
    });
  }
}

function badScale(quantity: string, stated: number): ArcError {
  return new ArcError({
    code: 'bad-scale',
    what: `The ${quantity} scale is ${stated}.`,
    expected: `${quantity === 'voltage' ? 'volts' : 'amperes'} a unit of the column, a finite number other than 0`,
    todo: `State the ${quantity} scale, for example 10 for a 10:1 divider.`,
  });
}
