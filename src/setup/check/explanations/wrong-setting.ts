import type { Mode } from '../../../core/index.js';
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
    text: `The settings suit ${seen}, not ${wanted}.`,
    evidenceFor: gaps,
    evidenceAgainst: lines(
      !c.point.voltageMeasured && c.point.voltageV !== null && 'No measured voltage backs this.',
    ),
    check:
      'Read the voltage at the feeder and time the wire feed, and hold both against the qualified procedure.',
  };
}

/** What is missing for a mode, in volts and amperes. */
function gapsTo(wanted: Mode, { judged, bounds }: Context): string[] {
  const { voltageV, currentA } = judged;
  const { dipTopV, sprayFloorV, transition } = bounds;
  const above = (limit: number): string | false => over(voltageV, limit);
  const below = (limit: number): string | false => under(voltageV, limit);
  if (wanted === 'short-circuit') return lines(above(dipTopV.max));
  if (wanted === 'globular') return lines(below(dipTopV.min), above(sprayFloorV.max));
  if (bounds.spray === 'no' || wanted === 'pulsed-spray') return [];
  const lack =
    transition === null || currentA === null ? 0 : transition.currentA.min - currentA.max;
  return lines(
    below(sprayFloorV.min),
    lack > 0 &&
      `${Math.round(middle(currentA!))} A is at least ${Math.round(lack)} A below the transition current.`,
  );
}

function over(volts: Range | null, limit: number): string | false {
  if (volts === null || volts.min <= limit) return false;
  return `${middle(volts).toFixed(1)} V is ${(middle(volts) - limit).toFixed(1)} V above ${limit} V, where the mode ends.`;
}

function under(volts: Range | null, limit: number): string | false {
  if (volts === null || volts.max >= limit) return false;
  return `${middle(volts).toFixed(1)} V is ${(limit - middle(volts)).toFixed(1)} V below ${limit} V, where the mode begins.`;
}

function notAsStated({ c, settings }: Diagnosis): Finding | null {
  const high = c.voltageAstray && c.losses.some((loss) => loss.from === 'set' && loss.volts < -1);
  if (settings.answer !== 'disagrees' && !high) return null;
  if (c.bounds.spray === 'no' && c.modes.includes('spray')) return null;
  return {
    weight: high ? 0.72 : c.point.voltageMeasured ? 0.35 : 0.5,
    text: 'The machine may not have run at the settings stated.',
    evidenceFor: lines(
      high && 'The measured voltage stands above the set one.',
      !c.point.voltageMeasured && 'No measured voltage confirms the set one.',
    ),
    evidenceAgainst: lines(
      c.point.voltageMeasured && !c.voltageAstray && 'The measured voltage fits the set one.',
    ),
    check: 'Read the dial, the voltage at the feeder and the wire feed again, at the machine.',
  };
}
