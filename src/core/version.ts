/** Name and version as they stand in every result; `tests/public.test.ts` holds them to package.json. */
export const TOOL_NAME = 'arc-transfer' as const;
export const TOOL_VERSION = '0.1.0';
