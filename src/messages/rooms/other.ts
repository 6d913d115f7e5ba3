/** Text from outside the catalogues: of feature sets, recordings or documents that others made. */
export interface OtherParams {
  'in-words': { text: string };
}
