import { type Co2Saying, type Made, message } from '../messages/index.js';
import { type Gas, gasName } from './gas.js';
import type { Shown } from './sourced.js';

/** One source's word on how much CO2 axial spray bears on steel. */
export interface Co2LimitRow extends Shown {
  /** CO2 in per cent above which this source gives no axial spray; null where it names none. */
  limit: number | null;
  saying: Co2Saying;
}

/** The sources disagree, and the disagreement is the knowledge. */
export const CO2_LIMITS: readonly Co2LimitRow[] = [
  {
    limit: 15,
    saying: 'globular-stays-above-15',
    source: 'MIG Welding Handbook, ch. 1 p. 7',
    certainty: 'F',
  },
  {
    limit: 20,
    saying: 'spray-needs-80-argon',
    source: 'a welding glossary and a teaching page',
    certainty: 'F',
  },
  {
    limit: 25,
    saying: 'no-spray-above-20-to-25',
    source: 'a reference note on transfer modes',
    certainty: 'F2',
  },
  {
    limit: null,
    saying: 'measured-at-20',
    source: 'Methong et al., STWJ 23(1) (2018) 87–94',
    certainty: 'F',
  },
  {
    limit: 30,
    saying: 'repelled-above-30',
    source: 'Soderstrom & Mendez, Welding J. (May 2008) 124-s',
    certainty: 'F',
  },
  {
    limit: null,
    saying: '82-18-sold-for-spray',
    source: 'European practice',
    certainty: 'CP',
  },
  {
    limit: 99,
    saying: 'pure-never',
    source: 'Weld. World (2015), review introduction, and a teaching page',
    certainty: 'F',
  },
];

export type SprayWord = 'yes' | 'disputed' | 'no' | 'unknown';

/**
 * Can this gas carry axial spray? `yes` up to 15 % CO2, `no` from 25 %, `disputed` between and for
 * symbols whose band reaches over a limit (M21), `unknown` where no gas was stated.
 */
export function sprayInGas(gas: Gas | null): SprayWord {
  if (gas === null || gas.symbol === 'Z') {
    return gas?.composition === null || gas === null ? 'unknown' : byShare(gas.co2);
  }
  return byShare(gas.co2);
}

function byShare({ min, max }: { min: number; max: number }): SprayWord {
  if (max <= 15) return 'yes';
  return min >= 25 ? 'no' : 'disputed';
}

/** The disagreement in words, for the gas at hand. */
export function saySprayInGas(gas: Gas): Made {
  const answer = sprayInGas(gas);
  if (answer === 'unknown') return message('spray-in-gas', { answer });
  if (answer === 'yes') return message('spray-in-gas', { answer, gas: gasName(gas) });
  const limits = CO2_LIMITS.filter((row) =>
    answer === 'no' ? row.limit !== null && gas.co2.min >= row.limit : (row.limit ?? 0) <= 25,
  ).map(({ saying, source }) => ({ saying, source }));
  return message('spray-in-gas', { answer, gas: gasName(gas), limits });
}
