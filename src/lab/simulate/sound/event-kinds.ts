/**
 * Kinds of events that can be heard: metal touches, the arc strikes anew as a bridge parts, a drop leaves
 * freely, the current of a pulse rises.
 */
export const EVENT_KINDS = ['short', 'reignition', 'drop', 'pulse'] as const;
export type EventKind = (typeof EVENT_KINDS)[number];
