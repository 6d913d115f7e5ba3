import type { Gas } from './gas.js';
import type { Sourced } from './sourced.js';

/** One source's word on how much CO2 axial spray bears on steel. */
export interface Co2LimitRow extends Sourced {
  /** CO2 in per cent above which this source gives no axial spray; null where it names none. */
  limit: number | null;
  says: string;
}

/** The sources disagree, and the disagreement is the knowledge. */
export const CO2_LIMITS: readonly Co2LimitRow[] = [
  {
    limit: 15,
    says: 'above about 15 % CO2 globular does not turn into spray',
    source: 'MIG Welding Handbook, ch. 1 p. 7',
    certainty: 'F',
  },
  {
    limit: 20,
    says: 'spray needs at least 80 % argon',
    source: 'a welding glossary and a teaching page',
    certainty: 'F',
  },
  {
    limit: 25,
    says: 'no spray above 20–25 % CO2; 75/25 cannot',
    source: 'a reference note on transfer modes',
    certainty: 'F2',
  },
  {
    limit: null,
    says: 'spray was measured at 20 % CO2, but only at 330–350 A with 1.2 mm wire',
    source: 'Methong et al., STWJ 23(1) (2018) 87–94',
    certainty: 'F',
  },
  {
    limit: 30,
    says: 'repelled drops dominate above 30 % CO2 for every diameter',
    source: 'Soderstrom & Mendez, Welding J. (May 2008) 124-s',
    certainty: 'F',
  },
  {
    limit: null,
    says: '82/18 is routinely sold as able to spray',
    source: 'European practice',
    certainty: 'CP',
  },
  {
    limit: 99,
    says: 'pure CO2 never gives axial spray; drops shrink with current but leave off the axis',
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
export function sprayInGasText(gas: Gas): string {
  const word = sprayInGas(gas);
  if (word === 'yes') return `${gas.text} carries axial spray above the transition current.`;
  if (word === 'unknown') return 'Without the gas nothing can be said about spray.';
  const said = CO2_LIMITS.filter((row) =>
    word === 'no' ? row.limit !== null && gas.co2.min >= row.limit : (row.limit ?? 0) <= 25,
  ).map((row) => `${row.says} (${row.source})`);
  const head =
    word === 'no'
      ? `Published knowledge gives no axial spray in ${gas.text}`
      : `The sources disagree about axial spray in ${gas.text}`;
  return `${head}: ${said.join('; ')}.`;
}
