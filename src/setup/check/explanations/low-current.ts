import { type Made, message } from '../../../messages/index.js';
import {
  currentForFeed,
  currentRangeForFeed,
  impliedStickOut,
  USUAL_STICK_OUT,
} from '../../index.js';
import { colder } from '../answers.js';
import type { Context } from '../context.js';
import { type ExplanationRule, lines } from './finding.js';

/** Longer than this nobody welds with solid wire: another cause has to be found, mm (common practice, no source). */
export const LONGEST_MM = 36;

/** How the measured current stands to what the feed should draw. */
export interface CurrentShortfall {
  expected: Made;
  measuredA: number;
  /** Stick-out that alone would explain it, mm. */
  impliedMm: number | null;
  /** Fits what electrode negative would draw. */
  fitsNegative: boolean;
  /** Even electrode negative would draw more. */
  belowNegative: boolean;
}

/** The shortfall, or null where the current is not measured or is what the feed should draw. */
export function currentShortfall({
  setup,
  measuredA,
  feedCurrentA,
}: Context): CurrentShortfall | null {
  const { wireDiameterMm, wireFeedMPerMin } = setup;
  if (measuredA === null || feedCurrentA === null || wireDiameterMm === null) return null;
  if (wireFeedMPerMin === null || measuredA >= feedCurrentA.min) return null;
  const wire = {
    material: setup.wireMaterial ?? ('carbon-steel' as const),
    diameterMm: wireDiameterMm,
  };
  const negative = currentRangeForFeed(
    { ...wire, stickOutMm: setup.stickOutMm, polarity: 'dcen' },
    wireFeedMPerMin,
  );
  return {
    expected: message('current-for-feed', { measuredA, expectedA: feedCurrentA }),
    measuredA,
    impliedMm: impliedStickOut(wire, wireFeedMPerMin, measuredA),
    fitsNegative: negative !== null && measuredA >= negative.min && measuredA <= negative.max,
    belowNegative: negative !== null && measuredA < negative.min,
  };
}

const STICK_OUT_CHECK = message('check-stick-out');

/** Long wire between tip and arc: the feed draws too little current. */
export const longStickOut: ExplanationRule = {
  id: 'long-stick-out',
  judge: ({ c, trouble, seen, wanted }) => {
    const short = currentShortfall(c);
    const implied = short?.impliedMm ?? null;
    if (short !== null) {
      const plausible = implied !== null && implied <= LONGEST_MM;
      return {
        weight: plausible ? 0.82 : 0.35,
        what: message('long-stick-out', { shown: 'by-current' }),
        evidenceFor: lines(
          short.expected,
          plausible && message('stick-out-would-explain', { stickOutMm: implied }),
        ),
        evidenceAgainst: lines(
          implied !== null && !plausible && message('stick-out-too-long', { stickOutMm: implied }),
        ),
        check: STICK_OUT_CHECK,
      };
    }
    const stated = statedLong(c);
    if (!trouble || seen === null) return null;
    if (stated !== null) return { ...stated, check: STICK_OUT_CHECK };
    if (c.measuredA !== null || wanted === null || !colder(seen, wanted)) return null;
    return {
      weight: 0.25,
      what: message('long-stick-out', { shown: 'not' }),
      evidenceFor: [],
      evidenceAgainst: [message('no-measured-current')],
      check: STICK_OUT_CHECK,
    };
  },
};

/** A stick-out stated long enough to bring the current below the transition, or just long. */
function statedLong({ setup, bounds }: Context) {
  const { stickOutMm, wireDiameterMm, wireFeedMPerMin, expectedMode } = setup;
  if (stickOutMm === null || stickOutMm <= USUAL_STICK_OUT.max) return null;
  const wire = {
    material: setup.wireMaterial ?? ('carbon-steel' as const),
    diameterMm: wireDiameterMm ?? 1.2,
  };
  const draws = (mm: number): number | null =>
    wireFeedMPerMin === null || wireDiameterMm === null
      ? null
      : currentForFeed({ ...wire, stickOutMm: mm }, wireFeedMPerMin);
  const [now, usual] = [draws(stickOutMm), draws(15)];
  const needs = bounds.transition?.bestA ?? Number.NaN;
  const decides =
    expectedMode === 'spray' && now !== null && usual !== null && now < needs && usual >= needs;
  return {
    weight: decides ? 0.85 : 0.5,
    what: message('long-stick-out', { shown: 'as-stated' }),
    evidenceFor: lines(
      message('stick-out-stated', { stickOutMm, usualMm: USUAL_STICK_OUT }),
      decides && message('feed-draws', { nowA: now, usualA: usual, usualMm: 15, sprayA: needs }),
    ),
    evidenceAgainst: lines(now === null && message('feed-and-wire-unknown')),
  };
}

/** Electrode negative (or alternating): the wire melts at far less current. */
export const wrongPolarity: ExplanationRule = {
  id: 'wrong-polarity',
  judge: ({ c, trouble }) => {
    const { polarity } = c.setup;
    const stated = polarity === 'dcen' || polarity === 'ac';
    const short = currentShortfall(c);
    const far = short?.fitsNegative === true && (short.impliedMm ?? 99) > LONGEST_MM;
    if (!(stated && trouble) && !far && short?.fitsNegative !== true) return null;
    return {
      weight: stated ? 0.88 : far ? (polarity === 'dcep' ? 0.5 : 0.86) : 0.4,
      what: message('wrong-polarity'),
      evidenceFor: lines(
        stated && message('polarity-stated', { polarity }),
        short?.expected,
        far && message('no-stick-out-explains'),
      ),
      evidenceAgainst: lines(
        !stated && polarity === 'dcep' && message('positive-stated'),
        short !== null && !far && message('stick-out-explains-too'),
        short === null && message('no-measured-current'),
      ),
      check: message('check-polarity'),
    };
  },
};
