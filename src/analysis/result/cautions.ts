/**
 * What goes with every verdict that names or judges an arc, because a person may act on it. Hazards as
 * listed by ANSI Z49.1:2021 (eyes, burns, fume, shock, noise).
 */
export const CAUTIONS: readonly string[] = [
  'Arc welding injures eyes and skin (arc rays, burns) and harms by fume, electric shock and noise: wear the protection, ventilate, and change nothing on a live machine that you are not qualified to change.',
  'Local codes, the qualified welding procedure and the people responsible for it come first; this answer changes none of them.',
  'This is an estimate from a recording. It is not an inspection and says nothing about the soundness of the weld.',
];
