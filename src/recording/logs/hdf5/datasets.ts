import { seriesOf } from '../binary/matrix-columns.js';
import type { Scalar } from '../binary/stated-rate.js';
import type { Dataset, File, Group } from './library.js';

/** One series within a dataset. */
export interface SeriesPlace {
  path: string;
  name: string;
  unit?: string;
  rows: number;
  /** Ranges before and after the time index: which index of the other sides. */
  shape: number[];
  timeSide: number;
  otherIndex: number;
}

const MAX_OBJECTS = 10_000;
const MAX_DEPTH = 12;
const INTEGER = 0;
const FLOAT = 1;
const HIDDEN = /^#(refs|subsystem)#$/;

/**
 * Lists the numeric series and lone numbers of a file, attributes included. Links out of the file are
 * not followed.
 */
export function listSeries(file: File): { places: SeriesPlace[]; scalars: Scalar[] } {
  const places: SeriesPlace[] = [];
  const scalars: Scalar[] = [];
  let objects = 0;
  const visit = (group: Group, prefix: string, depth: number): void => {
    scalars.push(...attributeScalars(group, prefix));
    if (depth > MAX_DEPTH) return;
    for (const key of group.keys()) {
      if (HIDDEN.test(key) || ++objects > MAX_OBJECTS) continue;
      const found = group.get(key);
      const path = `${prefix}${key}`;
      if (found === null || !('type' in found)) continue;
      if (found.type === 'Group') visit(found as Group, `${path}/`, depth + 1);
      else if (found.type === 'Dataset') addDataset(found as Dataset, path, places, scalars);
    }
  };
  visit(file, '', 0);
  return { places, scalars };
}

function addDataset(
  dataset: Dataset,
  path: string,
  places: SeriesPlace[],
  scalars: Scalar[],
): void {
  const { type, size } = dataset.metadata;
  const shape = dataset.shape;
  if (shape === null || (type !== INTEGER && type !== FLOAT) || size > 8) return;
  scalars.push(...attributeScalars(dataset, `${path}@`));
  if (shape.every((side) => side === 1)) {
    const value = numberOf(dataset.value);
    if (value !== undefined) scalars.push({ name: path, value });
    return;
  }
  const unit = unitAttribute(dataset);
  const rows = Math.max(...shape);
  for (const series of seriesOf(shape, true)) {
    places.push({
      path,
      name: series.number === undefined ? path : `${path}[${series.number}]`,
      ...(unit === undefined ? {} : { unit }),
      rows,
      shape: [...shape],
      timeSide: shape.indexOf(rows),
      otherIndex: (series.number ?? 1) - 1,
    });
  }
}

function unitAttribute(dataset: Dataset): string | undefined {
  for (const name of ['units', 'unit', 'Units', 'Unit', 'unit_string']) {
    const value = dataset.attrs[name]?.value;
    if (typeof value === 'string' && value.trim() !== '') return value;
  }
  return undefined;
}

function attributeScalars(object: Group | Dataset, prefix: string): Scalar[] {
  return Object.entries(object.attrs).flatMap(([name, attribute]) => {
    const { type, total_size: total } = attribute.metadata;
    if ((type !== INTEGER && type !== FLOAT) || total !== 1) return [];
    const value = numberOf(attribute.value);
    return value === undefined ? [] : [{ name: `${prefix}${name}`, value }];
  });
}

function numberOf(value: unknown): number | undefined {
  if (typeof value === 'number') return value;
  if (typeof value === 'bigint') return Number(value);
  if (ArrayBuffer.isView(value) && !(value instanceof DataView)) {
    const first = (value as unknown as ArrayLike<number | bigint>)[0];
    return first === undefined ? undefined : Number(first);
  }
  return undefined;
}
