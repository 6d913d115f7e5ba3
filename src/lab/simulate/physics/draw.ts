import { ArcError, MODES, type Mode, type Random } from '../../../core/index.js';
import { ELECTRICAL_FAMILIES, type ElectricalFamily, FAMILY_TRAITS } from '../families.js';
import type { ArcScenario, GasSpec, SourceSpec, WireSpec } from '../scenario.js';
import { drawGas, drawWire } from './draw-consumables.js';
import {
  drawArc,
  drawBridging,
  drawDetachment,
  drawEnds,
  drawHand,
  drawPool,
  drawProbe,
  fallRangeV,
} from './draw-parts.js';
import { drawAim, drawArcAt } from './draw-point.js';
import {
  drawConstantVoltage,
  drawControlledDip,
  drawPulsed,
  feedFor,
  type OperatingPoint,
} from './draw-source.js';
import { setWrong } from './draw-wrong.js';
import { nominalTransitionA } from './materials.js';
import { feedable, setRight } from './set-right.js';
import { SETTLED_SHARE, settle } from './settled.js';

export interface DrawOptions {
  /** Mode the settings aim at. The run decides what it was: read `truth.mode`. */
  mode?: Mode;
  family: string;
  /** Trigger time in s; drawn from 2.5 to 7 when left out. */
  arcS?: number;
  /** Chance of a change of settings in mid-run; default 0. */
  changeShare?: number;
  /**
   * Chance that the run is set wrong on purpose; default 0.2. All others stand in a published window of the mode
   * aimed at, and their metal crosses that way.
   */
  wrongShare?: number;
  /** Metal and size of the wire, and the gas; drawn when left out. What is given stays, also in a run set wrong. */
  wire?: Pick<WireSpec, 'material' | 'diameterMm'>;
  gas?: GasSpec;
}

/**
 * A random scenario of the family. Throws `unknown-family` for a name that is not one, and `mode-not-reached` where
 * no published window has the mode with the wire or gas that was asked for.
 */
export function drawScenario(random: Random, options: DrawOptions): ArcScenario {
  const family = options.family as ElectricalFamily;
  if (!ELECTRICAL_FAMILIES.includes(family)) {
    throw new ArcError({
      code: 'unknown-family',
      what: `There is no scenario family "${options.family}".`,
      expected: `one of ${ELECTRICAL_FAMILIES.join(', ')}`,
      todo: 'Choose one of these.',
    });
  }
  const aim = options.mode ?? random.pick(MODES);
  const wrong = random.next() < (options.wrongShare ?? WRONG_SHARE);
  for (let round = 0; round < ROUNDS; round++) {
    // Wire and gas are drawn first and kept, so that what is hard to reach is not drawn more seldom for that.
    const wire = drawWire(random, options.wire);
    const gas = options.gas ?? drawGas(random, wire.material, aim);
    for (let k = 0; k < TRIES; k++) {
      const drawn = attempt(random, { aim, family, wire, gas, wrong }, options);
      if (drawn !== null) return drawn;
    }
  }
  throw new ArcError({
    code: 'mode-not-reached',
    what: `No setting was found in which metal crosses as ${aim}${describe(options)}.`,
    expected: 'a wire and a gas in which that mode is welded',
    todo: 'Choose another mode, wire or gas.',
  });
}

function describe({ wire, gas }: DrawOptions): string {
  const metal = wire === undefined ? '' : ` from ${wire.diameterMm} mm ${wire.material} wire`;
  return metal + (gas === undefined ? '' : ` in ${gas.group}`);
}

/** How often wire and gas are drawn before the mode counts as out of reach. */
const ROUNDS = 20;
/** How often wire and gas are tried before others are drawn. */
const TRIES = 150;

/** Share of draws set wrong on purpose. */
const WRONG_SHARE = 0.2;

interface Wanted {
  aim: Mode;
  family: ElectricalFamily;
  wire: WireSpec;
  gas: GasSpec;
  wrong: boolean;
}

