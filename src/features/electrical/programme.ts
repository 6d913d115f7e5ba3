import type { SourceProgramme } from '../../core/index.js';
import type { PulseWindow } from './pulse-window.js';
import type { Measures } from './voltage-window.js';

/** Pulses of a source keep time at least this well, drift of the arc-length control included (common practice, no source). */
const CLOCK_CV = 0.2;
/** Pulses that shorts do not follow: the shorts come unevenly, and the clock is this much steadier. */
const UNEVEN_SHORTS_CV = 0.15;
const STEADIER = 0.45;
/** Fewest shorts per second to speak of a dip cycle. */
const LEAST_DIP_HZ = 8;
/** A plain source lets the current rise from contact to break; a controlled one cuts it at one of the two. */
const CUT_SHARE = 0.9;
/** Without a cut: a boost of this much of the mean current, held as a level, once a cycle. */
const BOOST = { swingShare: 1, separation: 0.8, clockCv: 0.35 } as const;
/** From voltage alone the boost must show as two arc levels once a cycle. */
const BOOST_V = { separation: 0.6, clockCv: 0.3 } as const;
/** Fewest windows to say anything about the run. */
const FEWEST_WINDOWS = 2;

/** What the source did in one window: shorts decide whether two levels are pulses or a controlled dip. */
export function windowProgramme(
  measures: Measures,
  voltage: PulseWindow | null,
  current: PulseWindow | null,
): SourceProgramme {
  const trains = [current, voltage].filter((pulses) => pulses !== null);
  const clocked = trains.find((pulses) => pulses.evident && pulses.clockCv < CLOCK_CV);
  // Current alone does not tell pulses from a controlled dip.
  if (!voltage) return clocked ? 'unknown' : 'steady';
  const shortHz = measures['shortRateHz'] ?? Number.NaN;
  if (clocked && shortHz < 0.3 * clocked.rateHz) return 'pulsed';
  const shortCv = measures['shortIntervalCv'] ?? Number.NaN;
  if (
    shortCv > UNEVEN_SHORTS_CV &&
    trains.some(({ clockCv }) => clockCv < Math.min(CLOCK_CV, STEADIER * shortCv))
  )
    return 'pulsed';
  if (!(shortHz >= LEAST_DIP_HZ)) return 'steady';
  if (isControlled(measures, voltage, current)) return 'controlled-dip';
  // In a dip the voltage follows the bridge: without current, a plain and a controlled source look alike.
  return current ? 'steady' : 'unknown';
}

function isControlled(
  measures: Measures,
  voltage: PulseWindow,
  current: PulseWindow | null,
): boolean {
  // A clock is measured only where the swing is that of pulses; NaN fails every comparison.
  if (!current)
    return voltage.separation >= BOOST_V.separation && voltage.clockCv < BOOST_V.clockCv;
  const cutAtContact = (measures['leastOverStartCurrent'] ?? 1) < CUT_SHARE;
  const cutAtBreak = (measures['breakOverArcCurrent'] ?? 2) < CUT_SHARE;
  const boosted =
    (measures['currentSwingShare'] ?? 0) >= BOOST.swingShare &&
    current.separation >= BOOST.separation &&
    current.clockCv < BOOST.clockCv;
  return cutAtContact || cutAtBreak || boosted;
}

/** Majority of the windows; `unknown` when too few or divided. */
export class ProgrammeVotes {
  readonly #votes = new Map<SourceProgramme, number>();
  #count = 0;

  add(programme: SourceProgramme): void {
    this.#votes.set(programme, (this.#votes.get(programme) ?? 0) + 1);
    this.#count++;
  }

  result(): SourceProgramme {
    if (this.#count < FEWEST_WINDOWS) return 'unknown';
    for (const [programme, votes] of this.#votes) if (votes > 0.6 * this.#count) return programme;
    return 'unknown';
  }
}
