import type { Mode } from '../../../core/index.js';
import { type Made, message } from '../../../messages/index.js';
import { middle, type Range } from '../../index.js';
import type { Context } from '../context.js';
import { type Diagnosis, type ExplanationRule, type Finding, lines } from './finding.js';

/** The settings themselves lie outside the wanted mode, or are not those the machine ran at. */
export const wrongSetting: ExplanationRule = {
  id: 'wrong-setting',
  judge: (d) => notForWanted(d) ?? notAsStated(d),
};

function notForWanted({ c, intended, seen, wanted }: Diagnosis): Finding | null {
  if (intended?.answer !== 'disagrees' || wanted === null || seen === null) return null;
  if (c.permitted[wanted] !== 'no' || c.permitted[seen] === 'no') return null;
  const gaps = gapsTo(wanted, c);
  if (gaps.length === 0) return null;
  return {
    weight: 0.8,
    what: message('wrong-setting', { how: 'suits-another', seen, wanted }),
    evidenceFor: gaps,
    evidenceAgainst: lines(
      !c.point.voltageMeasured && c.point.voltageV !== null && message('no-measured-backing'),
    ),
    check: message('check-volts-for-feed', { voltsGiven: c.point.voltageMeasured }),
  };
}

/** What is missing for a mode, in volts and amperes. */
function gapsTo(wanted: Mode, { judged, bounds }: Context): Made[] {
  const { voltageV, currentA } = judged;
  const { dipTopV, sprayFloorV, transition } = bounds;
  const above = (limit: number): Made | false => over(voltageV, limit);
  const below = (limit: number): Made | false => under(voltageV, limit);
  if (wanted === 'short-circuit') return lines(above(dipTopV.max));
  if (wanted === 'globular') return lines(below(dipTopV.min), above(sprayFloorV.max));
  if (bounds.spray === 'no' || wanted === 'pulsed-spray') return [];
  const lack =
    transition === null || currentA === null ? 0 : transition.currentA.min - currentA.max;
  return lines(
    below(sprayFloorV.min),
    lack > 0 &&
      message('current-below-transition', { currentA: middle(currentA!), missingA: lack }),
  );
}

function over(volts: Range | null, limitV: number): Made | false {
  if (volts === null || volts.min <= limitV) return false;
  const centre = middle(volts);
  return message('volts-above-limit', { volts: centre, aboveV: centre - limitV, limitV });
}

function under(volts: Range | null, limitV: number): Made | false {
  if (volts === null || volts.max >= limitV) return false;
  const centre = middle(volts);
  return message('volts-below-limit', { volts: centre, belowV: limitV - centre, limitV });
}

function notAsStated({ c, settings }: Diagnosis): Finding | null {
  const high = c.voltageAstray && c.losses.some((loss) => loss.from === 'set' && loss.volts < -1);
  if (settings.answer !== 'disagrees' && !high) return null;
  if (c.bounds.spray === 'no' && c.modes.includes('spray')) return null;
  return {
    weight: high ? 0.72 : c.point.voltageMeasured ? 0.35 : 0.5,
    what: message('wrong-setting', { how: 'not-as-stated' }),
    evidenceFor: lines(
      high && message('measured-above-set'),
      !c.point.voltageMeasured && message('no-measured-confirming'),
    ),
    evidenceAgainst: lines(
      c.point.voltageMeasured && !c.voltageAstray && message('measured-fits-set'),
    ),
    check: message('check-settings-again'),
  };
}
