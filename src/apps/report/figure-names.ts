/** Names of the pictures, as on the command line. */
export type FigureName =
  | 'time'
  | 'map'
  | 'place'
  | 'reasons'
  | 'levels'
  | 'plane'
  | 'short-voltage'
  | 'short-current'
  | 'rhythm'
  | 'intervals';
