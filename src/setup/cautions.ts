/** Said beside every piece of advice. General safety per ANSI Z49.1; local rules come first. */
export const BEFORE_YOU_CHANGE: readonly string[] = [
  'Follow the qualified welding procedure: change no setting outside its limits, and ask whoever is responsible for it.',
  'Eyes and skin, fume, electric shock, burns, noise: protect yourself and those beside you before measuring near a live arc; local codes and your employer’s rules come first.',
  'This tool is not an inspection and does not qualify or reject a weld.',
];
