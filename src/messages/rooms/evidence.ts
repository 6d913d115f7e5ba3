import type { Mode, RecordingKind, Status } from '../../core/index.js';
import type { Message, Nothing, Span, VoltsPlace } from '../terms.js';

/** What speaks for or against an explanation. */
export interface EvidenceParams {
  // The recording.
  'result-is': { status: Status };
  'confidence-is': { confidence: number };
  'doubt-about-recording': { doubt: Message; shareOfRecording: number };
  'mode-named-all-the-same': Nothing;
  'named-with-confidence': { confidence: number };
  'mode-was-seen': { mode: Mode };
  // The source and its programme.
  'programme-shown': { programme: 'pulsed' | 'steady' | 'controlled-dip' };
  'programme-not-told': { whose: 'source' | 'recording' };
  'pulses-a-second': { rateHz: number };
  'slope-stated': { slopeVPer100A: number; usualVPer100A: number };
  'slope-not-known': Nothing;
  // Volts and where they stay.
  'voltage-loss': {
    from: VoltsPlace;
    to: VoltsPlace;
    fromV: number;
    toV: number;
    lostV: number;
    usualV: Span;
  };
  'terminal-volts-unknown': Nothing;
  'terminal-volts-not-measured': Nothing;
  'cable-length-taken': { lengthM: number };
  'cable-length-not-known': Nothing;
  'voltage-span': { feederV: Span };
  'point-voltage': { feederV: Span };
  'point-current': { currentA: Span };
  'no-measured-backing': Nothing;
  'no-measured-confirming': Nothing;
  'measured-above-set': Nothing;
  'measured-fits-set': Nothing;
  'volts-above-limit': { volts: number; aboveV: number; limitV: number };
  'volts-below-limit': { volts: number; belowV: number; limitV: number };
  'voltage-surplus': { surplusV: number };
  'voltage-not-low': Nothing;
  'voltage-lacking': { lackingV: number };
  'spray-and-shorts': { sprayShare: number; shortShare: number };
  // Current, feed and stick-out.
  'current-for-feed': { measuredA: number; expectedA: Span };
  'current-estimated': Nothing;
  'current-below-transition': { currentA: number; missingA: number };
  'no-measured-current': Nothing;
  'other-wire-draws': { diameterMm: number };
  'stick-out-would-explain': { stickOutMm: number };
  'stick-out-too-long': { stickOutMm: number };
  'stick-out-stated': { stickOutMm: number; usualMm: Span };
  'stick-out-explains-too': Nothing;
  'no-stick-out-explains': Nothing;
  'feed-draws': { nowA: number; usualA: number; usualMm: number; sprayA: number };
  'feed-and-wire-unknown': Nothing;
  'polarity-stated': { polarity: 'dcep' | 'dcen' | 'ac' };
  'positive-stated': Nothing;
  // The gas.
  'some-report-spray': Nothing;
  'taught-highest-mode': Nothing;
  'measured-in-spray': Nothing;
  'point-estimated': Nothing;
  // Shorts and changes over the run.
  'shorts-last': { meanS: number };
  'shorts-a-second': { rateHz: number };
  'shorts-missing': Nothing;
  'short-rate-wanders': { cv: number };
  'short-rate-steady': { cv: number };
  'shorts-uneven': { cv: number };
  'mode-changes': { changes: number };
  'nothing-wanders': Nothing;
  'lasting-change': { atS: number };
  'setup-forbids-mode': { mode: Mode };
  'possible-with-good-gas': { mode: Mode };
  'torch-or-feed-alike': Nothing;
  'run-changes-modes': Nothing;
  'run-keeps-mode': Nothing;
}

/** What a person can look at next. Never a change of a setting. */
export interface NextParams {
  'check-recording': { kind: RecordingKind };
  'check-programme': Nothing;
  'check-gas': { compareWithProcedure: boolean };
  'check-source-terminals': Nothing;
  'check-leads': Nothing;
  'check-shielding': Nothing;
  'check-stubbing': Nothing;
  'check-long-arc': Nothing;
  'check-measured-not-dial': Nothing;
  'check-polarity': Nothing;
  'check-stick-out': Nothing;
  'check-feed': Nothing;
  /** `voltsGiven`: the volts were measured already. */
  'check-volts-for-feed': { voltsGiven: boolean };
  'check-spool': Nothing;
  'check-settings-again': Nothing;
  'check-feeder-voltage': Nothing;
  'check-zone': Nothing;
}
