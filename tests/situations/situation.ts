import type { Mode, Segment, SourceProgramme } from '../../src/core/index.js';

/** What a set-up gives at its working point, fault or mode. */
export type ExpectedOutcome =
  | 'stubbing'
  | 'dip'
  | 'globular'
  | 'spray-with-shorts'
  | 'spray'
  | 'long-arc'
  | 'burn-back';

/** Where advice has to point. */
export type ExpectedMove =
  | 'volts-up'
  | 'volts-down'
  | 'stay'
  | 'refused-gas'
  | 'refused-gas-no-source'
  | 'refused-source';

/** What the recording showed; invented where no source is named. */
export interface SeenInSituation {
  mode: Mode | 'mixed';
  shares?: Partial<Record<Mode, number>>;
  segments?: readonly Segment[];
  figures?: Record<string, number>;
  programme?: SourceProgramme;
}

/** A situation with the answer that a welding engineer would give, written before any rule that answers it. */
export interface Situation {
  name: string;
  /** As a user states it; `material` is for wires that only the map knows. */
  setup: Record<string, string | number>;
  material?: 'silicon-bronze' | 'metal-cored';
  /** Likeliest outcome; several where it is a border: each must then stand at a quarter or more. */
  outcome: readonly ExpectedOutcome[];
  /** Outcomes that must not be possible here. */
  never?: readonly ExpectedOutcome[];
  /** Least likelihood of the one outcome named; half where not said. */
  atLeast?: number;
  /** Direction of the advice towards the wanted mode. */
  move?: ExpectedMove;
  seen?: SeenInSituation;
  /** Ids any of which may come first; an empty list where there is nothing to explain. */
  first?: readonly string[];
  /** What the first check has to look at. */
  check?: RegExp;
  /** Where the values come from. */
  source: string;
}

/** One change for good after six of ten seconds. */
export function turning(from: Mode, to: Mode): Segment[] {
  return [
    { startS: 0, endS: 6, mode: from, confidence: 0.9 },
    { startS: 6, endS: 10, mode: to, confidence: 0.9 },
  ];
}