function attempt(random: Random, wanted: Wanted, options: DrawOptions): ArcScenario | null {
  const { aim, family, wire, gas, wrong } = wanted;
  const traits = FAMILY_TRAITS[family];
  const aimed = drawAim(random, aim, wire, gas);
  if (aimed === null) return null;
  const detachment = drawDetachment(random, traits, wire, gas);
  const { transitionA } = detachment;
  if (!goesWith(aim, aimed.currentA, transitionA)) return null;
  const probe = drawProbe(random);
  const drawn = drawArcAt(random, aim, aimed, {
    wire,
    gas,
    probe,
    transitionA: Number.isFinite(transitionA) ? transitionA : 1.2 * nominalTransitionA(wire),
    fallRangeV: fallRangeV(wire, gas),
    draw: () => drawArc(random, traits, wire, gas),
  });
  if (drawn === null) return null;
  const { arc, point } = drawn;
  const chosen = chooseSource(random, aim, point);
  if (chosen === null || !feedable(chosen.feedMPerMin)) return null;
  const ends = drawOpenEnds(random);
  const scenario: ArcScenario = {
    family,
    seed: random.integer(0, 2 ** 31 - 1),
    arcS: options.arcS ?? random.uniform(2.5, 7),
    leadInS: random.uniform(0.1, 1.2),
    leadOutS: random.uniform(0.1, 1),
    ...ends,
    electricalRateHz: random.pick([5000, 8000, 10000, 10000, 20000, 25000, 50000]),
    wire: { ...wire, feedMPerMin: chosen.feedMPerMin },
    gas,
    contactDistanceMm: point.extensionMm + Math.max(0.3, point.arcMm) + 0.8 * wire.diameterMm,
    source: chosen.source,
    arc,
    detachment,
    bridging: drawBridging(random, traits, wire, gas, aim),
    pool: drawPool(random, traits),
    hand: drawHand(random),
    ends: drawEnds(random, wire.diameterMm),
    probe,
    changes: [],
    setWrong: null,
  };
  if (aim === 'short-circuit' && random.next() < SETTLED_SHARE) settle(random, scenario);
  const set = wrong
    ? setWrong(random, scenario, aim, traits, options.gas !== undefined)
    : setRight(scenario, aim, aimed, fallRangeV(wire, gas));
  if (set !== null && random.next() < (options.changeShare ?? 0)) addChange(random, set);
  return set;
}

/** Drops hang below the transition and spray above it. */
function goesWith(aim: Mode, currentA: number, transitionA: number): boolean {
  if (aim === 'spray') return currentA > 1.02 * transitionA && currentA < 1.9 * transitionA;
  return aim !== 'globular' || currentA < 0.99 * transitionA;
}

/** Half of the recordings begin and end while the arc burns; of the others some begin so, and some end so. */
function drawOpenEnds(random: Random): { openStart: boolean; openEnd: boolean } {
  if (random.next() < 0.5) return { openStart: true, openEnd: true };
  return { openStart: random.next() < 0.2, openEnd: random.next() < 0.2 };
}

type Chosen = { source: SourceSpec; feedMPerMin: number };

function chooseSource(random: Random, aim: Mode, point: OperatingPoint): Chosen | null {
  if (aim === 'pulsed-spray') return drawPulsed(random, point);
  if (aim === 'short-circuit' && random.next() < 0.3) return drawControlledDip(random, point);
  return {
    source: drawConstantVoltage(random, point),
    feedMPerMin: feedFor(point, point.currentA),
  };
}

/** A step of feed and voltage somewhere in the middle, as when a knob is turned. */
function addChange(random: Random, scenario: ArcScenario): void {
  const source = scenario.source;
  if (source.kind !== 'constant-voltage') return;
  const timeS = scenario.arcS * random.uniform(0.35, 0.65);
  const up = source.setV < 24;
  scenario.changes.push({
    timeS,
    setV: source.setV + (up ? random.uniform(4, 10) : -random.uniform(5, 11)),
    feedMPerMin: scenario.wire.feedMPerMin * (up ? random.uniform(1, 1.6) : random.uniform(0.5, 1)),
  });
}
