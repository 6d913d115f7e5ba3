import { message } from '../../../messages/index.js';
import type { Context } from '../context.js';
import { type ExplanationRule, type Finding, lines } from './finding.js';

const PROGRAMME_CHECK = message('check-programme');

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
      weight: shown && !(c.seen.kind === 'sound' && dipsThere(c)) ? 0.96 : 0.8,
      what: message('pulsed-programme-running'),
      evidenceFor: lines(
        shown && message('programme-shown', { programme: 'pulsed' }),
        rate !== null && message('pulses-a-second', { rateHz: rate }),
      ),
      evidenceAgainst: lines(!shown && message('programme-not-told', { whose: 'source' })),
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
      what: message('pulsed-programme-missing'),
      evidenceFor: lines(
        programme === 'steady' && message('programme-shown', { programme }),
        message('mode-was-seen', { mode: seen }),
      ),
      evidenceAgainst: lines(
        programme === 'unknown' && message('programme-not-told', { whose: 'recording' }),
      ),
      check: PROGRAMME_CHECK,
    };
  },
};

/** The source controls each short itself, where another mode was meant. */
export const controlledDipRunning: ExplanationRule = {
  id: 'controlled-dip-running',
  judge: ({ c, wanted, seen }) => {
    if (wanted === 'short-circuit' && seen === 'pulsed-spray' && dipsThere(c)) return evenDip(c);
    if (c.seen.sourceProgramme !== 'controlled-dip') return null;
    if (wanted === null || wanted === 'short-circuit') return null;
    return {
      weight: 0.93,
      what: message('controlled-dip-running'),
      evidenceFor: [message('programme-shown', { programme: 'controlled-dip' })],
      evidenceAgainst: [],
      check: PROGRAMME_CHECK,
    };
  },
};

/** Volts and amperes at which nothing but short-circuit is to be expected of a steady source. */
const dipsThere = ({ expected }: Context): boolean => (expected.outcomes?.dip ?? 0) >= 0.6;

/** A source that controls each short beats as evenly as pulses do. */
function evenDip({ point }: Context): Finding {
  return {
    weight: 0.85,
    what: message('even-dip-like-pulses'),
    evidenceFor: lines(
      point.voltageV !== null && message('point-voltage', { feederV: point.voltageV }),
      point.currentA !== null && message('point-current', { currentA: point.currentA }),
    ),
    evidenceAgainst: [message('programme-not-told', { whose: 'recording' })],
    check: message('check-programme'),
  };
}
