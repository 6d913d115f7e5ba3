/** Version of the result document. Fields only get added within one major version. */
export const SCHEMA_VERSION = '1.1';
/** Versions whose documents can be read; what a later one added is missing in an earlier one. */
export const READABLE_VERSIONS = ['1.0', SCHEMA_VERSION] as const;
