/** Version of the result document. Fields only get added within one major version. */
export const SCHEMA_VERSION = '1.0';
