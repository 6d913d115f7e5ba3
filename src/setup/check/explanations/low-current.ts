import {
  currentForFeed,
  currentRangeForFeed,
  impliedStickOut,
  rangeText,
  USUAL_STICK_OUT,
} from '../../index.js';
import { colder } from '../answers.js';
import type { Context } from '../context.js';
import { type ExplanationRule, lines } from './finding.js';

/** Longer than this nobody welds with solid wire: another cause has to be found, mm (common practice, no source). */
const LONGEST_MM = 36;

/** How the measured current stands to what the feed should draw. */
export interface CurrentShortfall {
  expectedText: string;
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
    expectedText: `${Math.round(measuredA)} A measured, ${rangeText(feedCurrentA, 0)} A expected for the feed`,
    measuredA,
    impliedMm: impliedStickOut(wire, wireFeedMPerMin, measuredA),
    fitsNegative: negative !== null && measuredA >= negative.min && measuredA <= negative.max,
    belowNegative: negative !== null && measuredA < negative.min,
  };
}

const STICK_OUT_CHECK =
  'Measure the wire between contact tip and work with the power off, and time the wire feed over a measured length.';

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
        text: 'The current is low for the feed, as with a long stick-out.',
        evidenceFor: lines(
          short.expectedText,
          plausible && `A stick-out of about ${Math.round(implied)} mm would explain it.`,
        ),
        evidenceAgainst: lines(
          implied !== null &&
            !plausible &&
            `It would take ${Math.round(implied)} mm, longer than anyone welds with.`,
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
      text: 'A long stick-out would lower current and arc voltage.',
      evidenceFor: [],
      evidenceAgainst: ['No measured current shows it.'],
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
    text: 'The stick-out is long, which lowers the current the feed draws.',
    evidenceFor: lines(
      `${stickOutMm} mm is stated; ${rangeText(USUAL_STICK_OUT)} mm is usual.`,
      decides &&
        `The feed draws about ${Math.round(now)} A so, and ${Math.round(usual)} A at 15 mm; spray begins near ${Math.round(needs)} A.`,
    ),
    evidenceAgainst: lines(now === null && 'Without feed and wire the current it costs is open.'),
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
      weight: stated ? 0.88 : far ? 0.86 : 0.4,
      text: 'The current is what electrode negative would draw; solid wire is run on electrode positive.',
      evidenceFor: lines(
        stated && `Polarity is stated as ${polarity}.`,
        short?.expectedText,
        far && 'No usual stick-out explains so low a current.',
      ),
      evidenceAgainst: lines(
        !stated && polarity === 'dcep' && 'Electrode positive is stated.',
        short !== null && !far && 'A longer stick-out explains the current as well.',
        short === null && 'No measured current shows it.',
      ),
      check: 'With the power off, see which terminal the gun lead and the work lead are on.',
    };
  },
};
