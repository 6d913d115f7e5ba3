import { message } from '../../../messages/index.js';
import { currentFromFeed, WIRE_SIZES } from '../../index.js';
import type { Context } from '../context.js';
import { type ExplanationRule, lines } from './finding.js';
import { currentShortfall, LONGEST_MM } from './low-current.js';

/** The box holds another size than stated: the feed draws the current of that size. */
export const wrongWire: ExplanationRule = {
  id: 'wrong-wire',
  judge: ({ c }) => {
    const { measuredA, feedCurrentA, setup } = c;
    if (measuredA === null || feedCurrentA === null) return null;
    const more = measuredA > feedCurrentA.max;
    if (!more && measuredA >= feedCurrentA.min) return null;
    const size = sizeThatFits(c, more);
    if (size === null) return null;
    const short = currentShortfall(c);
    const byStickOut = short?.impliedMm != null && short.impliedMm <= LONGEST_MM;
    return {
      weight: more ? 0.8 : byStickOut ? 0.4 : setup.polarity === 'dcep' ? 0.85 : 0.6,
      what: message('wrong-wire', { thicker: more }),
      evidenceFor: lines(
        message('current-for-feed', { measuredA, expectedA: feedCurrentA }),
        message('other-wire-draws', { diameterMm: size }),
      ),
      evidenceAgainst: lines(byStickOut && message('stick-out-explains-too')),
      check: message('check-spool'),
    };
  },
};

/** The next size up or down whose current for this feed is the one measured; null where none is. */
function sizeThatFits({ setup, measuredA }: Context, thicker: boolean): number | null {
  const stated = setup.wireDiameterMm;
  if (stated === null || measuredA === null) return null;
  const sizes = WIRE_SIZES.map((one) => one.soldAsMm);
  const nearest = sizes.reduce((best, one) =>
    Math.abs(one - stated) < Math.abs(best - stated) ? one : best,
  );
  const index = sizes.indexOf(nearest) + (thicker ? 1 : -1);
  // 0.8 to 0.9 mm is a small step: the one after it may be in the box as well.
  const near = [index, index + (thicker ? 1 : -1)].map((i) => sizes[i]);
  const fits = near.find((mm) => {
    const drawn = mm === undefined ? null : currentFromFeed({ ...setup, wireDiameterMm: mm });
    return drawn !== null && measuredA >= drawn.min && measuredA <= drawn.max;
  });
  return fits ?? null;
}
