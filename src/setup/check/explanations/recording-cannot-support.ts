import { percent, SURE_ENOUGH } from '../answers.js';
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
      text: 'The recording cannot carry the claim; look at the recording before the machine.',
      evidenceFor: lines(
        noMode && `The result is "${seen.status}".`,
        seen.confidence !== null && weak && `Confidence is ${percent(seen.confidence)}.`,
        ...flags.map((flag) => `${flag.message} (${percent(flag.share)} of the recording)`),
      ),
      evidenceAgainst: lines(
        !noMode && !weak && 'The mode was named with fair confidence all the same.',
      ),
      check:
        seen.kind === 'sound'
          ? 'Record again from about half a metre with the phone’s voice processing off, without clipping, some ten seconds of steady welding; or take a voltage trace.'
          : 'Record the voltage again, 10 000 samples a second or more, at the feeder, some ten seconds of steady welding.',
    };
  },
};
