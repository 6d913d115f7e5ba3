/** Wires that recordings are judged of. */
export const WIRE_MATERIALS = ['carbon-steel', 'stainless-steel', 'aluminium'] as const;
export type WireMaterial = (typeof WIRE_MATERIALS)[number];
