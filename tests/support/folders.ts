/** Every folder, in the order in which data flows. */
export const ORDER =
  'core signal recording conditioning arc features classify timeline verdict procedure cross-check fusion result run evidence report simulate evaluate page node';

/**
 * Which folder may import which: data flows down this list. Rejects an implementation where, say, the
 * classifier could see the stated voltage (`procedure`) or a report could compute instead of show.
 */
export const ALLOWED: Record<string, readonly string[]> = {
  core: [],
  signal: ['core'],
  recording: ['core', 'signal'],
  conditioning: ['core', 'signal', 'recording'],
  arc: ['core', 'signal', 'recording', 'conditioning'],
  features: ['core', 'signal', 'conditioning', 'arc'],
  classify: ['core', 'features'],
  timeline: ['core', 'classify'],
  verdict: ['core', 'features', 'classify', 'timeline'],
  procedure: ['core'],
  'cross-check': ['core', 'verdict', 'procedure'],
  fusion: ['core', 'signal'],
  result: above('result'),
  run: above('run'),
  evidence: above('evidence'),
  report: ['core', 'result', 'evidence'],
  simulate: ['core', 'signal', 'recording'],
  evaluate: above('evaluate'),
  page: above('page'),
  node: above('node'),
};

function above(folder: string): string[] {
  const order = ORDER.split(' ');
  return order.slice(0, order.indexOf(folder));
}
