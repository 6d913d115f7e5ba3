import { again, message } from '../../../messages/index.js';
import { SURE_ENOUGH } from '../answers.js';
import { type ExplanationRule, lines } from './finding.js';

/** Doubts about the recording that touch this share of it weaken any claim. */
const HEAVY_SHARE = 0.3;

/** The recording, not the weld, may be what disagrees. */
export const recordingCannotSupport: ExplanationRule = {
  id: 'recording-cannot-support',
  judge: ({ c: { seen, modes }, trouble }) => {
    const flags = seen.quality.filter((flag) => flag.share >= HEAVY_SHARE);
    const worst = Math.max(0, ...flags.map((flag) => flag.share));
    const noMode = seen.status !== 'ok' || modes.length === 0;
    const weak = seen.confidence !== null && seen.confidence < SURE_ENOUGH;
    if (!noMode && !weak && (flags.length === 0 || !trouble)) return null;
    return {
      weight: noMode ? 0.97 : weak ? 0.96 : 0.5 + 0.3 * worst,
      what: message('recording-cannot-support'),
      evidenceFor: lines(
        noMode && message('result-is', { status: seen.status }),
        seen.confidence !== null &&
          weak &&
          message('confidence-is', { confidence: seen.confidence }),
        ...flags.map((flag) =>
          message('doubt-about-recording', { doubt: again(flag), shareOfRecording: flag.share }),
        ),
      ),
      evidenceAgainst: lines(!noMode && !weak && message('mode-named-all-the-same')),
      check: message('check-recording', { kind: seen.kind }),
    };
  },
};
