import { type ExplanationRule, lines } from './finding.js';

const PROGRAMME_CHECK =
  'Read the process and programme shown on the source’s panel or in the robot job.';

/** The source pulses where constant voltage was meant. */
export const pulsedProgrammeRunning: ExplanationRule = {
  id: 'pulsed-programme-running',
  judge: ({ c, seen, wanted }) => {
    const pulses = c.seen.sourceProgramme === 'pulsed' || seen === 'pulsed-spray';
    const meantSteady =
      c.setup.source === 'steady' ||
      (c.setup.source === null && wanted !== null && wanted !== 'pulsed-spray');
    if (!pulses || !meantSteady || c.seen.status !== 'ok') return null;
    const rate = c.figure('pulseRateHz');
    const shown = c.seen.sourceProgramme === 'pulsed';
    return {
      weight: shown ? 0.96 : 0.8,
      text: 'A pulsed programme seems to run where constant voltage was meant.',
      evidenceFor: lines(
        shown && 'The recording shows a pulsed programme.',
        rate !== null && `Pulses at ${rate.toFixed(1)} a second.`,
      ),
      evidenceAgainst: lines(!shown && 'The source’s programme itself could not be told.'),
      check: PROGRAMME_CHECK,
    };
  },
};

/** Pulsing was meant and is missing. */
export const pulsedProgrammeMissing: ExplanationRule = {
  id: 'pulsed-programme-missing',
  judge: ({ c, seen, wanted }) => {
    const meant = c.setup.source === 'pulsed' || wanted === 'pulsed-spray';
    const programme = c.seen.sourceProgramme;
    if (!meant || seen === null || seen === 'pulsed-spray') return null;
    if (programme === 'pulsed' || programme === 'controlled-dip') return null;
    return {
      weight: programme === 'steady' ? 0.92 : 0.6,
      text: 'A pulsed programme was meant, and the source seems to run without it.',
      evidenceFor: lines(
        programme === 'steady' && 'The recording shows a steady source.',
        `${seen} was seen.`,
      ),
      evidenceAgainst: lines(
        programme === 'unknown' && 'The source’s programme could not be told from this recording.',
      ),
      check: PROGRAMME_CHECK,
    };
  },
};

/** The source controls each short itself, where another mode was meant. */
export const controlledDipRunning: ExplanationRule = {
  id: 'controlled-dip-running',
  judge: ({ c, wanted }) => {
    if (c.seen.sourceProgramme !== 'controlled-dip') return null;
    if (wanted === null || wanted === 'short-circuit') return null;
    return {
      weight: 0.93,
      text: 'The source runs a programme that controls each short circuit, where another mode was meant.',
      evidenceFor: ['The recording shows a controlled-dip programme.'],
      evidenceAgainst: [],
      check: PROGRAMME_CHECK,
    };
  },
};
