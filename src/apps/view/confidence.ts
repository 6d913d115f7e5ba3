/** Lowest confidence of each wording, highest first; every language has a wording for each. */
export const CONFIDENCE_BOUNDS = [0.99, 0.9, 0.75, 0.5, 0] as const;
