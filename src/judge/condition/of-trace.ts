import type { Mode } from '../../core/index.js';
import type { DisturbanceReport, RunFigures } from '../../features/index.js';
import { message } from '../../messages/index.js';
import { type Finding, type Rating, rateUpTo, usual } from './finding.js';

/** Limits of good and watch that rest on counts and lengths; own choice. */
const STUBS_A_SECOND = 0.2;
const STUB_SHARE = 0.02;
const ARC_OUT_S = 0.1;
const LONG_ARC = { good: 0.02, watch: 0.1 };
const DIP_SHARE = 0.05;
const SWING = { good: 0.15, watch: 0.3 };

/** What disturbed the arc, whatever its mode. */
export function disturbanceFindings(
  { totals, judgedS, notShown }: DisturbanceReport,
  figures: RunFigures,
  by: 'trace' | 'current',
): Finding[] {
  const shown = (kind: keyof typeof totals): boolean => !notShown.includes(kind);
  const shareOf = (kind: keyof typeof totals): number =>
    judgedS > 0 ? totals[kind].totalS / judgedS : 0;
  const any = (count: number, bad: boolean): Rating =>
    count === 0 ? 'good' : bad ? 'bad' : 'watch';
  const findings: Finding[] = [];
  if (shown('long-short')) {
    const { count, totalS, longestS } = totals['long-short'];
    const often = count > STUBS_A_SECOND * judgedS || shareOf('long-short') > STUB_SHARE;
    findings.push({
      name: 'stubbing',
      rating: any(count, often),
      value: count,
      unit: '1',
      text: message('condition-stubbing', { count, totalS, longestS }),
      usual: usual('stubbing'),
    });
  }
  const out = totals['arc-out'];
  findings.push({
    name: 'arc-outs',
    rating: any(out.count, out.totalS > ARC_OUT_S),
    value: out.count,
    unit: '1',
    text: message('condition-arc-outs', { count: out.count, totalS: out.totalS, by }),
    usual: usual('arc-outs'),
  });
  if (shown('burn-back')) {
    const { count } = totals['burn-back'];
    findings.push({
      name: 'burn-back',
      rating: any(count, true),
      value: count,
      unit: '1',
      text: message('condition-burn-back', { count }),
      usual: usual('burn-back'),
    });
  }
  if (shown('long-arc')) {
    const { count, totalS } = totals['long-arc'];
    const value = shareOf('long-arc');
    findings.push({
      name: 'long-arc',
      rating: rateUpTo(value, LONG_ARC.good, LONG_ARC.watch),
      value,
      unit: '1',
      text: message('condition-long-arc', { count, totalS }),
      usual: usual('long-arc'),
    });
  }
  if (shown('current-dip')) {
    const { count, totalS } = totals['current-dip'];
    const value = shareOf('current-dip');
    findings.push({
      name: 'current-dips',
      rating: any(count, value > DIP_SHARE),
      value,
      unit: '1',
      text: message('condition-current-dips', { count, totalS }),
      usual: usual('current-dips'),
    });
  }
  const swing = figures.slowSwingShare;
  if (typeof swing === 'number')
    findings.push({
      name: 'slow-swings',
      rating: rateUpTo(swing, SWING.good, SWING.watch),
      value: swing,
      unit: '1',
      text: message('condition-slow-swings', {
        shareOfMean: swing,
        periodS: figures.slowSwingPeriodS ?? null,
      }),
      usual: usual('slow-swings'),
    });
  return findings;
}

/** Own choice, all of them; the sources of what is usual stand in its sentence. */
const TOUCHES_HZ = { good: 2, watch: 10 };
const TOUCH_SHARE = { good: 0.1, watch: 0.25 };
const RUPTURE_OVER_MEAN = 2.5;
const RUPTURE_SPREAD = 0.3;
const INDEX = { good: 1, watch: 1.6 };
const CLOCK = { good: 0.15, watch: 0.3 };
const SPREAD = { good: 0.04, watch: 0.08 };

/** What is usual depends on the mode. */
export function modeFindings(mode: Mode, figures: RunFigures): Finding[] {
  const at = (name: keyof RunFigures): number => figures[name] ?? Number.NaN;
  return [touches(mode, at), spatter(mode, at), regularity(mode, at)].filter((one) => one !== null);
}

type At = (name: keyof RunFigures) => number;

function touches(mode: Mode, at: At): Finding | null {
  const all = at('allShortsRateHz');
  if (Number.isNaN(all) || mode === 'globular') return null;
  if (mode !== 'short-circuit')
    return {
      name: 'touches',
      rating: rateUpTo(all, TOUCHES_HZ.good, TOUCHES_HZ.watch),
      value: all,
      unit: 'Hz',
      text: message('condition-touches', { mode, rateHz: all }),
      usual: usual('touches', mode),
    };
  const share = at('incipientRateHz') / all;
  if (Number.isNaN(share)) return null;
  return {
    name: 'touches',
    rating: rateUpTo(share, TOUCH_SHARE.good, TOUCH_SHARE.watch),
    value: share,
    unit: '1',
    text: message('condition-touches', { mode, shareOfShorts: share }),
    usual: usual('touches', mode),
  };
}

/** Where bridges carry the metal: a rare short of a free flight says little. */
function spatter(mode: Mode, at: At): Finding | null {
  if (mode !== 'short-circuit' && mode !== 'globular') return null;
  const [meanA, sdA, mostA] = [
    Math.abs(at('currentAtBreakA')),
    at('currentAtBreakSdA'),
    at('currentAtBreakMaxA'),
  ];
  const over = meanA / Math.abs(at('meanCurrentA'));
  if (!(over > 0) || Number.isNaN(sdA)) return null;
  return {
    name: 'spatter',
    // Never worse than "watch": the current is a risk, no spatter was seen.
    rating: over <= RUPTURE_OVER_MEAN && sdA <= RUPTURE_SPREAD * meanA ? 'good' : 'watch',
    value: over,
    unit: '1',
    text: message('condition-spatter', { meanA, sdA, mostA, overMeanCurrent: over }),
    usual: usual('spatter', mode),
  };
}

/** Globular transfer is irregular by its nature and has no usual range. */
function regularity(mode: Mode, at: At): Finding | null {
  if (mode === 'globular') return null;
  const rated = {
    'short-circuit': { value: at('stabilityIndex'), limits: INDEX },
    'pulsed-spray': { value: at('pulseClockCv'), limits: CLOCK },
    spray: { value: at('arcVoltageSdV') / at('arcVoltageV'), limits: SPREAD },
  };
  const { value, limits } = rated[mode];
  if (!Number.isFinite(value)) return null;
  const text =
    mode === 'short-circuit'
      ? message('condition-regularity', { mode, index: value })
      : mode === 'spray'
        ? message('condition-regularity', { mode, spreadShare: value })
        : message('condition-regularity', { mode, clockCv: value });
  return {
    name: 'regularity',
    rating: rateUpTo(value, limits.good, limits.watch),
    value,
    unit: '1',
    text,
    usual: usual('regularity', mode),
  };
}
