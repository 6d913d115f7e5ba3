import type { DecodedArray, ParquetParsers, SchemaElement } from 'hyparquet';
import { splitHeader } from '../header-name.js';

/** Time stamps stay numbers, in their own unit: dates would cut them to milliseconds. */
export const PARSERS: Partial<ParquetParsers> = {
  timestampFromMilliseconds: Number,
  timestampFromMicroseconds: Number,
  timestampFromNanoseconds: Number,
};

/** A number of fixed digits behind the point, which may be stored as bytes. */
export function isDecimal(element: SchemaElement): boolean {
  return element.logical_type?.type === 'DECIMAL' || element.converted_type === 'DECIMAL';
}

/** Numbers as float64; null, and what is no number, as NaN. */
export function numericValues(values: DecodedArray, element: SchemaElement): Float64Array {
  if (values instanceof Float64Array) return values;
  const out = new Float64Array(values.length);
  const decimal = isDecimal(element);
  for (let i = 0; i < values.length; i++) {
    const value: unknown = values[i];
    if (typeof value === 'number') out[i] = value;
    else if (typeof value === 'bigint') out[i] = Number(value);
    else if (typeof value === 'boolean') out[i] = value ? 1 : 0;
    else out[i] = decimal && typeof value === 'string' ? Number(value) : Number.NaN;
  }
  return out;
}

const UNITS = { MILLIS: 'ms', MICROS: 'µs', NANOS: 'ns' } as const;

/** Name and unit of a field: a time stamp's type says its unit, otherwise the name may. */
export function unitOfField(element: SchemaElement): { name: string; unit?: string } {
  const logical = element.logical_type;
  if (logical?.type === 'TIMESTAMP' || logical?.type === 'TIME') {
    return { name: element.name, unit: UNITS[logical.unit] };
  }
  const converted = element.converted_type;
  if (converted?.endsWith('_MILLIS')) return { name: element.name, unit: 'ms' };
  if (converted?.endsWith('_MICROS')) return { name: element.name, unit: 'µs' };
  return splitHeader(element.name);
}
