import type { Mode } from '../../core/index.js';
import type { GasName, Message, Nothing, Span } from '../terms.js';
import type { SourceName } from './knowledge.js';

/** The judged working point: volts at the feeder, amperes, gas, programme; null where not known. */
export interface Place {
  feederV: Span | null;
  /** Whether those volts were read, follow from the dial, or come from a trace whose place is not stated. */
  voltsBy?: 'measured' | 'set' | 'place-unknown' | null;
  currentA: Span | null;
  gas: GasName | null;
  source: 'steady' | 'pulsed' | null;
}

/** What the codes that were read make of a change of mode. */
export type CodeRule = 'aws-d1' | 'asme-ix' | 'iso-15614';

/** The stated set-up against what was seen. */
export interface CheckParams {
  'nothing-found': Nothing;
  'not-analysed': Nothing;
  'no-mode-named': Nothing;
  'confidence-only': { confidence: number };
  'no-setting-stated': Nothing;
  'polarity-not-held': Nothing;
  'setup-permits': { place: Place; modes: Mode[] };
  'setup-forbids': { place: Place; modes: Mode[]; outside: { mode: Mode; where: Message }[] };
  'setup-leaves-open': { place: Place; modes: Mode[]; others: Mode[] };
  'measured-above-dial': { setV: number; measuredV: number };
  'wanted-and-seen': { wanted: Mode };
  /** `shareOfTime`: how much of it was in the wanted mode. */
  'wanted-not-seen': { wanted: Mode; seen: Mode[]; shareOfTime: number };
  'essential-variable': { seen: Mode; wanted: Mode };
  'code-rule-from': { rule: CodeRule; source: SourceName };
}
