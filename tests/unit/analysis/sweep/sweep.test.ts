import { describe, expect, it } from 'vitest';
import {
  findSteps,
  type Machine,
  mostRegular,
  nearestStep,
  parseMachine,
  type SweepBlock,
  type SweepStep,
} from '../../../../src/analysis/sweep/index.js';
import { createRandom } from '../../../../src/core/index.js';

/** Blocks of 0.1 s: levels with their seconds, and noise of a known spread. */
function blocks(
  levels: readonly (readonly [seconds: number, volts: number, amperes: number])[],
  noise = { volts: 0.3, amperes: 4 },
): SweepBlock[] {
  const random = createRandom('sweep');
  const all: SweepBlock[] = [];
  for (const [seconds, volts, amperes] of levels)
    for (let k = 0; k < seconds * 10; k++)
      all.push({
        startS: all.length / 10,
        meanV: volts + noise.volts * random.normal(),
        meanA: amperes + noise.amperes * random.normal(),
      });
  return all;
}

const edges = (found: readonly { fromS: number; toS: number }[]) =>
  found.map(({ fromS, toS }) => [Math.round(10 * fromS) / 10, Math.round(10 * toS) / 10]);

// Fails without the penalty (many steps), with it a hundred times larger (one step), and when either quantity is left out.
describe('the steps of a sweep', () => {
  it('are where the dial was turned, to 0.2 s', () => {
    const found = findSteps(
      blocks([
        [5, 18, 150],
        [4, 20, 150],
        [6, 22, 150],
      ]),
    );
    expect(found).toHaveLength(3);
    expect(Math.abs(found[1]!.fromS - 5)).toBeLessThanOrEqual(0.2);
    expect(Math.abs(found[2]!.fromS - 9)).toBeLessThanOrEqual(0.2);
  });
  it('are where the feed alone was turned', () => {
    const found = findSteps(
      blocks([
        [5, 20, 140],
        [5, 20, 170],
      ]),
    );
    expect(found).toHaveLength(2);
    expect(Math.abs(found[1]!.fromS - 5)).toBeLessThanOrEqual(0.2);
  });
  it('are one where nothing was turned, however long', () => {
    expect(findSteps(blocks([[60, 20, 150]]))).toHaveLength(1);
  });
  it('are one where a restless arc was left alone', () => {
    expect(findSteps(blocks([[60, 20, 150]], { volts: 1.5, amperes: 20 }))).toHaveLength(1);
  });
  it('are not made of a change that no meter would trust: 0.2 V', () => {
    const found = findSteps(
      blocks([
        [10, 20, 150],
        [10, 20.2, 150],
      ]),
    );
    expect(found).toHaveLength(1);
  });
  it('end where the arc pauses, and what is shorter than 1.5 s is none', () => {
    const found = findSteps(
      blocks([
        [3, 20, 150],
        [1, 0, 0],
        [3, 20, 150],
        [1, 0, 0],
        [1, 20, 150],
      ]),
    );
    expect(edges(found)).toEqual([
      [0, 3],
      [4, 7],
    ]);
  });
  it('are none without an arc', () => {
    expect(findSteps(blocks([[5, 60, 0]]))).toEqual([]);
    expect(findSteps([])).toEqual([]);
  });
});

const step = (more: Partial<SweepStep>): SweepStep => ({
  path: 'a.csv',
  fromS: 0,
  toS: 4,
  status: 'ok',
  mode: 'spray',
  confidence: 0.9,
  meanVoltageV: 27,
  meanCurrentA: 260,
  setVoltageV: 29,
  wireFeedMPerMin: 8,
  regularity: 0.02,
  off: [],
  ...more,
});

describe('the most regular step', () => {
  it('is the most even of those that are sure, for each mode', () => {
    const even = step({ regularity: 0.01 });
    const unsure = step({ regularity: 0.001, confidence: 0.5 });
    const other = step({ mode: 'globular', regularity: 0.03 });
    const best = mostRegular([step({}), even, unsure, other]);
    expect(best.spray).toBe(even);
    expect(best.globular).toBe(other);
    expect(best['short-circuit']).toBeUndefined();
  });
});

describe('the step that stands for a point', () => {
  const steps = [
    step({}),
    step({ meanVoltageV: 22, meanCurrentA: 180, setVoltageV: 24, wireFeedMPerMin: 5 }),
  ];
  const at = (point: Partial<Parameters<typeof nearestStep>[1]>) =>
    nearestStep(
      { steps },
      { voltageV: null, currentA: null, setVoltageV: null, wireFeedMPerMin: null, ...point },
    );
  it('lies within 1 V and 7 % of the measured volts and amperes', () => {
    expect(at({ voltageV: 27.9, currentA: 260 })?.step).toBe(steps[0]);
    expect(at({ voltageV: 28.1, currentA: 260 })).toBeNull();
    expect(at({ voltageV: 27, currentA: 240 })).toBeNull();
    expect(at({ voltageV: 22, currentA: 185 })?.step).toBe(steps[1]);
  });
  it('is found by dial and feed where nothing was measured', () => {
    const found = at({ setVoltageV: 24.5, wireFeedMPerMin: 5.1 });
    expect([found?.step, found?.by]).toEqual([steps[1], 'dial']);
  });
  it('needs both of a pair', () => {
    expect(at({ voltageV: 27 })).toBeNull();
  });
});

describe('a machine file', () => {
  const machine: Machine = {
    kind: 'arc-transfer-machine',
    version: '1.0',
    machine: 'Bay 4',
    wireMaterial: null,
    wireDiameterMm: 1.2,
    gas: null,
    steps: [step({})],
  };
  it('comes back as it was written', () => {
    expect(parseMachine(JSON.stringify(machine), 'bay4.json')).toEqual(machine);
  });
  it('is refused with the field that is wrong, and anything else with what was expected', () => {
    const broken = JSON.stringify({ ...machine, steps: [{ ...step({}), mode: 'loud' }] });
    expect(() => parseMachine(broken, 'bay4.json')).toThrow(/steps\.0\.mode/u);
    expect(() => parseMachine('{', 'bay4.json')).toThrow(/not one JSON document/u);
    expect(() => parseMachine('{}', 'bay4.json')).toThrow(/bay4\.json cannot be used/u);
  });
});
