/** What can be picked by tapping. */
export const SHEETS = [
  'student',
  'booth',
  'expect',
  'wireDiameter',
  'wireMaterial',
  'gas',
  'setVoltage',
  'wireFeed',
] as const;
export type SheetKey = (typeof SHEETS)[number];
