import type { Mode } from '../../core/index.js';
import type { GasName, Nothing, Span } from '../terms.js';

/** What a working point gives: a mode, a mixture or a fault. */
export type ProcessOutcome =
  | 'stubbing'
  | 'dip'
  | 'globular'
  | 'spray-with-shorts'
  | 'spray'
  | 'long-arc'
  | 'burn-back';

/** What is to be expected of a set-up, and what to change. Volts are at the feeder while welding. */
export interface CoachParams {
  /** The likeliest outcome; where it flips as volts, or as the loss behind a dial. */
  'most-likely': {
    outcome: ProcessOutcome;
    inTen: number;
    /** Another that is as likely, to the tenth. */
    alike?: ProcessOutcome | null;
    next: { outcome: ProcessOutcome; atV: number; side: 'below' | 'above' } | null;
    /** Set voltage where the point rests on a dial alone; then the flip is said as a loss. */
    dialV: number | null;
  };
  /** One outcome with its chance; `flipsAtV`: where it becomes, or ceases to be, the likeliest. */
  'outcome-chance': {
    outcome: ProcessOutcome;
    chance: 'permitted' | 'unlikely' | 'not-possible';
    inTen: number;
    flipsAtV: number | null;
    likeliest: boolean;
    /** As likely as the likeliest, to the tenth: where it flips is said with that one. */
    alike?: boolean;
  };
  'expected-losses': { lossV: Span; between: 'dial-and-feeder' };
  'move-volts': {
    wanted: Mode;
    trouble: 'too-cold' | 'too-hot';
    byV: Span;
    targetV: Span;
  };
  'move-feed': { up: boolean; feedMPerMin: Span | null; currentA: Span; instead: boolean };
  'move-both': { up: boolean; feedMPerMin: Span | null; currentA: Span; targetV: Span };
  'settings-suit': { wanted: Mode; inTen: number; targetV: Span };
  'look-before-moving': { wanted: Mode };
  'measure-first': { wanted: Mode; targetV: Span };
  'gas-carries-spray': { gas: GasName };
  'gas-never-carries': { wanted: Mode; gas: GasName; nearestGas: string | null };
  'gas-without-source': { wanted: Mode; gas: GasName; nearestGas: string | null };
  'wire-without-rows': { wanted: Mode; sizesMm: Span };
  'source-cannot-pulse': Nothing;
  'polarity-first': Nothing;
  'pulse-by-programme': Nothing;
  'no-settings-held': { wanted: Mode };
  /** The gas is known by its group alone, whose mixtures part on the mode. */
  'mixture-decides': { wanted: Mode; symbol: string };
  'set-like-this': {
    feedMPerMin: number | null;
    currentA: number;
    feederV: Span;
    inTen: number;
  };
  'keep-stick-out': { stickOutMm: Span };
  'windows-published': { published: boolean };
  'map-only-wire': Nothing;
  'heat-input-lacks': { volts: boolean; amps: boolean };
  'plate-changes-nothing': Nothing;
  'state-wire-and-gas': Nothing;
  'inside-procedure': Nothing;
}
