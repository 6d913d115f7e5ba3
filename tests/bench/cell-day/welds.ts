import { createRandom } from '../../../src/core/index.js';
import { type ArcScenario, publishedDipCase } from '../../../src/lab/simulate/index.js';

/** A weld of an invented day: what the arc was given, and what the cell's log says of it. */
export interface CellWeld {
  number: number;
  scenario: ArcScenario;
  /** Travel speed by the log of the robot, mm/min. */
  travelMmPerMin: number;
  /** What was planted; null in a good weld. */
  fault: string | null;
}

export const WELDS = 40;
const ARC_S = 5;

/** Faults by the number of the weld. Invented. */
const FAULTS: Readonly<Record<number, { what: string; plant(weld: CellWeld): void }>> = {
  7: {
    what: 'voltage knocked 9 V up 2.5 s into the weld',
    plant: ({ scenario }) => {
      const { source } = scenario;
      if (source.kind === 'constant-voltage')
        scenario.changes = [{ timeS: 2.5, setV: source.setV + 9 }];
    },
  },
  14: {
    what: 'wire slips: 25 % less feed than the log says',
    plant: ({ scenario }) => {
      scenario.wire = { ...scenario.wire, feedMPerMin: 0.75 * scenario.wire.feedMPerMin };
    },
  },
  21: {
    what: 'contact tip 10 mm too far from the work',
    plant: ({ scenario }) => {
      scenario.contactDistanceMm += 10;
    },
  },
  28: {
    what: 'travel speed 30 % too high by the log of the robot',
    plant: (weld) => {
      weld.travelMmPerMin *= 1.3;
    },
  },
  35: {
    what: 'CO2 on the line in place of the mix, and the log says the mix',
    plant: ({ scenario }) => {
      scenario.gas = { group: 'C1', co2Percent: 100, o2Percent: 0 };
      scenario.detachment = {
        ...scenario.detachment,
        transitionA: Number.POSITIVE_INFINITY,
        repulsion: 0.5,
      };
    },
  },
};

/** Forty welds in dip transfer around one published run, each a little another by its seed. */
export function cellWelds(): CellWeld[] {
  return Array.from({ length: WELDS }, (_, k) => {
    const number = k + 1;
    const random = createRandom(`cell day ${number}`);
    const base = publishedDipCase(number);
    const { source } = base;
    const scenario: ArcScenario = {
      ...base,
      arcS: ARC_S,
      wire: { ...base.wire, feedMPerMin: base.wire.feedMPerMin * random.uniform(0.98, 1.02) },
      contactDistanceMm: base.contactDistanceMm + random.uniform(-0.7, 0.7),
      source:
        source.kind === 'constant-voltage'
          ? { ...source, setV: source.setV + random.uniform(-0.2, 0.2) }
          : source,
    };
    const weld: CellWeld = {
      number,
      scenario,
      travelMmPerMin: Math.round(random.uniform(340, 360)),
      fault: FAULTS[number]?.what ?? null,
    };
    FAULTS[number]?.plant(weld);
    return weld;
  });
}
