export type { Dataset, File, Group } from 'h5wasm';

/** The parts of the HDF5 library's module that its types leave out. */
export interface H5Module {
  FS: {
    createDataFile(
      parent: string,
      name: string,
      data: Uint8Array,
      canRead: boolean,
      canWrite: boolean,
      canOwn: boolean,
    ): void;
    unlink(path: string): void;
    streams?: ({ tty?: { ops: Record<string, unknown> } } | null)[];
  };
  /** Gives a status below 0 when the read failed. */
  get_dataset_data(...args: unknown[]): number;
}
