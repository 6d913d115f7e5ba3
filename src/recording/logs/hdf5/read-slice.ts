import type { Dataset, H5Module } from './library.js';

/**
 * Reads part of a dataset. The library does not look at the status of a read and would give whatever
 * lies in its memory when a chunk is damaged; here a failed read is an error.
 *
 * @throws Error when the data cannot be read.
 */
export function readSlice(
  module: H5Module,
  dataset: Dataset,
  ranges: [number, number][],
): ArrayLike<number | bigint> {
  const read = module.get_dataset_data;
  let status = 0;
  module.get_dataset_data = (...args) => {
    status = read.apply(module, args);
    return status;
  };
  try {
    const values = dataset.slice(ranges);
    if (status < 0 || values === null) throw new Error(`“${dataset.path}” cannot be read`);
    return values as unknown as ArrayLike<number | bigint>;
  } finally {
    module.get_dataset_data = read;
  }
}
