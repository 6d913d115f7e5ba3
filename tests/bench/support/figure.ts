/** One measured figure, as `npm run bench` gathers it into its table. */
export interface Figure {
  name: string;
  value: number;
  unit: string;
  /** Whether more or less is better. */
  better: 'more' | 'less';
  /** The same figure of what it is held against, on the same machine at the same time. */
  baseline?: { name: string; value: number };
}

/** Prints a figure as a line that the table is made from. */
export function sayFigure(figure: Figure): void {
  console.log(`FIGURE ${JSON.stringify(figure)}`);
}
