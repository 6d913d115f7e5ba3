import { ArcError, MODES, type Mode, type Random } from '../../core/index.js';
import { ELECTRICAL_FAMILIES, type ElectricalFamily, FAMILY_TRAITS } from './families.js';
import { drawGas, drawWire } from './physics/draw-consumables.js';
import {
  drawArc,
  drawBridging,
  drawDetachment,
  drawEnds,
  drawHand,
  drawPool,
  drawProbe,
} from './physics/draw-parts.js';
import {
  drawConstantVoltage,
  drawControlledDip,
  drawPulsed,
  feedFor,
  type OperatingPoint,
} from './physics/draw-source.js';
import type { ArcScenario, SourceSpec } from './scenario.js';

export interface DrawOptions {
  /** Mode the settings aim at. The run decides what it was: read `truth.mode`. */
  mode?: Mode;
  family: string;
  /** Trigger time in s; drawn from 2.5 to 7 when left out. */
  arcS?: number;
  /** Chance of a change of settings in mid-run; default 0. */
  changeShare?: number;
}

/** A random scenario of the family. Throws `unknown-family` for a name that is not one. */
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
  for (;;) {
    const drawn = attempt(random, aim, family, options);
    if (drawn !== null) return drawn;
  }
}

function attempt(
  random: Random,
  aim: Mode,
  family: ElectricalFamily,
  options: DrawOptions,
): ArcScenario | null {
  const traits = FAMILY_TRAITS[family];
  const wire = drawWire(random);
  const gas = drawGas(random, wire.material, aim);
  const detachment = drawDetachment(random, traits, wire, gas);
  const arc = drawArc(random, traits, wire, gas);
  const point = drawPoint(random, aim, wire, arc, detachment.transitionA);
  const chosen = chooseSource(random, aim, point);
  if (chosen === null || chosen.feedMPerMin < 1 || chosen.feedMPerMin > 24) return null;
  const openStart = random.next() < 0.2;
  const arcS = options.arcS ?? random.uniform(2.5, 7);
  const scenario: ArcScenario = {
    family,
    seed: random.integer(0, 2 ** 31 - 1),
    arcS,
    leadInS: random.uniform(0.1, 1.2),
    leadOutS: random.uniform(0.1, 1),
    openStart,
    openEnd: random.next() < 0.2,
    electricalRateHz: random.pick([5000, 8000, 10000, 10000, 20000, 25000, 50000]),
    wire: { ...wire, feedMPerMin: chosen.feedMPerMin },
    gas,
    contactDistanceMm: point.extensionMm + Math.max(0.3, point.arcMm) + 0.8 * wire.diameterMm,
    source: chosen.source,
    arc,
    detachment,
    bridging: drawBridging(random, traits, wire, gas),
    pool: drawPool(random, traits),
    hand: drawHand(random),
    ends: drawEnds(random, wire.diameterMm),
    probe: drawProbe(random),
    changes: [],
  };
  if (aim === 'short-circuit' && random.next() < SETTLED_SHARE) settle(random, scenario);
  if (random.next() < (options.changeShare ?? 0)) addChange(random, scenario);
  return scenario;
}

/** Share of dip transfer drawn as a well-set robot run. */
const SETTLED_SHARE = 0.45;

/**
 * Takes most of the chance out of a run: measured dip transfer can be "very regular" (R. D. Smith,
 * "Waveform analysis for MIG/GMAW dip-transfer", 2011/2017), above all where the source or the wire
 * drive sets the cycle.
 */
function settle(random: Random, scenario: ArcScenario): void {
  const rest = random.uniform(0.05, 0.35);
  const { bridging, detachment, pool, arc, wire } = scenario;
  bridging.spread *= rest;
  bridging.incipientShare = 0;
  detachment.scatter *= rest;
  detachment.wobble *= rest;
  detachment.leapShare = 0;
  pool.noiseMm *= rest;
  pool.kickMm *= rest;
  pool.impactMm *= rest;
  arc.slowV *= rest;
  wire.feedJitter *= rest;
  scenario.hand = { wanderMm: random.uniform(0, 0.05), wanderHz: 1, weaveMm: 0, weaveHz: 0 };
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

/** Current, arc length and extension that favour a mode, overlapping at their edges on purpose. */
function drawPoint(
  random: Random,
  aim: Mode,
  wire: ArcScenario['wire'],
  arc: ArcScenario['arc'],
  transitionA: number,
): OperatingPoint {
  const d = wire.diameterMm;
  const nominal = wire.material === 'aluminium' ? 15 + 105 * d : 33 + 156 * d;
  const finite = Number.isFinite(transitionA) ? transitionA : nominal * 1.2;
  const base = { diameterMm: d, alpha: wire.alpha, beta: wire.beta, transitionA: finite, arc };
  if (aim === 'short-circuit') {
    const currentA = Math.max(35, nominal * random.uniform(0.28, 0.92));
    // Volts, not millimetres, are what a knob moves: a little short of what a standing arc needs.
    const shortV = random.uniform(0.002, 0.03) * Math.max(10, currentA - 25);
    const extensionMm = random.uniform(7, 17);
    return { ...base, currentA, arcMm: -shortV / arc.fieldVPerMm, extensionMm };
  }
  const extensionMm = random.uniform(10, 24);
  if (aim === 'globular') {
    const share = Number.isFinite(transitionA)
      ? random.uniform(0.35, 0.93)
      : random.uniform(0.5, 1.7);
    // Half of them with an arc short enough for big drops to touch the pool now and then.
    const arcMm = random.next() < 0.5 ? random.uniform(-0.5, 2) : random.uniform(1, 7);
    return { ...base, currentA: finite * share, arcMm, extensionMm };
  }
  const over = random.next() < 0.7 ? random.uniform(1.03, 1.4) : random.uniform(1.3, 1.9);
  const currentA = finite * over;
  return { ...base, currentA, arcMm: random.uniform(1.5, 8), extensionMm };
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
