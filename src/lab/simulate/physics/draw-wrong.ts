import type { Mode, Random } from '../../../core/index.js';
import type { FamilyTraits } from '../families.js';
import type { ArcScenario, GasSpec, SetWrong } from '../scenario.js';
import { drawBridging, drawDetachment, fallRangeV } from './draw-parts.js';
import { inWindows } from './figures.js';
import { feedable } from './set-right.js';
import { tryOut } from './try-out.js';

/**
 * Sets a sound scenario wrong, as students and hurried welders do; null where no arc comes of it. The shares and
 * volts are own choice. What the metal then does is up to the physics. A gas that was asked for (`gasGiven`) stays.
 */
export function setWrong(
  random: Random,
  scenario: ArcScenario,
  aim: Mode,
  traits: FamilyTraits,
  gasGiven: boolean,
): ArcScenario | null {
  const how = random.pick(waysFor(scenario, aim, gasGiven));
  if (how === 'cold') setCold(random, scenario);
  else if (how === 'long-arc') lengthen(random, scenario);
  else if (how === 'stubbing') stub(random, scenario);
  else changeGas(random, scenario, aim, traits);
  scenario.setWrong = how;
  if (!feedable(scenario.wire.feedMPerMin)) return null;
  const figures = tryOut(scenario);
  if (figures.mode === null || figures.burningShare < 0.6) return null;
  // What still stands where the mode meant is welded was not set wrong enough.
  return figures.mode === aim && inWindows(scenario, figures) ? null : scenario;
}

function waysFor({ source, wire }: ArcScenario, aim: Mode, gasGiven: boolean): SetWrong[] {
  if (source.kind === 'controlled-dip') return ['cold', 'stubbing'];
  const ways: SetWrong[] = ['cold', 'long-arc', 'stubbing'];
  const otherGasMatters = wire.material === 'carbon-steel' && aim !== 'short-circuit';
  if (otherGasMatters && !gasGiven) ways.push('wrong-gas');
  return ways;
}

/** Too little wire and too little voltage for it. */
function setCold(random: Random, scenario: ArcScenario): void {
  const share = random.uniform(0.45, 0.75);
  const lessV = random.uniform(1, 4);
  const { source, wire } = scenario;
  wire.feedMPerMin *= share;
  if (source.kind === 'constant-voltage') source.setV -= lessV;
  else if (source.kind === 'pulsed') source.targetV -= lessV;
  else {
    source.baseA *= share;
    source.boostA *= share;
    source.pinchA *= share;
  }
}

function lengthen(random: Random, scenario: ArcScenario): void {
  const moreV = random.uniform(4, 9);
  const { source } = scenario;
  if (source.kind === 'constant-voltage') source.setV += moreV;
  if (source.kind === 'pulsed') source.targetV += moreV;
  scenario.contactDistanceMm += (0.6 * moreV) / scenario.arc.fieldVPerMm;
}

/** More wire than the voltage can melt off in time. */
function stub(random: Random, { source, wire }: ArcScenario): void {
  const lessV = random.uniform(2.5, 6);
  wire.feedMPerMin *= random.uniform(1.1, 1.6);
  if (source.kind === 'constant-voltage') source.setV -= lessV;
  if (source.kind === 'pulsed') source.targetV -= lessV;
}

/** Free flight meant for argon in CO2 or a mix rich in it, and for CO2 in an argon mix; nothing else changes. */
function changeGas(random: Random, scenario: ArcScenario, aim: Mode, traits: FamilyTraits): void {
  const { wire, gas, arc } = scenario;
  const [before] = fallRangeV(wire, gas);
  const other = otherGas(random, gas);
  const [after] = fallRangeV(wire, other);
  const active = (other.co2Percent - gas.co2Percent) / 100;
  arc.fallV += after - before;
  arc.fieldVPerMm *= active > 0 ? 1 + 0.85 * active : 1 / (1 - 0.85 * active);
  arc.noiseV *= 2 ** active;
  arc.slowV *= 2.5 ** active;
  scenario.gas = other;
  scenario.detachment = drawDetachment(random, traits, wire, other);
  scenario.bridging = drawBridging(random, traits, wire, other, aim);
}

function otherGas(random: Random, gas: GasSpec): GasSpec {
  if (gas.co2Percent >= 25) {
    return { group: 'M20', co2Percent: random.uniform(5.1, 15), o2Percent: 0 };
  }
  return random.next() < 0.7
    ? { group: 'C1', co2Percent: 100, o2Percent: 0 }
    : { group: 'M31', co2Percent: random.uniform(30, 50), o2Percent: 0 };
}
